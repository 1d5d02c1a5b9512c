import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { asBuilt } from '../../../lib/core/ledger/asBuilt.ts'
import { waitingTransfers } from '../../../lib/core/ledger/transfers.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { balanceSentences, planBesideBalance, standingOfBooks } from '../../../lib/words/balanceText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { faultTexts } from '../../../lib/words/shareFaultText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { waitingTransferWords } from '../../../lib/words/transferText.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { booksFigures } from './booksFigures.ts'
import { instalmentsNow } from './instalmentsNow.ts'
import type { Opened } from './opened.ts'

/** Asked, promised, given and left to give, and the one payment that evens the two: by what was signed, once it was. */
export function BalanceView({ opened }: { opened: Opened }) {
  const { notebook, statement, signed, draft } = booksFigures(opened)
  const names = shareNames(notebook)
  if (!statement.ok) {
    return (
      <Panel heading="Where you stand">
        {faultTexts(notebook, statement.faults).map((text) => (
          <p key={text}>{text}</p>
        ))}
      </Panel>
    )
  }
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const { asked, promised, inMoney, contributed, balance, total, outstanding } = statement.value
  const plan = instalmentsNow(opened)
  const besidePlan = plan && planBesideBalance(plan.standing, names)
  const row = (label: string, amounts: { a: bigint; b: bigint }) => [
    label,
    money(amounts.a),
    money(amounts.b),
    money(amounts.a + amounts.b),
  ]
  return (
    <Panel heading="Where you stand">
      {standingOfBooks(signed, draft, names, movedByBooks(notebook)).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <FigureTable
        caption="Asked, promised and given"
        columns={[
          { label: 'What' },
          { label: names.a, figures: true },
          { label: names.b, figures: true },
          { label: 'Both', figures: true },
        ]}
        rows={[
          ['Asked', money(asked.a), money(asked.b), money(total)],
          row('Promised in kind and hours', promised),
          row('To bring in money, if all goes as planned', inMoney),
          row('Given so far', contributed),
        ]}
        foot={[['Still to give', money(balance.a), money(balance.b), money(outstanding)]]}
      />
      {balanceSentences(statement.value, names).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {besidePlan === undefined ? null : <p>{besidePlan}</p>}
      {waitingTransfers(notebook, digitsOf(notebook)).map((transfer) => (
        <p key={transfer.index}>{waitingTransferWords(transfer, names, notebook.currency)}</p>
      ))}
    </Panel>
  )
}

/** Whether marks in the books have put any actual figure in the place of a planned one. */
function movedByBooks(notebook: Notebook): boolean {
  return asBuilt(notebook, digitsOf(notebook)).notebook !== notebook
}
