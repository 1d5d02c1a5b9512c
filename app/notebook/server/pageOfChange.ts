import { agreedItems, wholeNotebook } from '../../../lib/core/agreement/agreedItems.ts'
import type { Change } from '../../../lib/store/changes.ts'
import type { Opened } from './opened.ts'
import { pageOfItem } from './pages.ts'

/** Where to look at what an entry of the history tells; undefined where it is about an item that is gone. */
export function pageOfChange(
  { notebookId, document }: Pick<Opened, 'notebookId' | 'document'>,
  { kind, itemKey, detail = {} }: Pick<Change, 'kind' | 'itemKey' | 'detail'>,
): string | undefined {
  const home = `/notebook/${notebookId}`
  const item = agreedItems(document).find(({ key }) => key === itemKey)
  const itemPage = item && pageOfItem(notebookId, item.key, item.kind)
  switch (kind) {
    case 'books':
      return `${home}${placeInBooks(detail)}`
    case 'account':
      return `${home}/final-account`
    case 'proposal':
    case 'reply':
      return `${home}/proposals#proposal-${String(detail.proposal)}`
    case 'held back':
      return itemPage ?? `${home}/needs`
    case 'file':
      return itemPage ?? `${home}/files`
    case 'freeze':
    case 'sign':
      return `${home}/sign`
    case 'seal':
      return `${home}/record`
    case 'link':
      return `${home}/links`
    case 'reader':
      return `${home}/readers`
    case 'first answer':
      return home
    default:
      if (itemPage !== undefined) return itemPage
      return itemKey === wholeNotebook ? home : pageOfUnmarked(home, itemKey)
  }
}

/** Where the books show what was done in them. */
function placeInBooks({ books, index }: Readonly<Record<string, unknown>>): string {
  if (typeof index === 'string') return `/money#book-entry-${index}`
  const step = String(books)
  if (step === 'confirmed') return '/money#book'
  if (step === 'conversion') return '/work#conversions'
  if (step.startsWith('thing')) return '/books#things'
  return step.startsWith('valuation') ? '/books#values' : '/books'
}

/** Parts of the notebook that nobody marks. */
const unmarkedPages: Readonly<Record<string, string>> = {
  heading: '/parties',
  checks: '/ask-first',
  dates: '/dates',
  buildUps: '/build-ups',
  inventory: '/pieces',
  letter: '/letter',
  contributions: '/money',
  books: '/books',
}

function pageOfUnmarked(home: string, key: string): string | undefined {
  return Object.hasOwn(unmarkedPages, key) ? `${home}${unmarkedPages[key]}` : undefined
}
