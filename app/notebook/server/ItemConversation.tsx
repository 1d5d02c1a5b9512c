import Link from 'next/link'
import { otherHousehold } from '../../../lib/core/people/household.ts'
import type { Message } from '../../../lib/store/messages.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { messageKindWords, messageStart, saidWords } from '../../../lib/words/messageText.ts'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { LedTo } from '../../ui/LedTo.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { MessageForm } from '../forms/MessageForm.tsx'
import { sayAboutItem } from './messageActions.ts'
import type { Opened } from './opened.ts'
import { UnansweredObjections } from './UnansweredObjections.tsx'

/** What the two households said about an item, oldest first, and the form to say more. */
export function ItemConversation({
  opened,
  itemKey,
  heading = 'What you two said about this',
}: {
  opened: Opened
  itemKey: string
  heading?: string | undefined
}) {
  const { notebook, notebookId, household } = opened
  const messages = opened.messages.filter((message) => message.itemKey === itemKey)
  const places = new Map(messages.map(({ id }, index) => [id, index + 1]))
  const own = messages.filter((message) => message.household === household)
  const answerable = messages
    .filter((message) => message.household !== household)
    .map(({ id, kind, text }) => ({
      value: String(id),
      label: `${places.get(id)}, ${messageKindWords[kind].toLowerCase()}: ${messageStart(text)}`,
    }))
  return (
    <Panel
      heading={heading}
      id="conversation"
      aside={<UnansweredObjections opened={opened} itemKey={itemKey} />}
    >
      <LedTo mark={`${own.length}`} says={saidWords(householdName(notebook, otherHousehold(household)))}>
        {messages.length === 0 ? (
          <p>Nothing yet. Objections, proposals and remarks can be kept here, beside what they are about.</p>
        ) : (
          <ol className="conversation">
            {messages.map((message) => (
              <MessageView
                key={message.id}
                message={message}
                places={places}
                name={householdName(notebook, message.household)}
                ledTo={message === own.at(-1)}
              />
            ))}
          </ol>
        )}
      </LedTo>
      <p>
        A proposal that goes into the plan when it is accepted, and shows what it asks, is made under{' '}
        <Link href={`/notebook/${notebookId}/proposals`} prefetch={false}>
          Proposals
        </Link>
        .
      </p>
      <div className="message-form">
        <MessageForm
          key={messages.length}
          save={sayAboutItem.bind(null, notebookId, itemKey)}
          answerable={answerable}
        />
      </div>
    </Panel>
  )
}

function MessageView({
  message,
  places,
  name,
  ledTo,
}: {
  message: Message
  places: ReadonlyMap<number, number>
  name: string
  /** Whoever said it just now is led to it. */
  ledTo: boolean
}) {
  const { kind, answers, text, at, household } = message
  const answered = answers === undefined ? undefined : places.get(answers)
  return (
    <li className="message" id={`message-${message.id}`} data-led-to={ledTo ? '' : undefined}>
      <p className="message-head">
        <HouseholdTag household={household} name={name} />
        <span>
          <strong>{messageKindWords[kind]}</strong>
          {answered === undefined ? '' : ` to ${answered}`}
        </span>
        <span className="quiet">{shownMoment(at)}</span>
      </p>
      <p className="message-text">{text}</p>
    </li>
  )
}
