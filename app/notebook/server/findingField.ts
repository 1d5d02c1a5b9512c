import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Clash } from '../../../lib/core/boundary/clashes.ts'
import type { Finding } from '../../../lib/core/takeoff/finding.ts'
import { findingText } from '../../../lib/words/takeoff/findingText.ts'
import { fieldId } from '../../ui/draft/fieldId.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'

/** The page on which something is typed, the path of its field in that page's form, and the address of both. */
export type FindingField = { readonly page: string; readonly field: string; readonly href: string }

/** What a finding or a clash along the line names, and of which kind it is. */
export type Named = { readonly path: string; readonly kind: Finding['kind'] | Clash['kind'] }

/** Where the thing that a finding names is typed. */
export function findingField(notebookId: string, notebook: Notebook, finding: Named): FindingField {
  const { page, field } = placeOf(`/notebook/${notebookId}`, notebook, leafOf(finding))
  return { page, field, href: `${page}#${fieldId('field', field)}` }
}

/** The findings that belong to a page: as they are, and as sentences at the fields of the page's form. */
export type FindingsHere = { readonly findings: readonly Finding[]; readonly atFields: readonly Fault[] }

export function findingsHere(
  page: string,
  notebookId: string,
  notebook: Notebook,
  findings: readonly Finding[],
): FindingsHere {
  const here = findings.flatMap((finding) => {
    const place = findingField(notebookId, notebook, finding)
    return place.page === page ? [{ finding, field: place.field }] : []
  })
  return {
    findings: here.map(({ finding }) => finding),
    atFields: here.map(({ finding, field }) => ({ path: field, message: findingText(notebook, finding) })),
  }
}

function placeOf(home: string, notebook: Notebook, path: string): { page: string; field: string } {
  const match = /^(sections|gates)\[([0-9]+)\]\.?(.*)$/.exec(path)
  const item = match ? notebook[match[1] as 'sections' | 'gates'][Number(match[2])] : undefined
  if (item === undefined)
    return { page: path.startsWith('inventory') ? `${home}/pieces` : `${home}/line`, field: path }
  const field = match?.[3] ?? ''
  const id = encodeURIComponent(item.id)
  if (field.startsWith('measured')) return { page: `${home}/measured/${id}`, field }
  if (field.startsWith('buildUp')) return { page: `${home}/build-up/${id}`, field }
  return { page: `${home}/item/${id}`, field }
}

/** The path of one field, also where a finding names a whole thing: the field in it that a person would change first. */
export function leafOf({ path, kind }: Named): string {
  switch (kind) {
    case 'sections-overlap':
      return `${path}.from`
    case 'gates-overlap':
      return `${path}.at`
    case 'section-backwards':
      return path.startsWith('line.limits') ? `${path}.to` : path
    case 'posts-too-close':
      return `${path}.to`
    case 'post-too-short':
      return path.startsWith('gates') ? `${path}.buildUp.leafHeight` : `${path}.height.agreed`
    case 'brace-does-not-fit':
      return `${path}.posts.spacing`
    case 'catches-wind':
    case 'panel-on-a-slope':
      return `${path}.kind`
    case 'leaf-nothing-left':
      return `${path}.hinge`
    case 'measured-twice':
      return `${path}.post`
    case 'over-limit':
      return `${path}.limit`
    case 'angle-in-gate':
      return `${path}.degrees`
    default:
      return path
  }
}
