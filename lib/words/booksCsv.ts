import type { Notebook } from '../core/agreement/notebook.ts'
import { type Minor, moneyText } from '../core/amounts/money.ts'
import { plannedAgainstActual } from '../core/ledger/plannedAgainstActual.ts'
import { digitsOf } from '../core/shares/statement.ts'
import { csvText } from './csv.ts'
import { itemTitle } from './itemWords.ts'
import { householdName } from './labels.ts'

/**
 * Planned against actual as comma-separated values: a row for every line, and one for what was given for an item and is
 * on no line of it. `actual` is empty where nothing was entered; a credit has a minus.
 */
export function booksCsv(notebook: Notebook): string {
  const digits = digitsOf(notebook)
  const money = (minor: Minor) => moneyText(minor, digits)
  const [a, b] = [householdName(notebook, 'a'), householdName(notebook, 'b')]
  const { items } = plannedAgainstActual(notebook, digits)
  const rows = items.flatMap((item) => {
    const title = itemTitle({ kind: item.kind, name: item.name, key: `item:${item.id}` })
    const lines = item.lines.map(({ line, planned, actual, by, entries, bought, moved, counts }) => [
      title,
      line.what,
      line.pot === 'labour' ? 'work' : 'materials',
      money(planned),
      ...(entries.length === 0 ? ['', '', '', ''] : [actual, actual - planned, by.a, by.b].map(money)),
      moved ? 'yes, another amount' : bought ? 'yes' : 'no',
      money(counts),
      notebook.currency,
    ])
    const rest = [
      title,
      '(on no line)',
      '',
      '',
      money(item.onNoLine),
      '',
      '',
      '',
      'no',
      '',
      notebook.currency,
    ]
    return item.onNoLine === 0n ? lines : [...lines, rest]
  })
  const heads = ['item', 'line', 'pot', 'planned', 'actual', 'difference', `paid by ${a}`, `paid by ${b}`]
  return csvText([[...heads, 'marked by both', 'in the balance', 'currency'], ...rows])
}
