import { unansweredObjections, unansweredWords } from '../../../lib/words/messageText.ts'
import { Status } from '../../ui/Status.tsx'
import type { Opened } from './opened.ts'

/** How many objections beside an item wait for an answer; nothing where none does. */
export function UnansweredObjections({ opened, itemKey }: { opened: Opened; itemKey: string }) {
  const open = unansweredObjections(opened.messages.filter((message) => message.itemKey === itemKey))
  return open.length === 0 ? null : <Status kind="changed" text={unansweredWords(open.length)} />
}
