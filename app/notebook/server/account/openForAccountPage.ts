import { itemKey } from '../../../../lib/core/agreement/agreedItems.ts'
import type { OpenForAccount } from '../../../../lib/core/ledger/openForAccount.ts'
import { pageOfItem } from '../pages.ts'

/** Where what is open before the final account is settled. */
export function pageOfOpen(notebookId: string, open: OpenForAccount): string {
  const home = `/notebook/${notebookId}`
  switch (open.kind) {
    case 'nothing signed':
      return `${home}/sign`
    case 'shares':
      return `${home}/shares`
    case 'lines':
      return `${home}/books#${itemAnchor(open.item.id)}`
    case 'line moved':
      return `${home}/books#${itemAnchor(open.moved.line.itemId)}`
    case 'thing':
      return `${home}/books#things`
    case 'value half marked':
      return `${home}/books#values`
    case 'conversion waits':
      return `${home}/work#conversions`
    case 'beyond tolerance':
      return `${pageOfItem(notebookId, itemKey(open.item.id), open.item.kind)}#${cameToAnchor}`
    case 'payment waits':
      return `${home}/money#book`
    case 'outstanding':
      return open.amount > 0n ? `${home}/money#enter` : `${home}/books`
    case 'owed':
      return `${home}/money#enter`
  }
}

/** The anchor of planned and actual on the page of an item, beside its marks. */
export const cameToAnchor = 'came-to'

/** The anchor of an item on the page of the books. */
export function itemAnchor(id: string): string {
  return `item-${encodeURIComponent(id)}`
}
