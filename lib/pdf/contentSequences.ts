import type { Mark } from './mark.ts'
import type { Tag } from './structureElement.ts'

/** Marks of one tag that are painted one after the other; without a tag they are ornament. */
export type ContentSequence = { readonly tag: Tag | undefined; readonly marks: readonly Mark[] }

/** The marks of a page in runs of the same tag, in the order of painting: the marked content of ISO 32000-1, 14.6. */
export function contentSequences(marks: readonly Mark[]): ContentSequence[] {
  const sequences: { tag: Tag | undefined; marks: Mark[] }[] = []
  for (const mark of marks) {
    const last = sequences.at(-1)
    if (last && last.tag === mark.tag) last.marks.push(mark)
    else sequences.push({ tag: mark.tag, marks: [mark] })
  }
  return sequences
}
