import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { FileDamage } from '../../../lib/core/agreement/fileRefusal.ts'
import { filesOf, type StoredFile } from '../../../lib/store/storedFiles.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { Panel } from '../../ui/Panel.tsx'
import type { Opened } from './opened.ts'
import { StoredFileCard } from './StoredFileCard.tsx'
import { damagesOf } from './storedFileDamages.ts'

/** The files of one item, with what is wrong on disk with any of them. */
export type FilesOfItem = {
  readonly files: readonly StoredFile[]
  readonly damages: ReadonlyMap<string, FileDamage>
}

export async function filesOfItem(notebookId: string, id: string): Promise<FilesOfItem> {
  const files = (await filesOf(notebookId)).filter((file) => file.itemKey === itemKey(id))
  return { files, damages: await damagesOf(files) }
}

/** The photos and papers of one section, gate or common cost, and the way to add one. */
export function ItemFiles({ opened, id, found }: { opened: Opened; id: string; found: FilesOfItem }) {
  const { files, damages } = found
  return (
    <Panel heading="Photos and papers" id="files">
      {files.length === 0 ? (
        <p>There are none for this item yet.</p>
      ) : (
        <ul className="file-list">
          {files.map((file) => (
            <StoredFileCard
              key={file.id}
              opened={opened}
              file={file}
              damage={damages.get(file.id)}
              withItem={false}
            />
          ))}
        </ul>
      )}
      <div className="button-row">
        <ButtonLink href={`/notebook/${opened.notebookId}/files?item=${encodeURIComponent(id)}`}>
          Add photos or papers
        </ButtonLink>
      </div>
    </Panel>
  )
}
