/** Above the list of what is to be settled yet. */
export const openMattersLabel = 'Still open'

/** What a phone shows in place of the list: how many matters are open, and how many of them are settled on its page. */
export function openMattersWords(count: number, here: number): string {
  const open = count === 1 ? '1 matter is open' : `${count} matters are open`
  if (here === 0) return open
  return here === count ? `${open} here` : `${open}, ${here} here`
}
