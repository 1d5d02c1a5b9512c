const noBreak = '\u00A0'

// No look-behind: it would be an error of syntax in browsers of 2022.
const units =
  /([0-9½⅓⅔¼¾⅛⅜⅝⅞]) (?=(?:ft|in|mm|cm|m|sq ft|sq m|cu ft|cu m|lb|kg|L|%|h|hours?|days?|mph|psf|kB|MB|[A-Z]{3})(?![A-Za-z]))/g
const restOfLength = /([0-9]\u00A0(?:ft|sq|cu)) (?=[0-9½⅓⅔¼¾⅛⅜⅝⅞]|ft|m)/g
const mixedNumber = /([0-9]) (?=[0-9]+\/[0-9]|[½⅓⅔¼¾⅛⅜⅝⅞])/g
const month = '(?:January|February|March|April|May|June|July|August|September|October|November|December)'
const dayAndMonth = new RegExp(`(\\b[0-9]{1,2}) (?=${month}\\b)`, 'g')
const monthAndYear = new RegExp(`(\\b${month}) (?=[0-9]{4}\\b)`, 'g')
const houseNumber = /\b([Nn]o\.) (?=[0-9])/g

/**
 * A text as it is shown, with each figure bound to its unit, so that no line ends inside “5 ft 10 1/4 in”, “18.7 %”,
 * “12 May 2027” or “no. 14”. A blank becomes a no-break blank; the text stays as long as it was, and what is typed, stored or
 * signed is never put through this.
 */
export function boundFigures(text: string): string {
  if (!/[0-9½¼¾] /.test(text) && !/[a-z.] [0-9]/.test(text)) return text
  return text
    .replace(units, `$1${noBreak}`)
    .replace(mixedNumber, `$1${noBreak}`)
    .replace(restOfLength, `$1${noBreak}`)
    .replace(dayAndMonth, `$1${noBreak}`)
    .replace(monthAndYear, `$1${noBreak}`)
    .replace(houseNumber, `$1${noBreak}`)
}
