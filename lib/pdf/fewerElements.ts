import type { Mark } from './mark.ts'
import { rootOf, type StructureElement } from './structureElement.ts'

/**
 * A paper of a hundred sections with twenty costs each has some 20,000 elements. Far beyond that nobody goes through a
 * table cell by cell any more, and the file would grow past what a check of a record reads (`lib/seal/readLimits.ts`).
 */
export const mostElements = 30_000

/**
 * The pages as they are, or, where they name more elements than `most`, with the title, the chapters and the figures as
 * their only elements and all that stands between two of them as one paragraph.
 */
export function withFewerElements(
  pages: readonly (readonly Mark[])[],
  most: number = mostElements,
): readonly (readonly Mark[])[] {
  return elementCount(pages) <= most ? pages : coarse(pages)
}

function elementCount(pages: readonly (readonly Mark[])[]): number {
  const found = new Set<StructureElement>()
  for (const marks of pages) {
    for (const { tag } of marks) {
      if (tag === 'pagination') continue
      for (let one = tag; one !== undefined && !found.has(one); one = one.parent) found.add(one)
    }
  }
  return found.size
}

function coarse(pages: readonly (readonly Mark[])[]): Mark[][] {
  const figures = new Map<StructureElement, StructureElement>()
  let between: StructureElement | undefined
  const coarser = (element: StructureElement): StructureElement => {
    const { role } = rootOf(element)
    if (role !== 'H1' && role !== 'H2' && element.role !== 'Figure') {
      between ??= { role: 'P' }
      return between
    }
    between = undefined
    if (element.role !== 'Figure') return element
    const { parent: _, ...alone } = element
    const figure = figures.get(element) ?? alone
    figures.set(element, figure)
    return figure
  }
  return pages.map((marks) =>
    marks.map((mark) =>
      mark.tag === undefined || mark.tag === 'pagination' ? mark : { ...mark, tag: coarser(mark.tag) },
    ),
  )
}
