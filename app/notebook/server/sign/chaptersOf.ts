import type { Block } from '../../../../lib/words/summary/block.ts'

export type Chapter = { readonly id: string; readonly title: string; readonly blocks: readonly Block[] }

/** A summary by its chapters, and what stands before the first of them. Every block is in one of the two. */
export function chaptersOf(content: readonly Block[]): {
  readonly opening: readonly Block[]
  readonly chapters: readonly Chapter[]
} {
  const starts = content.flatMap((block, at) =>
    block.kind === 'heading' && block.level === 1 ? [{ at, id: block.id, title: block.text }] : [],
  )
  return {
    opening: content.slice(0, starts[0]?.at ?? content.length),
    chapters: starts.map(({ at, id, title }, index) => ({
      id,
      title,
      blocks: content.slice(at + 1, starts[index + 1]?.at),
    })),
  }
}
