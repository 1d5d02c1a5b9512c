import Link from 'next/link'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { agreeToItem } from './actions.ts'
import { StandingStatus } from './MarkBox.tsx'
import type { Opened, Standing } from './opened.ts'
import { pageOfItem } from './pages.ts'

/** One item that is not agreed by both: leads to it, and takes this household's mark where it is missing. */
export function OpenItemRow({ opened, standing }: { opened: Opened; standing: Standing }) {
  const { notebookId, household } = opened
  const { item, fingerprint, markedAt } = standing
  const title = itemTitle(item)
  return (
    <li className="open-item">
      <div className="item-row-text">
        <Link href={pageOfItem(notebookId, item.key, item.kind)} prefetch={false}>
          {title}
        </Link>
        <StandingStatus standing={standing} opened={opened} />
      </div>
      {markedAt[household] === undefined ? (
        <PressForm action={agreeToItem.bind(null, notebookId)} label="Agree as it stands" labelFor={title}>
          <input type="hidden" name="itemKey" value={item.key} />
          <input type="hidden" name="fingerprint" value={fingerprint} />
          <input type="hidden" name="back" value={`/notebook/${notebookId}/sign`} />
        </PressForm>
      ) : null}
    </li>
  )
}
