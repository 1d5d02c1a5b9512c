import { z } from 'zod'
import { askAgainFault } from '../../../lib/core/agreement/askAgainDay.ts'
import { type FirstAnswerKind, firstAnswerKinds } from '../../../lib/store/firstAnswers.ts'
import { firstAnswerRefusals } from '../../../lib/words/firstAnswerText.ts'
import { longestMessage } from '../../../lib/words/messageText.ts'
import { pressFields } from './pressFields.ts'
import { typedText } from './typedText.ts'

/** What the form of one answer holds, read and looked over; or why it can't be taken. */
export type ReadFirstAnswer =
  | {
      readonly answer: FirstAnswerKind
      readonly text: string
      readonly until?: string
      /** The item beside which a question is asked, by its key. */
      readonly about?: string
    }
  | { readonly refused: string }

const formSchema = z.object({
  answer: z.enum(firstAnswerKinds),
  text: z.string().max(200_000).default(''),
  until: z.string().max(100).default(''),
  about: z.string().max(200_000).optional(),
})

/**
 * Reads the form of one answer. Words are needed for a question alone, a day for "not now" alone.
 *
 * @param today in ISO 8601
 */
export function readFirstAnswer(form: unknown, today: string): ReadFirstAnswer {
  const read = formSchema.safeParse(pressFields(form))
  if (!read.success || !read.data.text.isWellFormed()) return { refused: firstAnswerRefusals.unknown }
  const { answer, until, about } = read.data
  const text = typedText(read.data.text)
  if (text.length > longestMessage)
    return { refused: firstAnswerRefusals.tooLong(text.length, longestMessage) }
  if (answer === 'a question') {
    if (about === undefined) return { refused: firstAnswerRefusals.about }
    return text === '' ? { refused: firstAnswerRefusals.question } : { answer, text, about }
  }
  if (answer !== 'not now') return { answer, text }
  const fault = askAgainFault(until, today)
  if (fault === undefined) return { answer, text, until }
  if (typeof fault === 'object') return { refused: firstAnswerRefusals.tooFar(fault.latest) }
  const words = {
    needed: firstAnswerRefusals.day,
    'no day': firstAnswerRefusals.noDay,
    past: firstAnswerRefusals.past,
  }
  return { refused: words[fault] }
}
