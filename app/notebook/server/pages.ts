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
