import type { Figure } from '../../core/figures/figure.ts'
import type { Household } from '../../core/people/household.ts'
import type { StepGroup } from '../shareSteps.ts'

/**
 * The summary as plain content, in reading order: what the plain-language page and the PDF both show. Texts are ready to
 * print: figures are joined to their units by no-break spaces, what people typed stands as they typed it.
 */
export type Block =
  | TitleBlock
  | HeadingBlock
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | TableBlock
  | StepsBlock
  | { readonly kind: 'caution'; readonly title: string; readonly text: string }
  | DrawingBlock
  | FigureBlock
  | SignatureBlock

/** The first block, and the only one of its kind. */
export type TitleBlock = {
  readonly kind: 'title'
  readonly text: string
  /** Draft, or which revision, and since when. */
  readonly standing: string
}

/** Level 1 is a chapter, level 2 one section, gate or common cost in it. `id` is unique and safe in an address. */
export type HeadingBlock = {
  readonly kind: 'heading'
  readonly level: 1 | 2
  readonly id: string
  readonly text: string
}

/** Every row and the foot hold one cell per column; the first cell heads its row. */
export type TableBlock = {
  readonly kind: 'table'
  readonly caption: string
  readonly columns: readonly TableColumn[]
  readonly rows: readonly TableRow[]
  readonly foot?: readonly string[]
}
export type TableColumn = { readonly title: string; readonly figure?: boolean }
export type TableRow = {
  readonly cells: readonly string[]
  /** The row was taken back: it is shown, says so in its cells, and counts as nothing. */
  readonly struck?: boolean
}

/** How figures come about, step by step, in small print. */
export type StepsBlock = { readonly kind: 'steps'; readonly groups: readonly StepGroup[] }

/** Where the drawing of the line stands (see `lib/drawing/lineDrawing.ts`). */
export type DrawingBlock = {
  readonly kind: 'drawing'
  readonly caption: string
  /** The same in words, for whoever can't see it. */
  readonly description: string
  /** What could not be drawn, or only in part. */
  readonly notes: readonly string[]
}

/** A figure to look at, drawn by `lib/drawing/figures`. A table near it has every number. */
export type FigureBlock = {
  readonly kind: 'figure'
  readonly figure: Figure
  readonly caption: string
  /** The same in words, for whoever can't see it. */
  readonly description: string
}

/** One party's place for its signature. */
export type SignatureBlock = {
  readonly kind: 'signature'
  readonly household: Household
  readonly householdName: string
  readonly party: string
  readonly capacity: string
  readonly state: SignatureState
}

export type SignatureState =
  | { readonly kind: 'not signed yet'; readonly text: string }
  | {
      readonly kind: 'signed'
      readonly typedName: string
      /** The sentence that was ticked. */
      readonly intent: string
      /** Date and time in UTC. */
      readonly when: string
      /** SVG path data in a box of 600 × 200, `M` and `L` with whole numbers; missing where none was drawn. */
      readonly drawing?: string
    }
