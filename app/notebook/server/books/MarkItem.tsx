import type { ItemStanding } from '../../../../lib/core/ledger/plannedAgainstActual.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { markAllWords } from '../../../../lib/words/booksText.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import type { BooksFigures } from '../booksFigures.ts'
import { markItemBought } from '../itemBoughtActions.ts'
import type { Opened } from '../opened.ts'
import { linesToMark } from './linesToMark.ts'

/** One press for all lines of an item that wait for the household's mark, where there is more than one. */
export function MarkItem({
  opened: { notebookId, household },
  figures: { notebook },
  item,
}: {
  opened: Opened
  figures: BooksFigures
  item: ItemStanding
}) {
  const lines = linesToMark(item, household, digitsOf(notebook))
  if (lines.length < 2) return null
  return (
    <PressForm action={markItemBought.bind(null, notebookId)} label={markAllWords(lines.length)}>
      <input type="hidden" name="item" value={item.id} />
      <input type="hidden" name="fingerprint" value={fingerprintOf(lines)} />
    </PressForm>
  )
}
