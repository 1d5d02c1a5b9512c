import { idOfItemKey, itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { kindOf } from '../../../lib/forms/parts.ts'
import { isObject } from '../../../lib/forms/readNotebook.ts'
import { latestChanges } from '../../../lib/store/changes.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { removedWords } from '../../../lib/words/removedText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { Panel } from '../../ui/Panel.tsx'
import type { Opened } from './opened.ts'
import { putItemBack } from './putBackActions.ts'

/** For how long a removal is offered to be undone, in milliseconds: an hour. */
const offered = 3_600_000

/** What this household removed a short while ago, each with a way to put it back; nothing where it removed nothing. */
export async function RemovedItems({ opened }: { opened: Opened }) {
  const { notebookId, household, document } = opened
  const since = Date.now() - offered
  const removed = (await latestChanges(notebookId)).flatMap((change) => {
    const id = idOfItemKey(change.itemKey)
    const gone = id !== undefined && change.after === null && kindOf(document, id) === undefined
    const mine = change.household === household && change.at.getTime() > since
    const item = isObject(change.before) ? change.before.item : undefined
    return gone && mine && isObject(item)
      ? [{ id, name: typeof item.name === 'string' ? item.name : '' }]
      : []
  })
  if (removed.length === 0) return null
  return (
    <Panel heading={removedWords.heading} id="removed">
      {removed.map(({ id, name }) => {
        const title = itemTitle({ kind: 'common', name, key: itemKey(id) })
        return (
          <div key={id}>
            <p>
              {removedWords.said(title)} <span className="quiet">{removedWords.hint}</span>
            </p>
            <PressForm
              action={putItemBack.bind(null, notebookId)}
              label={removedWords.putBack}
              labelFor={title}
            >
              <input type="hidden" name="id" value={id} />
            </PressForm>
          </div>
        )
      })}
    </Panel>
  )
}
