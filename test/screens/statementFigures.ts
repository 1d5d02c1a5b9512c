import { currencyDigits } from '../../lib/core/amounts/currency.ts'
import { minorUnits } from '../../lib/core/amounts/money.ts'
import type { StatementFile } from '../../lib/core/shares/statementFile.ts'
import { moneyWords } from '../../lib/words/money.ts'

type Pot = { readonly total: string; readonly a?: string; readonly b?: string }

/** Every amount of money of a statement, in the words in which a reader is shown it. */
export function moneyFigures(statement: StatementFile): string[] {
  const { items, beforeCaps, asked, promised, inMoney, contributed, balance, outstanding, transfer } =
    statement
  const pots: Pot[] = [
    ...items.flatMap(({ materials, labour, together }) => [
      materials,
      labour,
      ...(together ? [together] : []),
    ]),
    beforeCaps,
    asked,
  ]
  const amounts = [
    ...pots.flatMap(({ total, a, b }) => [total, a, b]),
    ...[promised, inMoney, contributed, balance].flatMap(({ a, b }) => [a, b]),
    outstanding,
    transfer?.amount,
  ]
  return amounts.flatMap((amount) => (amount === undefined ? [] : [inWords(amount, statement.currency)]))
}

/** Every figure of hours of a statement, gifts among them. */
export function hourFigures({ items }: StatementFile): string[] {
  return items.flatMap(({ labour }) => [
    labour.hours,
    labour.hoursA,
    labour.hoursB,
    labour.giftHours.a,
    labour.giftHours.b,
  ])
}

function inWords(amount: string, currency: string): string {
  const negative = amount.startsWith('-')
  const minor = minorUnits(negative ? amount.slice(1) : amount, currencyDigits(currency) ?? 2)
  return moneyWords(negative ? -minor : minor, currency)
}
