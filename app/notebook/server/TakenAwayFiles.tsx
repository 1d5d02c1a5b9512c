import { isSameFile, type StoredFile } from '../../../lib/store/storedFiles.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import { fileBackWords } from '../../../lib/words/fileText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { Panel } from '../../ui/Panel.tsx'
import type { Opened } from './opened.ts'
import { putFileBack } from './storedFileActions.ts'

/**
 * What was here once: each file by name, who took it away and when. Who took it away can put it back, unless the same is
 * `there`.
 */
export function TakenAwayFiles({
  opened,
  files,
  there,
}: {
  opened: Opened
  files: readonly StoredFile[]
  there: readonly StoredFile[]
}) {
  if (files.length === 0) return null
  return (
    <Panel heading="Taken away">
      <ul>
        {files.map((file) => {
          const { id, name, caption, removedAt, removedBy } = file
          const back = removedBy === opened.household && !there.some((one) => isSameFile(one, file))
          return (
            <li key={id}>
              {caption === '' ? name : `${caption} (${name})`}, taken away by{' '}
              {removedBy === undefined ? '' : householdName(opened.notebook, removedBy)} on{' '}
              <span className="file-moment">{removedAt === undefined ? '' : shownMoment(removedAt)}</span>
              {back ? (
                <PressForm
                  action={putFileBack.bind(null, opened.notebookId)}
                  label={fileBackWords.putBack}
                  labelFor={caption || name}
                >
                  <input type="hidden" name="id" value={id} />
                </PressForm>
              ) : null}
            </li>
          )
        })}
      </ul>
    </Panel>
  )
}
