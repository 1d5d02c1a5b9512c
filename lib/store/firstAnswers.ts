import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { sayIn } from './messages.ts'
import { type Edit, editIn } from './notebooks.ts'
import { storedHousehold } from './storedHousehold.ts'

export const firstAnswerKinds = ['fine', 'fine without money', 'a question', 'not now', 'no'] as const
export type FirstAnswerKind = (typeof firstAnswerKinds)[number]

/** What the invited household answered. Nothing binds by it. */
export type FirstAnswer = {
  readonly household: Household
  readonly answer: FirstAnswerKind
  readonly text: string
  /** For 'not now': the day on which to ask again; ISO 8601. */
  readonly until?: string
  readonly at: Date
}

/** All answers, newest first: the first of them is the one that stands. */
export async function firstAnswersOf(notebookId: string): Promise<FirstAnswer[]> {
  const rows = await database().read((tables) =>
    tables.firstAnswer.findMany({ where: { notebookId }, orderBy: { id: 'desc' } }),
  )
  return rows.map(answerFrom)
}

/** The answer that stands. Undefined until there is one. */
export async function newestFirstAnswer(notebookId: string): Promise<FirstAnswer | undefined> {
  return (await firstAnswersOf(notebookId))[0]
}

/**
 * Answers, in one transaction with all that comes of it: the edit of the document (the day on which to ask again stands
 * among its dates) and, for a question, what is said beside an item. Where the edit is refused nothing is written.
 *
 * @param given.asksBeside the item beside which a question is asked
 */
export async function answerFirst<Refused>(given: {
  readonly notebookId: string
  readonly answer: FirstAnswer
  readonly asksBeside?: string
  readonly change: (document: string) => Edit<'written' | { readonly refused: Refused }>
}): Promise<'written' | { readonly refused: Refused }> {
  const { notebookId, answer: first, asksBeside: itemKey, change } = given
  const { household, answer, text, until, at } = first
  return database().write(async (tables) => {
    const outcome = await editIn(tables, { id: notebookId, household, at, change })
    if (outcome !== 'written') return outcome
    await tables.firstAnswer.create({
      data: { notebookId, household, answer, text, until: until ?? null, at },
    })
    const detail = { answer, text, ...(until === undefined ? {} : { until }) }
    await putOnRecord(tables, { notebookId, household, at, kind: 'first answer', detail })
    if (itemKey !== undefined)
      await sayIn(tables, { notebookId, itemKey, household, kind: 'remark', text, at })
    return 'written'
  })
}

type Row = Awaited<ReturnType<Tables['firstAnswer']['findMany']>>[number]

function answerFrom(row: Row): FirstAnswer {
  const answer = firstAnswerKinds.find((kind) => kind === row.answer)
  if (answer === undefined) throw new Error('The database holds an answer that this program does not know.')
  const { text, until, at } = row
  return {
    household: storedHousehold(row.household),
    answer,
    text,
    at,
    ...(until === null ? {} : { until }),
  }
}
