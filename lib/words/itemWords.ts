import type { AgreedItem } from '../core/agreement/agreedItems.ts'
import type { Notebook } from '../core/agreement/notebook.ts'
import type { Obstacle } from '../core/agreement/readiness.ts'
import { never } from '../core/assert.ts'
import { faultText } from './faultText.ts'
import { householdName, kindWords } from './labels.ts'
import { capitalised } from './summary/names.ts'
import { placeOfFault } from './summary/placeOfFault.ts'

/** What an agreed item is called. */
export function itemTitle(item: Pick<AgreedItem, 'kind' | 'name' | 'key'>): string {
  switch (item.kind) {
    case 'parties':
      return 'The parties'
    case 'line':
      return 'The line'
    case 'caps':
      return 'The caps'
    case 'arrangements':
      return 'Money and hours agreed'
    case 'terms':
      return 'The terms'
    case 'closing':
      return 'The closing'
    case 'decision':
      return item.name.trim() === '' ? 'A decision' : `Decision: ${shortened(item.name)}`
    case 'section':
    case 'gate':
    case 'common':
      return item.name.trim() || `${kindWords[item.kind]} ${item.key.slice('item:'.length)}`
    default:
      return never(item.kind)
  }
}

function shortened(text: string): string {
  const whole = text.trim().replace(/\.$/, '')
  return whole.length > 60 ? `${whole.slice(0, 59).trimEnd()}…` : whole
}

/** What stands in the way of signing, a sentence for each, and one for all items that wait for the same marks. */
export function obstacleSentences(obstacles: readonly Obstacle[], notebook: Notebook): string[] {
  const titles = new Map<string, string[]>()
  for (const obstacle of obstacles.filter(isUnmarked)) {
    const by = unmarkedBy(obstacle, notebook)
    titles.set(by, [...(titles.get(by) ?? []), itemTitle(obstacle.item)])
  }
  return [
    ...obstacles.filter((obstacle) => !isUnmarked(obstacle)).map((one) => obstacleWords(one, notebook)),
    ...[...titles].map(([by, those]) => `${those.join('; ')}: ${by}`),
  ]
}

type Unmarked = Extract<Obstacle, { kind: 'not agreed' }>

function isUnmarked(obstacle: Obstacle): obstacle is Unmarked {
  return obstacle.kind === 'not agreed'
}

function unmarkedBy({ missing }: Unmarked, notebook: Notebook): string {
  return `not marked as agreed by ${missing.map((one) => householdName(notebook, one)).join(' and ')}.`
}

/** One sentence for what stands in the way of signing. */
export function obstacleWords(obstacle: Obstacle, notebook: Notebook): string {
  switch (obstacle.kind) {
    case 'not agreed':
      return `${itemTitle(obstacle.item)}: ${unmarkedBy(obstacle, notebook)}`
    case 'no party':
      return `${capitalised(householdName(notebook, obstacle.household))} has no party yet who could sign: name a person who does.`
    case 'party unnamed':
      return `Party ${obstacle.partyIndex + 1} of ${householdName(notebook, obstacle.household)} has no name.`
    case 'party without capacity':
      return `Party ${obstacle.partyIndex + 1} of ${householdName(notebook, obstacle.household)} has not said yet as what it signs, such as “owner”.`
    case 'nothing to build':
      return 'There is no section and no gate yet.'
    case 'unknown key':
      return `The file has a key that this program does not know: ${obstacle.path}. Nobody can sign what a program can’t show.`
    case 'fault':
      return `The shares can’t be worked out yet. ${placeOfFault(notebook, obstacle.fault.path)}: ${faultText(obstacle.fault)}`
    default:
      return never(obstacle)
  }
}

/** What the history keeps besides the items that are marked. */
const unmarkedTitles: Readonly<Record<string, string>> = {
  heading: 'Title, currency and units',
  checks: 'Ask first',
  dates: 'Dates',
  buildUps: 'Build-ups of your own',
  inventory: 'Pieces at hand',
  contributions: 'Money and hours',
  letter: 'The first letter',
  books: 'Lines, things and conversions',
  file: 'Order of the items, and other keys of the file',
}

/** What an item of the history is called: by its name now, else by its name then. */
export function changedItemTitle(
  change: { readonly itemKey: string; readonly before: unknown; readonly after: unknown },
  items: readonly AgreedItem[],
): string {
  const unmarked = Object.hasOwn(unmarkedTitles, change.itemKey) ? unmarkedTitles[change.itemKey] : undefined
  if (unmarked !== undefined) return unmarked
  const now = items.find((item) => item.key === change.itemKey)
  if (now) return itemTitle(now)
  const data = (change.after ?? change.before) as { item?: { name?: unknown }; text?: unknown } | null
  if (change.itemKey.startsWith('decision:'))
    return itemTitle({ kind: 'decision', name: String(data?.text ?? ''), key: change.itemKey })
  if (change.itemKey === 'arrangements' || change.itemKey === 'closing')
    return `${itemTitle({ kind: change.itemKey, name: '', key: change.itemKey })} (removed)`
  const id = change.itemKey.slice('item:'.length)
  return `${String(data?.item?.name ?? '') || id} (removed)`
}

/** The sentence of a fault, after the name of the item that it is of: nothing else shows which is meant. */
export function faultOfItem(title: string, words: string): string {
  return `${title}: ${words}`
}
