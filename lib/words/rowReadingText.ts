import { dayWords } from './day.ts'

/** How a row of a form reads while its fields are folded away. A row is whatever stands in the draft; texts are as typed. */
type Row = Readonly<Record<string, unknown>>

/** Who can be named in a row: both households, and the currency that prices are in. */
type Named = { readonly a: string; readonly b: string; readonly currency: string }

/** "5 each at 24.75 USD, from no. 12 in kind, tax 7.25 %" */
export function costLineReading(row: unknown, named: Named): string {
  const amount = [textOf(row, 'quantity'), textOf(row, 'unit')].filter(Boolean).join(' ')
  const price = textOf(row, 'unitPrice')
  const tax = textOf(row, 'taxPercent')
  const from = textOf(row, 'suppliedBy')
  return listed([
    price === '' ? `${amount}, not priced yet` : `${amount} at ${price} ${named.currency}`,
    from === 'a' || from === 'b' ? `from ${named[from]} in kind` : 'bought',
    tax === '' ? '' : `tax ${tax} %`,
    valueIn(row, 'credit') === true ? 'a credit' : '',
  ])
}

/** "12 h at 28 USD an hour, by no. 12, at most 16 h count" */
export function labourLineReading(row: unknown, named: Named): string {
  const hours = `${textOf(row, 'hours')} h`
  const rate = textOf(row, 'rate')
  const by = textOf(row, 'by')
  const ceiling = textOf(row, 'ceiling')
  const isGift = valueIn(row, 'counts') === false
  return listed([
    rate === '' ? `${hours}, no rate yet` : `${hours} at ${rate} ${named.currency} an hour`,
    by === 'a' || by === 'b' ? `by ${named[by]}` : 'hired',
    isGift ? 'a gift' : '',
    isGift || ceiling === '' ? '' : `at most ${ceiling} h count`,
  ])
}

/** "no. 12, 3 October 2026" and on the next line what was said and where it can be found. */
export function checkReading(row: unknown, named: Named): string {
  const who = textOf(row, 'who')
  const reference = textOf(row, 'reference')
  return lines([
    listed([
      who === 'a' || who === 'b' ? named[who] : 'Nobody is named to ask yet',
      dayWords(textOf(row, 'on')),
    ]),
    textOf(row, 'answer'),
    reference === '' ? '' : `Found in: ${reference}`,
  ])
}

/** "3 May 2027, both households, every year" and on the next line the notes. */
export function dateReading(
  row: unknown,
  named: Named,
  intervalWords: Readonly<Record<string, string>>,
): string {
  const keeper = textOf(row, 'household')
  return lines([
    listed([
      dayWords(textOf(row, 'on')) || 'No day yet',
      keeper === 'a' || keeper === 'b' ? named[keeper] : keeper === 'both' ? 'both households' : '',
      intervalWords[textOf(row, 'every')] ?? '',
    ]),
    textOf(row, 'notes'),
  ])
}

/** "Fence set back 2 in on the land of no. 12" and on the next line the grounds; what is not known is left out. */
export function stationReading(row: unknown, named: Named): string {
  const setback = valueIn(row, 'setback')
  const [distance, side] = [textOf(setback, 'distance'), textOf(setback, 'side')]
  const land = side === 'a' || side === 'b' ? ` on the land of ${named[side]}` : ''
  const grounds = listed([
    measured(textOf(row, 'gradeA'), named.a),
    measured(textOf(row, 'gradeB'), named.b),
    measured(textOf(row, 'gradeFence'), 'fence'),
  ])
  const degrees = textOf(valueIn(row, 'angle'), 'degrees')
  return lines([
    distance === '' ? 'No setback measured yet' : `Fence set back ${distance}${land}`,
    grounds === '' ? '' : `Ground: ${grounds}`,
    degrees === '' ? '' : `The line turns here by ${degrees}°`,
  ])
}

function measured(length: string, of: string): string {
  return length === '' ? '' : `${of} ${length}`
}

/** The first words of a text, by which a row of it is called: whole words, about forty letters. */
export function firstWords(text: string): string {
  const most = 40
  if (text.length <= most) return text
  const cut = text.slice(0, most + 1)
  const space = cut.lastIndexOf(' ')
  return `${(space > 0 ? cut.slice(0, space) : text.slice(0, most)).replace(/[.,;:]+$/, '')} …`
}

/** A text of a row as it was typed, without blanks around it; empty where there is none. */
export function textOf(row: unknown, key: string): string {
  const value = valueIn(row, key)
  return typeof value === 'string' ? value.trim() : ''
}

function valueIn(row: unknown, key: string): unknown {
  return row !== null && typeof row === 'object' ? (row as Row)[key] : undefined
}

function listed(parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join(', ')
}

function lines(parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join('\n')
}
