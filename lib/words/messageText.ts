/** The kinds of what is said beside an item. */
export type MessageKindName = 'remark' | 'objection' | 'proposal' | 'answer'

export const messageKindWords: Readonly<Record<MessageKindName, string>> = {
  remark: 'Remark',
  objection: 'Objection',
  proposal: 'Proposal',
  answer: 'Answer',
}

/** For whoever chooses what it is that they say. */
export const messageKindMeaning: Readonly<Record<MessageKindName, string>> = {
  remark: 'Something to know. It asks for nothing.',
  objection:
    'You do not agree with this as it stands. It is counted as open until the other household answers.',
  proposal: 'Something that you would have instead, or besides.',
  answer: 'To one thing that the other household said here.',
}

/** As long as one message may be, in characters. */
export const longestMessage = 4000

/** What is asked of messages here: who said what, and which message answers which. */
type Said = {
  readonly id: number
  readonly kind: MessageKindName
  readonly itemKey: string
  readonly answers?: number
}

/** The objections that the other household has not answered yet. Nobody answers what they said themselves. */
export function unansweredObjections<Message extends Said>(messages: readonly Message[]): readonly Message[] {
  const answered = new Set(messages.flatMap(({ answers }) => answers ?? []))
  return messages.filter(({ kind, id }) => kind === 'objection' && !answered.has(id))
}

/** "1 objection not answered" */
export function unansweredWords(count: number): string {
  return count === 1 ? '1 objection not answered' : `${count} objections not answered`
}

/** The beginning of a message, on one line. */
export function messageStart(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim()
  return line.length > 60 ? `${line.slice(0, 59).trimEnd()}…` : line
}
