import type { BookMarks, Contribution, LineOf, SpentOn } from '../core/agreement/notebook.ts'
import type { Minor } from '../core/amounts/money.ts'
import type { PlannedLine } from '../core/ledger/findLine.ts'
import type { Account } from '../core/ledger/journal.ts'
import type { LineStanding } from '../core/ledger/plannedAgainstActual.ts'
import { type Household, households, otherHousehold } from '../core/people/household.ts'
import { dayWords } from './day.ts'
import { itemTitle } from './itemWords.ts'
import { contributionWords } from './labels.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'

/** What a line of the plan is called, where its item is not named beside it. */
export function lineTitle({ item, itemId, what }: PlannedLine): string {
  const title = itemTitle({ kind: item.kind, name: item.name, key: `item:${itemId}` })
  return `${title}: ${lineWords(what)}`
}

export function lineWords(what: string): string {
  return what.trim() || 'a line with no name'
}

/** A line as something to choose, with what was planned for it. */
export function lineChoiceWords(
  line: PlannedLine,
  planned: Minor,
  currency: string,
  inDraftOnly: boolean,
): string {
  const work = line.pot === 'labour' ? ', work' : ''
  const draft = inDraftOnly ? ', in the draft only' : ''
  return `${lineTitle(line)}${work} (planned ${moneyWords(planned, currency)}${draft})`
}

/** More or less than planned, in words: a sign alone is easily missed. */
export function differenceOf(actual: Minor, planned: Minor, currency: string): string {
  const more = actual - planned
  if (more === 0n) return 'as planned'
  return more > 0n ? `${moneyWords(more, currency)} more` : `${moneyWords(-more, currency)} less`
}

/** Where a line stands, seen by one household, in one sentence. */
export function lineStandingWords(
  standing: LineStanding,
  own: Household,
  names: ShareNames,
): { readonly kind: 'agreed' | 'open' | 'changed'; readonly text: string } {
  const { bought, marks, outdated, entries } = standing
  const done = standing.line.pot === 'labour' ? 'worked' : 'bought'
  if (bought) return { kind: 'agreed', text: `Marked as ${done} by both: the actual amount counts` }
  const other = otherHousehold(own)
  if (marks[other] !== undefined)
    return { kind: 'open', text: `${names[other]} marked it as ${done}; it waits for your mark` }
  if (marks[own] !== undefined) return { kind: 'open', text: `You marked it; it waits for ${names[other]}` }
  if (outdated.length > 0)
    return { kind: 'changed', text: 'It was marked at another amount, which no longer holds' }
  return {
    kind: 'open',
    text: entries.length === 0 ? 'Nothing entered yet' : 'Not marked yet: the planned amount counts',
  }
}

/** Who marked something in the books, and when. */
export function marksWords(marks: BookMarks, names: ShareNames): readonly string[] {
  return households.flatMap((household) => {
    const mark = marks[household]
    return mark === undefined ? [] : [`${names[household]} marked it on ${dayWords(mark.on)}.`]
  })
}

/** "Mark as bought at $259.00": the label of the press. */
export function markWords(standing: LineStanding, currency: string): string {
  const { line, markable, entries } = standing
  const amount = moneyWords(markable, currency)
  if (entries.length === 0) return `Mark as not needed, at ${amount}`
  if (line.pot === 'labour') return `Mark as worked, at ${amount}`
  return line.line.credit ? `Mark as received, at ${amount}` : `Mark as bought, at ${amount}`
}

/** The label of the press that marks all lines of an item for which something was entered. */
export function markAllWords(count: number): string {
  return `Mark these ${count} lines at what they came to`
}

/** "Along the gardens, 3 lines". */
export function linesOfItemWords(title: string, count: number): string {
  return `${title}, ${count} ${count === 1 ? 'line' : 'lines'}`
}

export const booksRefusals = {
  unreadable: 'This press could not be read. Load the page again.',
  gone: 'This line is no longer in the plan. Load the page again.',
  belowZero:
    'More came back for this line than was spent on it, so there is nothing to mark. Look at its entries first.',
  moved: (amount: string) =>
    `The line has come to ${amount} in the meantime. Load the page again, look at its entries, then mark that.`,
  breaks: (reason: string) => `With this the shares could no longer be worked out: ${reason}`,
  changed: 'This was changed in the meantime. Load the page again.',
  notYours: 'Only the household that wrote the entry can change what it was for.',
} as const

/** What was for a line that is gone. */
export function goneLineWords(was: LineOf, amount: string, entry: string, item: string | undefined): string {
  const place = item === undefined ? 'an item that was removed' : item
  return `${amount} of “${entry}” was for “${lineWords(was.what)}” of ${place}, which is no longer in the plan. Choose another line, or leave it with the item as a whole.`
}

export const accountWords = (names: ShareNames): Readonly<Record<Account, string>> => ({
  a: names.a,
  b: names.b,
  suppliers: 'Suppliers and buyers',
  fence: 'The fence: what it has cost',
  plan: 'The plan: what is asked for',
})

/** For the strip of open matters: how many lines, values and things wait for the household's own mark. */
export function waitingMarksWords(count: number): string {
  return count === 1
    ? 'One figure in the books waits for your mark'
    : `${count} figures in the books wait for your mark`
}

/** For the strip of open matters: own receipts that belong to no line any more. */
export function goneLinesWords(count: number): string {
  return count === 1
    ? 'Something you entered was for a line that is no longer in the plan'
    : `${count} things you entered were for lines that are no longer in the plan`
}

/** Which plan the books are held against. */
export function heldAgainstWords(signed: number | undefined): string {
  return signed === undefined
    ? 'Nothing is signed yet: planned is what the draft says.'
    : `Planned is what revision ${signed} says, as all have signed it.`
}

/** What an entry of the book is called in a sentence: its note, its shop, or what it is. */
export function entryName(entry: Contribution | undefined): string {
  if (entry === undefined) return 'an entry'
  const said = entry.note.trim() || entry.shop.trim()
  return `${said || contributionWords[entry.kind]}, ${dayWords(entry.date)}`
}

export function goneWriterWords(writer: string): string {
  return `${writer} wrote this entry, and says where it belongs. Until then the amount counts as given, and is on no line.`
}

/** What of goods in kind counts, and who said what they are worth. */
export function valuationStanding(amount: string, lower: string, saidBy: string, marks: BookMarks): string {
  const source = saidBy.trim() === '' ? '' : ` Said by: ${saidBy.trim()}.`
  return marks.a !== undefined && marks.b !== undefined
    ? `Both marked that all ${amount} counts, although the lower value is ${lower}.${source}`
    : `${amount} was entered; the lower value is ${lower}, and only that counts until both mark the whole.${source}`
}

export function trialBalanceWords(adds: boolean): string {
  return adds
    ? 'Yes. Every amount is entered twice, once for who gives it and once for what it goes to, and the two sums are equal.'
    : 'No. The two sums differ, which is a mistake of this program: please keep a copy of the notebook file and report it.'
}

export function shopWords(kind: Contribution['kind'], shop: string): string {
  return kind === 'refund' ? `From ${shop.trim()}.` : `At ${shop.trim()}.`
}

/** One line that an entry was for. */
export function entryLineWords(line: SpentOn, item: string, amount: string): string {
  const quantity = line.quantity === '' ? '' : `${line.quantity} × `
  return `${amount} for ${quantity}${lineWords(line.what)}, ${item}`
}

export function lessCountsWords(whole: string, counts: string): string {
  return `${whole} was entered; ${counts} counts, the lower of its values.`
}
