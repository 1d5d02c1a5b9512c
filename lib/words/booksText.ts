import type { BookMarks, Contribution, LineOf, SpentOn } from '../core/agreement/notebook.ts'
import type { Minor } from '../core/amounts/money.ts'
import type { PlannedLine } from '../core/ledger/findLine.ts'
import type { Account } from '../core/ledger/journal.ts'
import type { LineStanding } from '../core/ledger/plannedAgainstActual.ts'
import type { MovedLine } from '../core/ledger/waitingMarks.ts'
import { type Household, households, otherHousehold } from '../core/people/household.ts'
import { dayWords } from './day.ts'
import { itemTitle } from './itemWords.ts'
import { contributionWords } from './labels.ts'
import { moneyWords } from './money.ts'
import { pressRefusals } from './pressText.ts'
import type { ShareNames } from './shareText.ts'
import { capitalised } from './summary/names.ts'

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

/** Where a line stands, seen by one household: in a few words, and in sentences what counts meanwhile and who marked what. */
export function lineStandingWords(
  standing: LineStanding,
  own: Household,
  names: ShareNames,
): { readonly kind: 'agreed' | 'open' | 'changed'; readonly text: string; readonly more: readonly string[] } {
  const { marks, moved, entries, markable, line } = standing
  const { held, pending } = marks
  const money = (minor: Minor) => moneyWords(minor, names.currency)
  const more = lineMarksWords(standing, own, names)
  const other = otherHousehold(own)
  if (held !== undefined && !moved)
    return {
      kind: 'agreed',
      text:
        entries.length === 0 && held.amount === 0n
          ? 'Marked as not needed by both: it counts as nothing'
          : `Marked as ${line.pot === 'labour' ? 'worked' : 'bought'} by both: the actual amount counts`,
      more,
    }
  if (held !== undefined)
    return {
      kind: 'changed',
      text: movedWords(held.amount, markable, names.currency),
      more: [`${money(held.amount)} counts until both mark another amount.`, ...more],
    }
  const done = line.pot === 'labour' ? 'worked' : 'bought'
  if (pending[other]?.amount === markable)
    return {
      kind: 'open',
      text: `${capitalised(names[other])} marked it as ${done}; it waits for your mark`,
      more,
    }
  if (pending[own]?.amount === markable)
    return { kind: 'open', text: `You marked it; it waits for ${names[other]}`, more }
  if (more.length > 0)
    return {
      kind: 'changed',
      text: 'Marked by one at another amount than it comes to now: the planned amount counts',
      more,
    }
  return {
    kind: 'open',
    text: entries.length === 0 ? 'Nothing entered yet' : 'Not marked yet: the planned amount counts',
    more,
  }
}

/** Who marked which amount of a line, and when: what both marked, then what waits for a second mark. */
function lineMarksWords(
  { marks: { held, pending }, markable }: LineStanding,
  own: Household,
  names: ShareNames,
): readonly string[] {
  const money = (minor: Minor) => moneyWords(minor, names.currency)
  const { a, b } = held?.marks ?? {}
  const both =
    held === undefined || a === undefined || b === undefined
      ? []
      : [
          `${capitalised(names.a)} marked ${money(held.amount)} on ${dayWords(a.on)}, ${names.b} on ${dayWords(b.on)}.`,
        ]
  const waiting = households.flatMap((household) => {
    const mark = pending[household]
    if (mark === undefined) return []
    const marked = `${capitalised(names[household])} marked ${money(mark.amount)} on ${dayWords(mark.on)}`
    if (mark.amount !== markable) return [`${marked}, which it does not come to now.`]
    const by = household === own ? names[otherHousehold(own)] : 'your mark'
    return [`${marked}; that waits for ${by}.`]
  })
  return [...both, ...waiting]
}

function movedWords(held: Minor, actual: Minor, currency: string): string {
  const both = `Both marked ${moneyWords(held, currency)}`
  return actual < 0n
    ? `${both}; since then more came back than was spent`
    : `${both}; it has come to ${moneyWords(actual, currency)} since`
}

/** A line whose marked amount is no longer what it comes to: what counts, in one sentence. */
export function movedLineWords({ line, held, actual }: MovedLine, currency: string): string {
  return `${lineTitle(line)}: ${lowerFirst(movedWords(held, actual, currency))}. ${moneyWords(held, currency)} counts until both mark another amount`
}

/** The same of several, for the strip of open matters. */
export function movedLinesWords(moved: readonly MovedLine[], currency: string): string {
  const [only] = moved
  return only !== undefined && moved.length === 1
    ? movedLineWords(only, currency)
    : `${moved.length} lines have come to another amount since both marked them: what both marked counts until both mark another`
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1)
}

/** Who marked something in the books, and when. */
export function marksWords(marks: BookMarks, names: ShareNames): readonly string[] {
  return households.flatMap((household) => {
    const mark = marks[household]
    return mark === undefined ? [] : [`${capitalised(names[household])} marked it on ${dayWords(mark.on)}.`]
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

/** "Take your mark off $259.00": the label of the press that takes a mark off which waits for the other household's. */
export function unmarkWords(amount: Minor, currency: string): string {
  return `Take your mark off ${moneyWords(amount, currency)}`
}

/** The label of the press that marks all lines of an item for which something was entered. */
export function markAllWords(count: number): string {
  return `Mark these ${count} lines at what they came to`
}

/** "Along the gardens, 3 lines". */
export function linesOfItemWords(title: string, count: number): string {
  return `${title}, ${count} ${count === 1 ? 'line' : 'lines'}`
}

/** Planned beside actual, where an item is read. */
export const cameToWords = {
  heading: 'Planned and actual',
  all: 'In all',
  things: 'Kept or sold',
  inBooks: 'See it in the books, line by line',
} as const

export const booksRefusals = {
  unreadable: pressRefusals.unreadable,
  gone: 'This line is no longer in the plan. Load the page again.',
  belowZero:
    'More came back for this line than was spent on it, so there is nothing to mark. Look at its entries first.',
  moved: (amount: string) =>
    `The line has come to ${amount} in the meantime. Load the page again, look at its entries, then mark that.`,
  held: (amount: string) =>
    `Both have marked ${amount}, so one alone can’t undo it: it counts until both mark another amount. Enter what is missing, or take back what was entered wrongly; then both mark what the line comes to.`,
  valueHeld:
    'Both have marked that all of it counts, so one alone can’t undo it. If it was wrong, whoever wrote the entry takes it back and enters it anew.',
  valueStays:
    'Both have marked that all of it counts, and it is the other household’s, so one alone can’t take it back. Goods that went back are entered as received back.',
  thingHeld:
    'Both have marked this, so one alone can’t undo it: it counts until both mark another value. Change it, or take it off the list; then both mark that.',
  fileInstead:
    'The books hold what both of you have marked or confirmed. A file brings no marks, so one household alone can’t put it in their place. Start a new notebook from the file instead, on the start page.',
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
    ? `Both marked that all ${amount} counts, although the lower value is ${lower}. One alone can’t undo that; if it was wrong, whoever wrote the entry takes it back and enters it anew.${source}`
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
