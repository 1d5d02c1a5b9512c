import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'
import type { Result } from '../../../lib/core/result.ts'
import { capsInForce, type WaitingCap, waitingCaps } from '../../../lib/core/shares/caps.ts'
import { digitsOf, plannedStatement, type Statement } from '../../../lib/core/shares/statement.ts'
import type { Standing } from './opened.ts'

/** A draft with its caps as far as they move anything yet. */
export type DraftFigures = {
  /** The notebook as its pages' figures are worked out: without caps that wait for the other household's mark. */
  readonly inForce: Notebook
  readonly statement: Result<Statement>
  readonly waitingCaps: readonly WaitingCap[]
  /** Who has marked the caps as they stand. */
  readonly capsMarked: ForBoth<boolean>
}

/** The figures of a draft. What is put up for signing has both marks on its caps, so there they all are in force. */
export function draftFigures(
  notebook: Notebook,
  standings: readonly Pick<Standing, 'item' | 'markedAt'>[],
): DraftFigures {
  const markedAt = standings.find(({ item }) => item.key === 'caps')?.markedAt
  const marked = { a: markedAt?.a !== undefined, b: markedAt?.b !== undefined }
  const inForce = { ...notebook, caps: capsInForce(notebook.caps, marked) }
  const statement = plannedStatement(inForce)
  return {
    inForce,
    statement,
    capsMarked: marked,
    waitingCaps: statement.ok
      ? waitingCaps(statement.value.beforeCaps, notebook.caps, marked, digitsOf(notebook))
      : [],
  }
}
