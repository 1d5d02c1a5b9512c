import { type LetterFault, longestNotice } from '../../core/agreement/firstLetter.ts'
import { never } from '../../core/assert.ts'
import { dayWords } from '../day.ts'

/** What is wrong with a letter's days and what would be right, at its field. */
export function letterFaultText(fault: LetterFault): string {
  switch (fault.kind) {
    case 'no whole days':
      return `Whole days, at most ${longestNotice}, such as 30. Leave it empty where nobody named a notice.`
    case 'who said so':
      return 'Needed: who said that this notice is to be given, and when, so that it can be asked again.'
    case 'too soon':
      return `The day to answer by is before the notice is over: ${dayWords(fault.earliest)} or a later day. Empty: the end of the notice.`
    case 'ends before it begins':
      return 'The day to be done by is before the first day of the work: that day or a later one.'
    default:
      return never(fault)
  }
}

/** To be read before the letter is handed over. */
export const letterCaution =
  'In some places the law asks for a notice before a shared fence is built: for certain contents, a number of days, a way to deliver it, a witness. This page knows no law. Ask your local office, or whoever practises law there, what holds for you, and write down above who said so.'

/** Why no letter is made. */
export const letterRefusals = {
  tooLong: ({ lines, characters }: { readonly lines: number; readonly characters: number }) =>
    `The letter is ${lines} ${lines === 1 ? 'line' : 'lines'} too long for one page, even in small print. Shorten what is wrong, what is proposed or how to answer by about ${characters} characters.`,
  nothingWritten: 'Write and save the letter first.',
  invitationPastUse:
    'This invitation works no more: it was claimed, or a later one ended it. Load the page again, then make a new one.',
} as const

/** What is said where the day to answer by is over before the letter goes out. */
export function answerDayPast(day: string): string {
  return `The day to answer by, ${dayWords(day)}, is past. Give the letter a new day before you hand it over.`
}

/** What is said where the work would begin before the answer is due. */
export function workBeforeAnswer(from: string, by: string): string {
  return `The work would begin on ${dayWords(from)}, before the day to answer by, ${dayWords(by)}.`
}

/** The end of the notice, as it comes out of the letter's day. */
export function noticeEnds(day: string): string {
  return `The notice ends on ${dayWords(day)}.`
}

/** Of what a letter tells, what it does not tell yet. `what`: a heading of the letter, or a noun. */
export function notSaidInLetter(what: string): string {
  return `Not said yet: ${what}.`
}

/** The form fills in what is proposed out of the notebook; in the letter it is only once the form was saved. */
export const suggestedOnly =
  '“What you propose” is filled in above as a suggestion only. Save to have it in the letter.'
