import type { OpenMatter } from '../../ui/OpenMatters.tsx'
import { entryOf } from './pages.ts'

/**
 * What is open, as one page shows it: first what is settled on this very page, then what belongs to the same part of the
 * notebook, then all else, each in the order in which it came.
 */
export function mattersOn(matters: readonly OpenMatter[], notebookId: string, page: string): OpenMatter[] {
  const home = `/notebook/${notebookId}`
  const part = entryOf(notebookId, page).href
  const near = (place: string | undefined) => {
    if (place === undefined) return 2
    if (place === page) return 0
    return entryOf(notebookId, place).href === part ? 1 : 2
  }
  const placed = matters.map((matter) => ({ matter, distance: near(placeOf(matter.href, home)) }))
  return [0, 1, 2].flatMap((distance) =>
    placed
      .filter((one) => one.distance === distance)
      .map(({ matter }) => (distance === 0 ? { ...matter, here: true } : matter)),
  )
}

/** What follows the notebook in an address, without what is asked of the page and the place on it. */
function placeOf(href: string | undefined, home: string): string | undefined {
  const bare = href?.replace(/[?#].*$/, '')
  if (bare === home) return ''
  return bare?.startsWith(`${home}/`) ? bare.slice(home.length + 1) : undefined
}
