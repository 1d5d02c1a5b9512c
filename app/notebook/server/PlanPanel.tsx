import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { Minor } from '../../../lib/core/amounts/money.ts'
import { spentByItem } from '../../../lib/core/ledger/spentByItem.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'
import type { Statement } from '../../../lib/core/shares/statement.ts'
import { costBars } from '../../../lib/words/figures/costBars.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { FigureView } from './FigureView.tsx'
import type { Opened } from './opened.ts'
import { standingOf } from './standingOf.ts'

/** The whole plan as bars and as one table that adds up; beside it what was spent, once anything was. */
export function PlanPanel({ opened, statement }: { opened: Opened; statement: Statement }) {
  const names = shareNames(opened.notebook)
  const money = (minor: Minor) => moneyWords(minor, statement.currency)
  const { beforeCaps, total, asked, promised, inMoney, items } = statement
  const spent = spentByItem(opened.notebook, statement.digits)
  const titleOf = ({ id }: { readonly id: string }) => itemTitle(standingOf(opened, itemKey(id)).item)
  const given = (id: string) => (spent.size === 0 ? [] : [money(sumOf(spent.get(id)))])
  const inAll = [...spent.values()].reduce((sum, one) => sum + one.a + one.b, 0n)
  const rest = spent.size === 0 ? [] : ['']
  return (
    <Panel heading="All items">
      <FigureView shown={costBars(items, spent, names, titleOf)} />
      <FigureTable
        caption="What each item asks for"
        columns={[
          { label: 'Item' },
          { label: 'Total', figures: true, result: true },
          { label: names.a, figures: true },
          { label: names.b, figures: true },
          ...(spent.size === 0 ? [] : [{ label: 'Spent so far', figures: true }]),
        ]}
        rows={[
          ...items.map((item) => [
            titleOf(item),
            money(item.total),
            money(item.a),
            money(item.b),
            ...given(item.id),
          ]),
          ...(sumOf(spent.get('')) === 0n ? [] : [['For the whole fence', '', '', '', ...given('')]]),
        ]}
        foot={[
          ...(asked.moved
            ? [['Before caps', money(total), money(beforeCaps.a), money(beforeCaps.b), ...rest]]
            : []),
          [
            'Asked',
            money(total),
            money(asked.a),
            money(asked.b),
            ...(spent.size === 0 ? [] : [money(inAll)]),
          ],
          [
            'Promised in kind and hours',
            money(promised.a + promised.b),
            money(promised.a),
            money(promised.b),
            ...rest,
          ],
          ['To bring in money', money(inMoney.a + inMoney.b), money(inMoney.a), money(inMoney.b), ...rest],
        ]}
      />
    </Panel>
  )
}

function sumOf(both: ForBoth<Minor> = { a: 0n, b: 0n }): Minor {
  return both.a + both.b
}
