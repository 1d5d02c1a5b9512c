import type { Contribution } from '../../../lib/core/agreement/notebook.ts'
import { confirmingRefusal } from '../../../lib/core/ledger/transfers.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { transferFieldWords, transferStanding } from '../../../lib/words/transferText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { Status } from '../../ui/Status.tsx'
import type { Opened } from './opened.ts'
import { confirmTransfer } from './transferActions.ts'

/** Where a payment between the households stands, with the press of the household that received it. */
export function TransferStanding({
  opened: { notebook, notebookId, household, document },
  index,
  entry,
}: {
  opened: Opened
  index: number
  entry: Contribution
}) {
  const standing = transferStanding(entry, shareNames(notebook))
  if (standing === undefined) return null
  return (
    <>
      <p>
        <Status kind={standing.kind} text={standing.text} />
      </p>
      {confirmingRefusal(entry, household) === undefined ? (
        <PressForm
          action={confirmTransfer.bind(null, notebookId)}
          label={transferFieldWords.confirm}
          weight="main"
        >
          <input type="hidden" name="index" value={index} />
          <input
            type="hidden"
            name="fingerprint"
            value={fingerprintOf((document.contributions as readonly unknown[])[index])}
          />
        </PressForm>
      ) : null}
    </>
  )
}
