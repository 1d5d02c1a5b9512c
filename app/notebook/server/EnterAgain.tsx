import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { againWords } from '../../../lib/words/againText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { enterAgain } from './entryAgainActions.ts'

/** Enters what was taken back once more. */
export function EnterAgain({
  notebookId,
  index,
  written,
  about,
}: {
  notebookId: string
  index: number
  /** The entry as it stands in the file. */
  written: unknown
  about: string
}) {
  return (
    <PressForm action={enterAgain.bind(null, notebookId)} label={againWords.label} labelFor={about}>
      <input type="hidden" name="index" value={index} />
      <input type="hidden" name="fingerprint" value={fingerprintOf(written)} />
    </PressForm>
  )
}
