import { type Notebook, skills } from '../../../lib/core/agreement/notebook.ts'
import { minorUnits } from '../../../lib/core/amounts/money.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { isObject, type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { quoteSourceWords, totalQuestion } from '../../../lib/words/arrangementText.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { typedText } from './typedText.ts'

/**
 * What is asked about a payment plan: whether its total is meant, where it is not what the plan asks of that household
 * in money. Nothing is asked while the file has faults, which come first, or the shares can't be worked out.
 */
export function totalQuestions(next: NotebookDocument): readonly Fault[] {
  const read = readDocument(next)
  if (!read.ok) return []
  const message = questionOf(read.value.notebook)
  return message === undefined ? [] : [{ path: 'totalIsMeant', message }]
}

/** A quote is worth something only with its source: who asks for so much. Told together with the faults of the file. */
export function quoteQuestions(next: NotebookDocument): readonly Fault[] {
  const rates = inside(inside(next, 'arrangements'), 'rates')
  return skills
    .map((skill) => ({ skill, typed: inside(rates, skill) }))
    .filter(({ typed }) => typedText(typed.quote) !== '' && typedText(typed.quoteFrom) === '')
    .map(({ skill }) => ({ path: `arrangements.rates.${skill}.quoteFrom`, message: quoteSourceWords }))
}

function inside(object: Readonly<Record<string, unknown>>, key: string): Readonly<Record<string, unknown>> {
  const found = object[key]
  return isObject(found) ? found : {}
}

function questionOf(notebook: Notebook): string | undefined {
  const { instalments } = notebook.arrangements ?? {}
  const statement = statementOf(notebook)
  if (instalments === undefined || !statement.ok) return undefined
  const planned = statement.value.inMoney[instalments.from]
  const total = minorUnits(instalments.total, statement.value.digits)
  return total === planned ? undefined : totalQuestion(notebook, instalments.from, planned, total)
}
