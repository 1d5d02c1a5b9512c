import { agreedItems } from '../../../lib/core/agreement/agreedItems.ts'
import type { FileDamage } from '../../../lib/core/agreement/fileRefusal.ts'
import type { StoredFile } from '../../../lib/store/storedFiles.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import { fileDamageText, mediaTypeWords, sizeWords } from '../../../lib/words/fileText.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import type { Opened } from './opened.ts'
import { takeAwayFile } from './storedFileActions.ts'

/** One file: its picture, what it shows, who added it and when. Its own household can take it away. */
export function StoredFileCard({
  opened,
  file,
  damage,
  withItem,
}: {
  opened: Opened
  file: StoredFile
  damage: FileDamage | undefined
  /** Whether to say which item it belongs to. */
  withItem: boolean
}) {
  const { notebook, notebookId, household } = opened
  const address = `/notebook/${notebookId}/files/${file.id}`
  const called = file.caption || file.name
  return (
    <li className="file-card">
      <Picture file={file} address={address} called={called} damaged={damage !== undefined} />
      <div className="file-about">
        <p className="file-caption">{called}</p>
        {damage === undefined ? null : <p className="file-damage">{fileDamageText(damage)}</p>}
        {withItem && file.itemKey !== undefined ? <p>{itemName(opened, file.itemKey)}</p> : null}
        <p>
          <HouseholdTag household={file.household} name={householdName(notebook, file.household)} />
        </p>
        <p className="quiet">{shownMoment(file.addedAt)}</p>
        <p className="quiet">
          {file.caption === '' ? '' : `${file.name}, `}
          {mediaTypeWords[file.mediaType]}, {sizeWords(file.size)}
        </p>
      </div>
      <div className="file-tools">
        <a className="button button-plain" href={`${address}?save`} download>
          Save a copy<span className="only-read-out">: {called}</span>
        </a>
        {file.household === household ? (
          <PressForm
            action={takeAwayFile.bind(null, notebookId)}
            label="Take away"
            labelFor={called}
            weight="grave"
            confirm="Take this file away? It is shown no more. That it was here stays on record."
          >
            <input type="hidden" name="id" value={file.id} />
          </PressForm>
        ) : null}
      </div>
    </li>
  )
}

function Picture({
  file,
  address,
  called,
  damaged,
}: {
  file: StoredFile
  address: string
  called: string
  damaged: boolean
}) {
  if (file.mediaType === 'application/pdf' || damaged)
    return (
      <div className="file-picture" aria-hidden="true">
        <span className="file-paper">{damaged ? '?' : 'PDF'}</span>
      </div>
    )
  return (
    <a className="file-picture" href={address} target="_blank" rel="noopener">
      {/* biome-ignore lint/performance/noImgElement: the small picture is made already, and is private. */}
      <img
        src={`${address}/small`}
        alt={`${called}, opens large in a new tab`}
        loading="lazy"
        decoding="async"
      />
    </a>
  )
}

function itemName(opened: Opened, key: string): string {
  const item = agreedItems(opened.document).find((one) => one.key === key)
  return item ? itemTitle(item) : 'An item that is not in the notebook any more'
}
