import type { Notebook } from '../core/agreement/notebook.ts'
import type { Signature } from '../core/agreement/revision.ts'
import type { Drawing } from '../drawing/drawing.ts'
import type { Block } from '../words/summary/block.ts'
import type { Standing } from '../words/summary/summaryInput.ts'

/** Font files, whole, as read from disk (`lib/files/printFonts.ts`). */
export type PrintFonts = { readonly regular: Uint8Array; readonly semibold: Uint8Array }

export type SummaryPdfInput = {
  readonly title: string
  readonly language: 'en'
  readonly units: Notebook['units']
  readonly content: readonly Block[]
  /** Made with `widthUnits: drawingWidth(units)`, so that one unit is one point on paper. */
  readonly drawing: Drawing
  readonly standing: Standing
  /** Left out on papers for readers who are not to see costs: the agreement says what everything costs. */
  readonly attachments?: {
    /** The canonical text: its SHA-256 has to be the one in `standing`. */
    readonly agreementText: string
    readonly signatures: readonly Signature[]
  }
  /** The date of the file. Missing on drafts, which carry none. */
  readonly madeAt?: Date
  /** Ends the making between two pages. */
  readonly stop?: AbortSignal
  readonly fonts: PrintFonts
}
