import type { Notebook } from '../../core/agreement/notebook.ts'
import type { Minor } from '../../core/amounts/money.ts'
import type { ItemShares } from '../../core/shares/itemShares.ts'
import type { SharedUses } from '../../core/shares/passages.ts'
import { householdName } from '../labels.ts'
import { moneyWords } from '../money.ts'
import { itemShareSentences, shareNames } from '../shareText.ts'
import type { Block } from './block.ts'

/** How one item is shared: a row for each pot, their sum, and the sentence that leads to each. */
export function potBlocks(
  notebook: Notebook,
  lines: { readonly materials: readonly unknown[]; readonly labour: readonly unknown[] },
  item: ItemShares,
  uses: SharedUses | undefined,
): Block[] {
  const money = (minor: Minor) => moneyWords(minor, notebook.currency)
  const row = (name: string, pot: { total: Minor; a: Minor; b: Minor }) => ({
    cells: [name, money(pot.total), money(pot.a), money(pot.b)],
  })
  const { pots } = item
  // A pot without any line needs no sentence.
  const empty = [
    ...(lines.materials.length === 0 ? ['Materials'] : []),
    ...(lines.labour.length === 0 ? ['Work'] : []),
  ]
  const sentences = itemShareSentences(item, shareNames(notebook, uses)).filter(
    ({ pot }) => !empty.includes(pot),
  )
  return [
    {
      kind: 'table',
      caption: 'How it is shared',
      columns: [
        { title: 'Pot' },
        { title: 'In all', figure: true },
        { title: `Asked of ${householdName(notebook, 'a')}`, figure: true },
        { title: `Asked of ${householdName(notebook, 'b')}`, figure: true },
      ],
      rows:
        pots.form === 'together'
          ? [
              row(
                `Materials ${money(item.materialsTotal)} and work ${money(item.labourTotal)} together`,
                pots.together,
              ),
            ]
          : [row('Materials', pots.materials), row('Work', pots.labour)],
      foot: row('This part in all', item).cells,
    },
    ...sentences.map(({ pot, sentence }): Block => ({ kind: 'paragraph', text: `${pot}. ${sentence}` })),
  ]
}
