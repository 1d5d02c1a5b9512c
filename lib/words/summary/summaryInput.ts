import type { Notebook } from '../../core/agreement/notebook.ts'
import type { Signature } from '../../core/agreement/revision.ts'
import type { Result } from '../../core/result.ts'
import type { WaitingCap } from '../../core/shares/caps.ts'
import type { Statement } from '../../core/shares/statement.ts'

/** Whether the paper is a draft or one frozen revision. `sha256` is that of its canonical text, 64 hexadecimal digits. */
export type Standing =
  | { readonly kind: 'draft'; readonly sha256: string }
  | {
      readonly kind: 'up for signing' | 'signed'
      readonly number: number
      readonly sha256: string
      readonly frozenAt: Date
    }

export type SummaryInput = {
  /** For a revision: the frozen notebook with the contributions as they are now. */
  readonly notebook: Notebook
  /** The statement of that notebook as it is planned: books move no figure in what is signed. */
  readonly statement: Result<Statement>
  /** The same with the actual figures of the books; missing where no line was marked as bought, and nothing valued. */
  readonly actual?: Result<Statement>
  /** Of a draft: caps that move nothing yet, since the other household has not marked them. */
  readonly waitingCaps?: readonly WaitingCap[]
  readonly standing: Standing
  readonly signatures: readonly Signature[]
  /** ISO 8601 day on which the books were read; without it no day is named. */
  readonly booksAsOf?: string
  /** What the paper amends: the newest revision that all had signed before, and what differs from it. */
  readonly amends?: Amendment
  /** Where the notebook's history stood when the paper was locked. */
  readonly history?: { readonly entry: number; readonly hash: string }
}

export type Amendment = {
  readonly number: number
  /** Each item that differs, with a sentence for each difference. */
  readonly changes: readonly { readonly title: string; readonly lines: readonly string[] }[]
}
