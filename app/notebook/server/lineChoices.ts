import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { labourAmount, signedCostAmount } from '../../../lib/core/amounts/lineAmount.ts'
import { lineFinder, lineName, type PlannedLine, plannedLines } from '../../../lib/core/ledger/findLine.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { lineValue } from '../../../lib/forms/entryDraft.ts'
import { lineChoiceWords } from '../../../lib/words/booksText.ts'
import type { Choice } from '../../ui/draft/ChoiceField.tsx'
import { booksFigures } from './booksFigures.ts'
import type { Opened } from './opened.ts'

/** A line to choose, and the item that it is of. */
export type LineChoice = Choice & { readonly item: string }

/**
 * The lines that something can have been spent on: those of the plan that the books are held against, then those that
 * only the draft has. Gifts of labour cost nobody anything.
 */
export function lineChoices(opened: Opened): readonly LineChoice[] {
  const plan = booksFigures(opened).notebook
  const find = lineFinder(plan)
  const added =
    plan === opened.notebook
      ? []
      : plannedLines(opened.notebook).filter((line) => find(lineName(line)) === undefined)
  const choice = (from: Notebook, inDraftOnly: boolean) => (line: PlannedLine) => ({
    item: line.itemId,
    value: lineValue(lineName(line)),
    label: lineChoiceWords(line, plannedOf(line, digitsOf(from)), from.currency, inDraftOnly),
  })
  return [
    ...plannedLines(plan).filter(counts).map(choice(plan, false)),
    ...added.filter(counts).map(choice(opened.notebook, true)),
  ]
}

function counts(line: PlannedLine): boolean {
  return line.pot === 'materials' || line.line.counts
}

function plannedOf(line: PlannedLine, digits: number): bigint {
  return line.pot === 'materials' ? signedCostAmount(line.line, digits) : labourAmount(line.line, digits)
}
