import { answerDay, emptyLetter, noticeDays } from '../../core/agreement/firstLetter.ts'
import type { Notebook } from '../../core/agreement/notebook.ts'
import { parseLength } from '../../core/amounts/length.ts'
import { stationsInOrder } from '../../core/boundary/stationsInOrder.ts'
import type { Result } from '../../core/result.ts'
import { sharedUses } from '../../core/shares/passages.ts'
import type { Statement } from '../../core/shares/statement.ts'
import { dayWords } from '../day.ts'
import { evidenceWords, householdName } from '../labels.ts'
import { lengthWords } from '../length.ts'
import { moneyWords } from '../money.ts'
import { capSentence, shareNames } from '../shareText.ts'
import { typedSentence } from '../summary/names.ts'
import { clipped } from './clipped.ts'
import { splitReasons } from './splitReason.ts'

/** What a first letter says, in its order. */
export const letterContentIds = [
  'wrong',
  'proposed',
  'where',
  'cost',
  'split',
  'time',
  'answer',
  'by',
] as const
export type LetterContentId = (typeof letterContentIds)[number]

/** One thing that a letter says; without sentences where the notebook does not say it yet. */
export type LetterContent = {
  readonly id: LetterContentId
  readonly heading: string
  readonly sentences: readonly string[]
}

const headings: Readonly<Record<LetterContentId, string>> = {
  wrong: 'What is wrong with the old fence',
  proposed: 'What we propose',
  where: 'Where',
  cost: 'What it is estimated to cost',
  split: 'How we propose to share it, and why',
  time: 'When the work would be done',
  answer: 'How to answer',
  by: 'By when',
}

/**
 * Everything that the first letter says, whether it is said yet or not. Some statutes on dividing fences ask a notice for
 * just these contents; whether one applies, and in what form, is for whoever knows the local law to say.
 */
export function letterContents(notebook: Notebook, statement: Result<Statement>): readonly LetterContent[] {
  const letter = notebook.letter ?? emptyLetter
  const sentences: Readonly<Record<LetterContentId, readonly string[]>> = {
    wrong: typed(letter.wrong),
    proposed: typed(letter.proposed),
    where: whereSentences(notebook),
    cost: statement.ok ? costSentences(notebook, statement.value) : [],
    split: statement.ok ? splitSentences(notebook, statement.value) : [],
    time: timeSentences(letter.workFrom, letter.workTo),
    answer: typed(letter.answerTo),
    by: bySentences(notebook),
  }
  return letterContentIds.map((id) => ({ id, heading: headings[id], sentences: sentences[id] }))
}

/** The contents that the notebook does not say yet. */
export function letterLacks(contents: readonly LetterContent[]): readonly LetterContent[] {
  return contents.filter(({ sentences }) => sentences.length === 0)
}

/** So many paragraphs of somebody's own are kept apart: more than a page has room for. */
const mostParagraphs = 200

/** Words of somebody's own, a paragraph for each of theirs. */
function typed(text: string): string[] {
  const lines = text
    .split('\n')
    .map((line) => typedSentence(line.replace(/\s+/g, ' ')))
    .filter(Boolean)
  if (lines.length <= mostParagraphs) return lines
  return [...lines.slice(0, mostParagraphs - 1), lines.slice(mostParagraphs - 1).join(' ')]
}

function whereSentences({ line, units }: Notebook): string[] {
  const [start, end] = [clipped(line.start, 200), clipped(line.end, 200)]
  if (start === '' && end === '') return []
  const last = parseLength(stationsInOrder(line.stations).findLast(({ at }) => at !== '')?.at ?? '')
  const long = last === undefined ? '' : `, ${lengthWords(last, units)} long`
  const rests =
    line.evidence === ''
      ? ''
      : ` What we know of where the line lies rests on ${evidenceWords[line.evidence]}.`
  return [
    `Along the boundary line from ${start || 'its start'} to ${end || 'its end'}${long}.${rests} The notebook shows it drawn to scale.`,
  ]
}

function costSentences(
  { currency, sections, gates, common }: Notebook,
  { total, items }: Statement,
): string[] {
  if (total === 0n) return []
  const money = (minor: bigint) => moneyWords(minor, currency)
  const materials = items.reduce((sum, item) => sum + item.materialsTotal, 0n)
  const labour = items.reduce((sum, item) => sum + item.labourTotal, 0n)
  const unpriced = [...sections, ...gates, ...common].reduce(
    (sum, item) =>
      sum +
      item.materials.filter(({ unitPrice }) => unitPrice === '').length +
      item.labour.filter(({ rate, counts }) => counts && rate === '').length,
    0,
  )
  const missing =
    unpriced === 0
      ? ''
      : unpriced === 1
        ? ' One line has no price yet.'
        : ` ${unpriced} lines have no price yet.`
  return [
    `${money(total)} in all: ${money(materials)} for materials and ${money(labour)} for work, own hours counted at their rates.${missing}`,
  ]
}

function splitSentences(notebook: Notebook, statement: Statement): string[] {
  if (statement.total === 0n) return []
  const { asked, inMoney, items } = statement
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const names = shareNames(notebook)
  const inMoneyWords =
    inMoney.b <= 0n || inMoney.b === asked.b
      ? ''
      : ` If all goes as planned, you bring ${money(inMoney.b)} of yours in money and the rest in goods and hours.`
  const moved = capSentence(asked, names)
  const uses = (id: string) => sharedUses(notebook.gates.find((gate) => gate.id === id))
  return [
    `You are asked for ${money(asked.b)} and we for ${money(asked.a)}, goods and hours counted in money.${inMoneyWords}${moved ? ` ${moved}` : ''}`,
    ...splitReasons(items, (id) => shareNames(notebook, uses(id))),
  ]
}

function timeSentences(from: string, to: string): string[] {
  if (from === '' && to === '') return []
  if (to === '') return [`From ${dayWords(from)}.`]
  return [from === '' ? `Done by ${dayWords(to)}.` : `From ${dayWords(from)} to ${dayWords(to)}.`]
}

function bySentences(notebook: Notebook): string[] {
  const letter = notebook.letter ?? emptyLetter
  const by = answerDay(letter)
  if (by === undefined) return []
  const days = noticeDays(letter)
  const said = clipped(letter.saidBy, 200)
  const notice =
    days === undefined
      ? ''
      : ` That gives a notice of ${daysWords(days)}${said ? ` (said by: ${said})` : ''}.`
  return [`Please answer by ${dayWords(by)}.${notice}`]
}

/** "30 days" */
export function daysWords(days: number): string {
  return days === 1 ? '1 day' : `${days} days`
}

/** Who the letter is from and to, and its day, on one line. */
export function letterLine(notebook: Notebook): string {
  const from = clipped(householdName(notebook, 'a'), 100)
  const to = clipped(householdName(notebook, 'b'), 100)
  const day = notebook.letter?.on ? `, ${dayWords(notebook.letter.on)}` : ''
  return `From ${from} to ${to}${day}`
}
