import type { Notebook } from '../../core/agreement/notebook.ts'
import { signedCostAmount } from '../../core/amounts/lineAmount.ts'
import { moneyText } from '../../core/amounts/money.ts'
import { placesOf } from '../../core/shares/itemShares.ts'
import { digitsOf } from '../../core/shares/statement.ts'
import { csvText } from '../csv.ts'
import { itemTitle } from '../itemWords.ts'
import { householdName } from '../labels.ts'

/** One cost line of the notebook, as a line to shop by. */
export type ShoppingLine = {
  readonly what: string
  readonly item: string
  readonly quantity: string
  readonly unit: string
  readonly from: string
  readonly unitPrice: string
  readonly taxPercent: string
  /** Amount with tax, with a minus on a credit; empty where it is not priced yet. */
  readonly amount: string
  readonly currency: string
}

/** Every cost line of every item, those for the same material together. */
export function shoppingList(notebook: Notebook): readonly ShoppingLine[] {
  const digits = digitsOf(notebook)
  const from = { bought: 'bought', a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  const lines = placesOf(notebook).flatMap(({ item, kind }) =>
    item.materials.map((line) => ({
      what: line.credit ? `${line.what} (credit)` : line.what,
      item: itemTitle({ kind, name: item.name, key: `item:${item.id}` }),
      quantity: line.quantity,
      unit: line.unit,
      from: from[line.suppliedBy],
      unitPrice: line.unitPrice,
      taxPercent: line.taxPercent,
      amount: line.unitPrice === '' ? '' : moneyText(signedCostAmount(line, digits), digits),
      currency: notebook.currency,
    })),
  )
  return lines.sort((left, right) => (left.what < right.what ? -1 : left.what > right.what ? 1 : 0))
}

const columns: readonly (keyof ShoppingLine)[] = [
  'what',
  'item',
  'quantity',
  'unit',
  'from',
  'unitPrice',
  'taxPercent',
  'amount',
  'currency',
]

/** The list as comma-separated values, for a spreadsheet. */
export function shoppingListCsv(lines: readonly ShoppingLine[]): string {
  return csvText([columns, ...lines.map((line) => columns.map((column) => line[column]))])
}
