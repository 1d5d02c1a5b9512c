import { daysLater } from '../amounts/daysLater.ts'
import type { FirstLetter } from './notebook.ts'

/** The longest notice that a letter can give, in days. */
export const longestNotice = 730

/** What is wrong with a letter's days, at the field that a person would change. */
export type LetterFault =
  | { readonly path: 'letter.noticeDays'; readonly kind: 'no whole days' }
  | { readonly path: 'letter.saidBy'; readonly kind: 'who said so' }
  | { readonly path: 'letter.answerBy'; readonly kind: 'too soon'; readonly earliest: string }
  | { readonly path: 'letter.workTo'; readonly kind: 'ends before it begins' }

/** The notice period in whole days; undefined where none is said, or where it is none. */
export function noticeDays({ noticeDays: typed }: FirstLetter): number | undefined {
  const days = /^[0-9]{1,4}$/.test(typed) ? Number(typed) : undefined
  return days !== undefined && days <= longestNotice ? days : undefined
}

/** The first day that leaves the whole notice period to whoever answers; undefined while letter or notice have no day. */
export function earliestAnswerDay(letter: FirstLetter): string | undefined {
  const days = noticeDays(letter)
  return letter.on === '' || days === undefined ? undefined : daysLater(letter.on, days)
}

/** The day to answer by: as it was said, else the end of the notice period. */
export function answerDay(letter: FirstLetter): string | undefined {
  return letter.answerBy || earliestAnswerDay(letter)
}

/**
 * What keeps a letter from being stored: a notice that is no number of whole days up to `longestNotice`, or that nobody
 * said; a day to answer by that comes before the notice is over, or before the letter; work that ends before it begins.
 */
export function letterFaults(letter: FirstLetter): readonly LetterFault[] {
  const said = letter.noticeDays !== ''
  const earliest = earliestAnswerDay(letter) ?? letter.on
  return [
    ...(said && noticeDays(letter) === undefined
      ? [{ path: 'letter.noticeDays', kind: 'no whole days' } as const]
      : []),
    ...(said && letter.saidBy.trim() === '' ? [{ path: 'letter.saidBy', kind: 'who said so' } as const] : []),
    ...(letter.answerBy !== '' && letter.answerBy < earliest
      ? [{ path: 'letter.answerBy', kind: 'too soon', earliest } as const]
      : []),
    ...(letter.workTo !== '' && letter.workTo < letter.workFrom
      ? [{ path: 'letter.workTo', kind: 'ends before it begins' } as const]
      : []),
  ]
}

/** A letter in which nothing is said yet. */
export const emptyLetter: FirstLetter = {
  wrong: '',
  proposed: '',
  workFrom: '',
  workTo: '',
  noticeDays: '',
  saidBy: '',
  answerBy: '',
  answerTo: '',
  on: '',
}
