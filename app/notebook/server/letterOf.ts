import { answerDay, emptyLetter } from '../../../lib/core/agreement/firstLetter.ts'
import { printFonts } from '../../../lib/files/printFonts.ts'
import type { LetterPaper } from '../../../lib/pdf/letterPdf.ts'
import { letterContents, letterLacks } from '../../../lib/words/letter/letterContents.ts'
import {
  answerDayPast,
  notSaidInLetter,
  suggestedOnly,
  workBeforeAnswer,
} from '../../../lib/words/letter/letterFaultText.ts'
import { type LetterInvitation, letterOf } from '../../../lib/words/letter/letterText.ts'
import { proposedFence } from '../../../lib/words/letter/proposedFence.ts'
import type { Opened } from './opened.ts'

/** The first letter of a notebook, to be set on paper. */
export function letterPaper(
  { asAgreed: notebook, statement }: Pick<Opened, 'asAgreed' | 'statement'>,
  invitation: LetterInvitation,
): LetterPaper {
  const { letter, units } = notebook
  return {
    letter: letterOf(notebook, statement, invitation),
    units,
    fonts: printFonts(),
    ...(letter?.on ? { madeAt: new Date(`${letter.on}T12:00:00Z`) } : {}),
  }
}

/** What to look at before the letter goes out, in words: what it does not say yet, and days that do not go together. */
export function letterOpenPoints(
  { notebook, statement }: Pick<Opened, 'notebook' | 'statement'>,
  today: string,
): string[] {
  const letter = notebook.letter ?? emptyLetter
  const by = answerDay(letter)
  const early = letter.workFrom !== '' && by !== undefined && letter.workFrom < by
  return [
    ...letterLacks(letterContents(notebook, statement)).map(({ id, heading }) =>
      id === 'proposed' && isSuggested(notebook) ? suggestedOnly : notSaidInLetter(heading),
    ),
    ...(letter.on === '' ? [notSaidInLetter('the day of the letter')] : []),
    ...(by !== undefined && by < today ? [answerDayPast(by)] : []),
    ...(early ? [workBeforeAnswer(letter.workFrom, by)] : []),
  ]
}

/** Whether the form of a letter that was never saved is filled in with what the notebook would propose. */
function isSuggested(notebook: Opened['notebook']): boolean {
  return notebook.letter === undefined && proposedFence(notebook) !== ''
}
