import { filesOf, type StoredFile } from '../../../lib/store/storedFiles.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import type { Opened } from './opened.ts'
import { damagesOf } from './storedFileDamages.ts'

/** The newest photo of how it was before that is whole on disk. */
export async function newestPhotoBefore(notebookId: string): Promise<StoredFile | undefined> {
  const before = (await filesOf(notebookId)).filter(
    ({ kind, mediaType }) => kind === 'before' && mediaType !== 'application/pdf',
  )
  const damages = await damagesOf(before)
  return before.findLast(({ id }) => !damages.has(id))
}

/** The old fence as it is; a plain sentence where there is no photo. */
export function OldFencePhoto({ opened, photo }: { opened: Opened; photo: StoredFile | undefined }) {
  const { notebookId, notebook } = opened
  if (photo === undefined) return <p>There is no photo of the old fence yet.</p>
  const address = `/notebook/${notebookId}/files/${photo.id}`
  const called = photo.caption || photo.name
  return (
    <figure className="old-fence">
      <a href={address} target="_blank" rel="noopener">
        {/* biome-ignore lint/performance/noImgElement: a private picture, made already in the size that it is kept in. */}
        <img src={address} alt={`${called}, opens by itself in a new tab`} decoding="async" />
      </a>
      <figcaption>
        {photo.caption === '' ? '' : `${photo.caption} `}
        <HouseholdTag household={photo.household} name={householdName(notebook, photo.household)} />
      </figcaption>
    </figure>
  )
}
