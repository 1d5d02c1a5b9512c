/** What a household did in the books beside entering what was given. */
const bookWords: Readonly<Record<string, string>> = {
  bought: 'Marked a line as bought, at what it came to',
  'item bought': 'Marked lines of an item as bought, at what they came to',
  unbought: 'Took back that a line was bought',
  confirmed: 'Confirmed a payment that it received',
  moved: 'Said which line of the plan an entry was for',
  thing: 'Wrote down a tool, a leftover or salvage',
  'thing changed': 'Changed a tool, a leftover or salvage',
  'thing marked': 'Marked what a thing is worth and who keeps it',
  'thing unmarked': 'Took the mark off a thing',
  'thing taken away': 'Took a thing off the list',
  'thing put back': 'Put a thing back on the list',
  valuation: 'Marked that goods in kind count above their lower value',
  'valuation back': 'Took back that goods in kind count above their lower value',
}

/** One sentence for it, with the line or the thing and its amount where the record has them. */
export function bookHappening(detail: Readonly<Record<string, unknown>>): string {
  const said = (key: string) => (typeof detail[key] === 'string' ? detail[key] : '')
  const kind = said('books')
  const done = Object.hasOwn(bookWords, kind) ? bookWords[kind] : 'Kept the books'
  const [what, amount] = [said('what'), said('amount')]
  return `${done}${what === '' ? '' : `: ${what}`}${amount === '' ? '' : `, ${amount}`}.`
}
