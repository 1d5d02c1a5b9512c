/** The pages of a notebook, by our own names, in the order of the job. */
export function notebookPages(notebookId: string): readonly { href: string; label: string }[] {
  const home = `/notebook/${notebookId}`
  return [
    { href: home, label: 'The line' },
    { href: `${home}/setbacks`, label: 'Setbacks and heights' },
    { href: `${home}/materials`, label: 'Materials' },
    { href: `${home}/work`, label: 'Work' },
    { href: `${home}/shares`, label: 'Shares' },
    { href: `${home}/money`, label: 'Money and hours' },
    { href: `${home}/terms`, label: 'Terms' },
    { href: `${home}/ask-first`, label: 'Ask first' },
    { href: `${home}/sign`, label: 'Sign' },
    { href: `${home}/record`, label: 'Record' },
  ]
}

/** The pages that have no entry of their own, by the first part of their address: under which entry each stands. */
const under: Readonly<Record<string, string>> = {
  'cut-plan': 'materials',
  'build-up': 'materials',
  'build-ups': 'materials',
  pieces: 'materials',
  'side-by-side': 'shares',
  try: 'shares',
  proposals: 'shares',
  arrangements: 'money',
  books: 'money',
  'final-account': 'money',
  dates: 'ask-first',
  paper: 'sign',
  changes: 'record',
  closing: 'record',
  files: 'record',
  readers: 'record',
}

/** The entry that is marked while a page is shown; all that has to do with none of them stands under The line. */
export function entryOf(
  notebookId: string,
  page: string,
): { readonly href: string; readonly exact: boolean } {
  const home = `/notebook/${notebookId}`
  const [first = ''] = page.split('/')
  const own = page === '' ? home : `${home}/${page}`
  if (notebookPages(notebookId).some(({ href }) => href === own)) return { href: own, exact: true }
  const entry = under[first]
  return { href: entry === undefined ? home : `${home}/${entry}`, exact: false }
}

/** Where an agreed item is read and marked. */
export function pageOfItem(notebookId: string, key: string, kind: string): string {
  const home = `/notebook/${notebookId}`
  switch (kind) {
    case 'parties':
      return `${home}/parties`
    case 'line':
      return `${home}/line`
    case 'caps':
      return `${home}/shares#caps`
    case 'arrangements':
      return `${home}/arrangements`
    case 'terms':
      return `${home}/terms`
    case 'decision':
      return `${home}/terms#decisions`
    case 'closing':
      return `${home}/closing`
    default:
      return `${home}/item/${encodeURIComponent(key.slice('item:'.length))}`
  }
}
