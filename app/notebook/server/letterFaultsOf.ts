import { emptyLetter, letterFaults } from '../../../lib/core/agreement/firstLetter.ts'
import type { FirstLetter } from '../../../lib/core/agreement/notebook.ts'
import { isCalendarDay } from '../../../lib/core/amounts/calendarDay.ts'
import { isNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { isObject, type NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { letterFaultText } from '../../../lib/words/letter/letterFaultText.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { typedText } from './typedText.ts'

/**
 * What the form of the first letter asks about before it is saved, told together with the faults of the file. A notice
 * that is no number at all is a fault of the file's own: it is told once.
 */
export function letterFaultsOf(next: NotebookDocument): readonly Fault[] {
  if (!isObject(next.letter)) return []
  const letter = readableLetter(next.letter)
  return letterFaults(letter)
    .filter((fault) => fault.kind !== 'no whole days' || isNumber(letter.noticeDays, 6))
    .map((fault) => ({ path: fault.path, message: letterFaultText(fault) }))
}

/** The letter as it was typed, without days that are none: those are the file's own faults. */
function readableLetter(typed: Readonly<Record<string, unknown>>): FirstLetter {
  const text = (key: keyof FirstLetter) => typedText(typed[key])
  const day = (key: keyof FirstLetter) => (isCalendarDay(text(key)) ? text(key) : '')
  return {
    ...emptyLetter,
    noticeDays: text('noticeDays'),
    saidBy: text('saidBy'),
    on: day('on'),
    answerBy: day('answerBy'),
    workFrom: day('workFrom'),
    workTo: day('workTo'),
  }
}
