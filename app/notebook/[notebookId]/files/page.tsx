import { agreedItems, idOfItemKey } from '../../../../lib/core/agreement/agreedItems.ts'
import { fileKinds, fileLimits, mediaTypes } from '../../../../lib/core/agreement/attachedFile.ts'
import { filesOf } from '../../../../lib/store/storedFiles.ts'
import { fileKindHeadings, fileKindWords, sizeWords, takenFormats } from '../../../../lib/words/fileText.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { UploadForm } from '../../../ui/files/UploadForm.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { type Opened, openNotebook } from '../../server/opened.ts'
import { StoredFileCard } from '../../server/StoredFileCard.tsx'
import { addFiles } from '../../server/storedFileActions.ts'
import { damagesOf } from '../../server/storedFileDamages.ts'
import { TakenAwayFiles } from '../../server/TakenAwayFiles.tsx'

export const metadata = { title: 'Photos and papers' }

export default async function FilesPage({
  params,
  searchParams,
}: {
  params: Promise<{ notebookId: string }>
  searchParams?: Promise<Readonly<Record<string, string | string[] | undefined>>>
}) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const asked = (await searchParams)?.item
  const all = await filesOf(notebookId, true)
  const files = all.filter(({ removedAt }) => removedAt === undefined)
  const takenAway = all.filter(({ removedAt }) => removedAt !== undefined)
  const damages = await damagesOf(files)
  const items = itemsToChoose(opened)
  const home = `/notebook/${notebookId}`
  return (
    <NotebookShell
      opened={opened}
      page="files"
      title="Photos and papers"
      lead="What the line looked like before and after, the survey, permit letters and receipts. Both households see all of it."
      back={{ href: `${home}/record`, label: 'Record' }}
    >
      <Panel heading="Add some" id="add">
        <p>
          A photo is drawn anew before it is stored: its position, its time and all else that a camera writes
          into it are gone then. A PDF is stored as it is.
        </p>
        <UploadForm
          address={`${home}/files/upload`}
          action={addFiles.bind(null, notebookId)}
          kinds={fileKinds.map((value) => ({ value, label: fileKindWords[value] }))}
          items={items}
          chosenItem={items.find(({ value }) => value === asked)?.value ?? ''}
          limits={{
            bytes: fileLimits.bytes,
            caption: fileLimits.caption,
            size: sizeWords(fileLimits.bytes),
            formats: takenFormats,
            accept: mediaTypes.join(','),
          }}
        />
      </Panel>
      {files.length === 0 ? (
        <Panel heading="Nothing here yet">
          <p>Photos from before the work help most: nobody can take them later.</p>
        </Panel>
      ) : null}
      {fileKinds.map((kind) => {
        const ofKind = files.filter((file) => file.kind === kind)
        return ofKind.length === 0 ? null : (
          <Panel key={kind} heading={fileKindHeadings[kind]}>
            <ul className="file-list">
              {ofKind.map((file) => (
                <StoredFileCard
                  key={file.id}
                  opened={opened}
                  file={file}
                  damage={damages.get(file.id)}
                  withItem
                />
              ))}
            </ul>
          </Panel>
        )
      })}
      <TakenAwayFiles opened={opened} files={takenAway} there={files} />
    </NotebookShell>
  )
}

/** The whole notebook, and every item that can have files of its own. */
function itemsToChoose({ document }: Opened): { value: string; label: string }[] {
  const own = agreedItems(document).flatMap((item) => {
    const id = idOfItemKey(item.key)
    return id === undefined ? [] : [{ value: id, label: itemTitle(item) }]
  })
  return [{ value: '', label: 'The whole notebook' }, ...own]
}
