import { shownMoment } from '../../../lib/words/day.ts'
import { undoWords } from '../../../lib/words/removedText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { Panel } from '../../ui/Panel.tsx'
import type { Opened } from './opened.ts'
import { undoEdit } from './undoActions.ts'
import { undoableEdits } from './undoableEdits.ts'

/** No more than these: whoever wants to go back further changes it by hand. */
const mostShown = 10

/** The household's own last edits, each with a press that puts back what stood before; nothing where there are none. */
export async function UndoPanel({
  opened: { notebookId, household },
  titles,
}: {
  opened: Opened
  /** What every item is called. */
  titles: ReadonlyMap<string, string>
}) {
  const edits = [...(await undoableEdits(notebookId, household, new Date()))].slice(0, mostShown)
  if (edits.length === 0) return null
  return (
    <Panel heading={undoWords.heading} id="undo">
      <p>{undoWords.meaning}</p>
      <ul className="undo-list">
        {edits.map(([edit, changes]) => {
          const names = undoWords.names(changes.map(({ itemKey }) => titles.get(itemKey) ?? itemKey))
          const when = shownMoment((changes[0] as (typeof changes)[number]).at)
          return (
            <li key={edit}>
              <p>
                {names} <span className="quiet">{when}</span>
              </p>
              <PressForm
                action={undoEdit.bind(null, notebookId)}
                label={undoWords.label}
                labelFor={`${names}, ${when}`}
              >
                <input type="hidden" name="edit" value={edit} />
              </PressForm>
            </li>
          )
        })}
      </ul>
    </Panel>
  )
}
