import { type Notebook, skills } from '../../../lib/core/agreement/notebook.ts'
import { isCalendarDay } from '../../../lib/core/amounts/calendarDay.ts'
import { minorUnits } from '../../../lib/core/amounts/money.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { isObject, type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { arrangementRefusals } from '../../../lib/words/arrangementText.ts'
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

/**
 * A quote is worth something only with its source, who asks for so much, and on a day that has been; a day that stands there
 * already is not judged again. Told together with the faults of the file.
 */
export function quoteQuestions(
  next: NotebookDocument,
  before: NotebookDocument,
  today: string,
): readonly Fault[] {
  const rates = ratesIn(next)
  return skills.flatMap((skill) => {
    const { quote, quoteFrom, on } = inside(rates, skill)
    const path = `arrangements.rates.${skill}`
    const sourceless = typedText(quote) !== '' && typedText(quoteFrom) === ''
    const day = typedText(on)
    return [
      ...(sourceless ? [{ path: `${path}.quoteFrom`, message: arrangementRefusals.quoteSource }] : []),
      ...(isCalendarDay(day) && day > today && day !== typedText(inside(ratesIn(before), skill).on)
        ? [{ path: `${path}.on`, message: arrangementRefusals.quoteDay(day, today) }]
        : []),
    ]
  })
}

function ratesIn(document: NotebookDocument) {
  return inside(inside(document, 'arrangements'), 'rates')
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
  return total === planned ? undefined : arrangementRefusals.total(notebook, instalments.from, planned, total)
}
