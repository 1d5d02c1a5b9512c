import { fileLimits, mediaTypes } from '../../../lib/core/agreement/attachedFile.ts'
import { agreedRates } from '../../../lib/core/hours/rates.ts'
import { placesOf } from '../../../lib/core/shares/itemShares.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { filesOf } from '../../../lib/store/storedFiles.ts'
import { fileKindWords, sizeWords, takenFormats } from '../../../lib/words/fileText.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { FoldedPart } from '../../ui/FoldedPart.tsx'
import { UploadForm } from '../../ui/files/UploadForm.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { ContributionForm } from '../forms/ContributionForm.tsx'
import { enterContribution } from './bookActions.ts'
import { booksFigures } from './booksFigures.ts'
import { lineChoices } from './lineChoices.ts'
import type { Opened } from './opened.ts'
import { addFiles } from './storedFileActions.ts'
import { taskChoices } from './taskChoices.ts'
import { today } from './today.ts'

/** The form of a new entry in the book, with what it chooses from, and beside it the way to add a receipt's picture. */
export async function EntryPart({ opened }: { opened: Opened }) {
  const { notebook, notebookId, household } = opened
  const stored = await findNotebook(notebookId)
  const receipts = (await filesOf(notebookId)).filter(({ kind }) => kind === 'receipt')
  const home = `/notebook/${notebookId}`
  const items = placesOf(notebook).map(({ item, kind }) => ({
    value: item.id,
    label: itemTitle({ kind, name: item.name, key: `item:${item.id}` }),
  }))
  return (
    <div className="on-screen-only">
      <Panel heading="Enter what was given" id="enter">
        <ContributionForm
          key={notebook.contributions.length}
          initial={{
            household,
            kind: 'cash',
            amount: '',
            hours: '',
            rate: '',
            date: today(),
            for: '',
            note: '',
          }}
          base={`new ${notebook.contributions.length}`}
          save={enterContribution.bind(null, notebookId)}
          names={{ ...shareNames(notebook), rates: agreedRates(booksFigures(opened).notebook.arrangements) }}
          items={items}
          tasks={taskChoices(opened)}
          books={{
            lines: lineChoices(opened),
            receipts: receipts.map(({ id, caption, name }) => ({ value: id, label: caption || name })),
            filesPage: `${home}/files`,
            startedOn: stored?.createdAt.toISOString().slice(0, 10) ?? '',
          }}
        />
        <FoldedPart summary="Add a photo or PDF of a receipt">
          <UploadForm
            address={`${home}/files/upload`}
            action={addFiles.bind(null, notebookId)}
            kinds={[{ value: 'receipt', label: fileKindWords.receipt }]}
            items={[{ value: '', label: 'The whole notebook' }, ...items]}
            chosenItem=""
            limits={{
              bytes: fileLimits.bytes,
              caption: fileLimits.caption,
              size: sizeWords(fileLimits.bytes),
              formats: takenFormats,
              accept: mediaTypes.join(','),
            }}
          />
        </FoldedPart>
      </Panel>
    </div>
  )
}
