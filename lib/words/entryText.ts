import { never } from '../core/assert.ts'
import type { EntryObjection } from '../core/ledger/entryRules.ts'
import { dayWords } from './day.ts'

/** Why an entry is not taken as it is, or what is asked about it, with the field of its form. */
export function entryObjectionText(
  objection: EntryObjection,
  titleOf: (item: string) => string,
): { path: string; message: string } {
  switch (objection.kind) {
    case 'after today':
      return {
        path: 'date',
        message: `${dayWords(objection.date)} is yet to come: today is ${dayWords(objection.today)}. Enter what has been given, with the day on which it was given.`,
      }
    case 'before the notebook':
      return {
        path: 'earlierIsMeant',
        message: `This notebook was started on ${dayWords(objection.startedOn)}, and ${dayWords(objection.date)} is before that. If the day is right, tick here; if not, correct it.`,
      }
    case 'no such line':
      return {
        path: `lines[${objection.line}].line`,
        message: `“${objection.was.what}” is no longer in the plan. Choose another line, or take this row away: the amount then stays with the item.`,
      }
    case 'other item':
      return {
        path: `lines[${objection.line}].line`,
        message: otherItemWords(titleOf(objection.of), titleOf(objection.for)),
      }
    default:
      return never(objection)
  }
}

/** An entry for one item with a line of another. */
function otherItemWords(ofLine: string, ofEntry: string): string {
  return `This line is of “${ofLine}”, and the entry is for “${ofEntry}”. Choose a line of “${ofEntry}”; what is for several items is for the whole fence.`
}

/** Below the book, once an entry was made just now. */
export const enteredWords = 'Entered. It stands here in the book now.'

/** The tick that answers what is asked about an early day. */
export const earlierIsMeantWords = 'The day is right, although it is before the notebook was started'

/** Why an entry is not taken back. */
export const takeBackRefusals = {
  why: 'Why: needed, in a few words (at most 500 characters), such as “entered twice”.',
  changed:
    'This entry was changed or taken back in the meantime, or the other household wrote it. Load the page again.',
  /** One household alone does not take back what the other has confirmed. */
  confirmed:
    'The other household has confirmed this payment, so it stays in the book. If money went back, enter that as a payment the other way.',
} as const

/** Why an entry is not taken, at its field, beside what is asked about it. */
export const entryRefusals = {
  otherItem: otherItemWords,
  /** A receipt, a payment or a refund of nothing. */
  noAmount: 'Needed: an amount of more than nothing.',
  receiptGone: 'This photo or paper is not with the notebook any more. Choose another, or leave it out.',
  means: 'Needed: in a few words, by what means it was paid, such as “in cash” or “by bank”.',
  /** An entry in the other household's name. */
  onlyOwn: (other: string) =>
    `Each household enters what it gave or got back itself: ${other} has to enter this. Between you, enter a payment.`,
} as const
