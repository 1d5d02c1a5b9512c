import type { ReaderLinkWithVisits } from '../../../lib/store/readerLinks.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import { householdName } from '../../../lib/words/labels.ts'
import {
  openedWords,
  readerContentWords,
  readerLinkState,
  untilWords,
} from '../../../lib/words/readerText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { Status } from '../../ui/Status.tsx'
import type { Opened } from './opened.ts'
import { endReadersLink } from './readerActions.ts'

/** One reader's link: for whom, what it shows, how long it works, who opened what of it when; and its end. */
export function ReaderLinkView({
  opened,
  link,
  now,
}: {
  opened: Opened
  link: ReaderLinkWithVisits
  now: Date
}) {
  const { notebook, notebookId } = opened
  const state = readerLinkState(link, now)
  const { name } = readerContentWords[link.content]
  return (
    <Panel level={3} tone="quiet" heading={link.label} aside={<LinkStatus state={state} />}>
      <p>
        {name}. Made {shownMoment(link.createdAt)} by {householdName(notebook, link.createdBy)}.{' '}
        {link.revokedAt
          ? `Ended ${shownMoment(link.revokedAt)}${link.revokedBy ? ` by ${householdName(notebook, link.revokedBy)}` : ''}.`
          : `${state === 'open' ? 'Works' : 'Worked'} through ${untilWords(link.expiresAt)}.`}
      </p>
      {link.openings === 0 ? (
        <p className="quiet">Not opened yet.</p>
      ) : (
        <details className="reader-visits">
          <summary>
            {link.openings === 1 ? 'Opened once' : `Opened ${link.openings} times`}
            {link.visits[0] ? `, last ${shownMoment(link.visits[0].at)}` : ''}
          </summary>
          <ul>
            {link.visits.map((visit) => (
              <li key={`${visit.at.getTime()}${visit.what}`}>
                {shownMoment(visit.at)}: {openedWords[visit.what] ?? visit.what}
              </li>
            ))}
          </ul>
          {link.openings > link.visits.length ? (
            <p className="quiet">Only the newest {link.visits.length} are listed here.</p>
          ) : null}
        </details>
      )}
      {state === 'open' ? (
        <PressForm
          action={endReadersLink.bind(null, notebookId)}
          label="End this link"
          labelFor={link.label}
          weight="grave"
          confirm={`End the link for ${link.label}? It opens nothing from then on, and no press brings it back: whoever is to read on needs a new link.`}
        >
          <input type="hidden" name="id" value={link.id} />
        </PressForm>
      ) : null}
    </Panel>
  )
}

function LinkStatus({ state }: { state: ReturnType<typeof readerLinkState> }) {
  if (state === 'open') return <Status kind="agreed" text="Works" />
  return <Status kind="open" text={state === 'ended' ? 'Ended' : 'Has run out'} />
}
