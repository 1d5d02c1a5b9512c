import type { Notebook } from '../../core/agreement/notebook.ts'
import type { Finding } from '../../core/takeoff/finding.ts'
import { labelOf } from '../differences.ts'
import { itemTitle } from '../itemWords.ts'
import { householdNames } from '../labels.ts'

/** What a finding is of, by its name: the item, and within it or the line the entry that the path names. */
export function findingPlace(notebook: Notebook, path: string): string {
  const match = /^(sections|gates)\[([0-9]+)\](?:\.measured\[([0-9]+)\])?/.exec(path)
  const list = match?.[1] === 'gates' ? 'gates' : 'sections'
  const item = match ? notebook[list][Number(match[2])] : undefined
  if (item !== undefined) {
    const kind = list === 'gates' ? 'gate' : 'section'
    const title = itemTitle({ kind, name: item.name, key: `item:${item.id}` })
    return match?.[3] === undefined ? title : `${title}, ${measuredPost(notebook, item.id, Number(match[3]))}`
  }
  const entry = /^(?:line\.)?(limits|stations|inventory)\[([0-9]+)\]/.exec(path)
  if (entry?.[1] === 'inventory') return `Pieces at hand, piece ${Number(entry[2]) + 1}`
  if (entry?.[1] === 'limits') return `The line, limit on height ${Number(entry[2]) + 1}`
  if (entry?.[1] === 'stations') return `The line, station ${Number(entry[2]) + 1}`
  return path.startsWith('line.site') ? 'The line, wind and soil' : 'The line'
}

/** A measured post by its own number: which row it stands in says nothing on site. */
function measuredPost({ sections }: Notebook, id: string, row: number): string {
  const post = sections.find((section) => section.id === id)?.measured[row]?.post ?? ''
  return post.trim() === '' ? `measured post in row ${row + 1}` : `post ${post.trim()} as measured`
}

/** The place of a finding in a list of many, with its field where the sentence itself does not say which one it is of. */
export function findingName(notebook: Notebook, { path, kind }: Pick<Finding, 'path' | 'kind'>): string {
  const place = findingPlace(notebook, path)
  if (kind !== 'missing' && kind !== 'zero') return place
  const within = path
    .replace(/^(line\.)?[a-z]+\[[0-9]+\]\.?/i, '')
    .replace(/^(buildUp|measured\[[0-9]+\])\.?/, '')
  if (within === '') return place
  const keys = within.split(/[.[\]]+/).filter(Boolean)
  const label = labelOf(
    keys.map((key) => (/^[0-9]+$/.test(key) ? Number(key) : key)),
    householdNames(notebook),
  )
  return `${place}, ${label.charAt(0).toLowerCase()}${label.slice(1)}`
}
