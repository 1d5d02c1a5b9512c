import type { AgreedItem } from '../../../lib/core/agreement/agreedItems.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'

/** Leads to the basic fence of a section; nothing on a gate or a common cost, which have none. */
export function BasicFenceLink({
  notebookId,
  id,
  item,
}: {
  notebookId: string
  id: string
  item: Pick<AgreedItem, 'kind'>
}) {
  return item.kind === 'section' ? (
    <ButtonLink href={`/notebook/${notebookId}/basic-fence/${encodeURIComponent(id)}`}>
      A basic fence to hold it against
    </ButtonLink>
  ) : null
}
