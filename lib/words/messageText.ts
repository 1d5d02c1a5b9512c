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

/** Below what was said just now. */
export const saidWords = (other: string) => `Said. It stands here now, and ${other} can read it.`

/** Why something is not said beside an item, at its field. */
export const messageRefusals = {
  kind: 'Needed: choose one of the answers.',
  text: 'Needed: what you want to say.',
  tooLong: (length: number) => `At most ${longestMessage} characters; this has ${length}.`,
  answers: 'Needed: choose which message of the other household you answer.',
  removed: 'This item was removed in the meantime. What you typed is still on the page, to copy from.',
} as const
