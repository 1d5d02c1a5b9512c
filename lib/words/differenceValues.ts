import { isNumber } from '../core/amounts/typedNumber.ts'
import { dayWords } from './day.ts'
import { typedMoneyWords } from './money.ts'
import { quantityWords } from './quantityWords.ts'

/** What stands around a typed value: the keys of its own object, the key of that object, and the notebook's currency. */
export type Around = {
  readonly siblings: Readonly<Record<string, unknown>>
  readonly inside: string
  readonly currency: string
}

const amounts: ReadonlySet<string> = new Set(
  'aloneA aloneB amount basic documented total unitPrice value yardPrice'.split(' '),
)
const rates: ReadonlySet<string> = new Set(['rate', 'quote'])
const hours: ReadonlySet<string> = new Set(['ceiling', 'hours', 'own'])

/** A typed figure with the unit that it has where it stands: "$102.60", "12 hours", "4 bags", "30 April 2027". */
export function valueInWords(typed: string, key: string, { siblings, inside, currency }: Around): string {
  if (/^\d{4}-\d{2}-\d{2}$/.test(typed)) return dayWords(typed)
  if (!isNumber(typed, 6)) return typed
  const pair = key === 'a' || key === 'b'
  if (amounts.has(key) || (pair && inside === 'caps')) return typedMoneyWords(typed, currency)
  if (rates.has(key)) return `${typedMoneyWords(typed, currency)} an hour`
  if (hours.has(key)) return typed === '1' ? '1 hour' : `${typed} hours`
  if (key === 'quantity') return quantityWords(typed, textAt(siblings, 'unit'))
  if (pair && siblings.principle === 'percent') return `${typed} percent`
  if (pair && siblings.principle === 'benefit') return typed === '1' ? '1 point' : `${typed} points`
  return typed
}

function textAt(siblings: Readonly<Record<string, unknown>>, key: string): string {
  const text = siblings[key]
  return typeof text === 'string' ? text : ''
}
