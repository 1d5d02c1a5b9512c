import { entriesOnNoLine } from '../../../../lib/core/ledger/onNoLine.ts'
import { plannedAgainstActual } from '../../../../lib/core/ledger/plannedAgainstActual.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { beyondItems } from '../../server/beyondAgreed.ts'
import { GoneLines } from '../../server/books/GoneLines.tsx'
import { ItemInBooks } from '../../server/books/ItemInBooks.tsx'
import { ItemSums } from '../../server/books/ItemSums.tsx'
import { SpendingPanel } from '../../server/books/SpendingPanel.tsx'
import { ThingsPanel } from '../../server/books/ThingsPanel.tsx'
import { TrialBalancePanel } from '../../server/books/TrialBalancePanel.tsx'
import { ValuationsPanel } from '../../server/books/ValuationsPanel.tsx'
import { booksFigures } from '../../server/booksFigures.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'The books' }

export default async function BooksPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const figures = booksFigures(opened)
  const standing = plannedAgainstActual(figures.notebook, digitsOf(figures.notebook))
  const beyond = beyondItems(figures)
  const loose = entriesOnNoLine(opened.notebook, digitsOf(opened.notebook))
  const home = `/notebook/${notebookId}`
  return (
    <NotebookShell
      opened={opened}
      page="books"
      title="The books"
      lead="What was planned, what it came to, and who paid. What both households marked of a line takes the planned amount’s place in the balance, and counts until both mark another. What was signed stays as it was signed."
      back={{ href: `${home}/money`, label: 'Money and hours' }}
    >
      <GoneLines opened={opened} standing={standing} />
      <ItemSums figures={figures} standing={standing} csv={`${home}/books.csv`} />
      <SpendingPanel figures={figures} />
      {standing.items.map((item) => (
        <ItemInBooks
          key={item.path}
          opened={opened}
          figures={figures}
          item={item}
          beyond={beyond.find(({ id }) => id === item.id)}
          loose={loose.filter((one) => one.item === item.id)}
        />
      ))}
      <ValuationsPanel opened={opened} />
      <ThingsPanel opened={opened} figures={figures} />
      <TrialBalancePanel figures={figures} />
      <div className="on-screen-only">
        <Panel heading="Something is missing?">
          <p>Receipts, money back, goods in kind and hours are entered on Money and hours.</p>
          <div className="button-row">
            <ButtonLink href={`${home}/money#enter`}>Enter what was given</ButtonLink>
            <ButtonLink href={`${home}/final-account`}>The final account</ButtonLink>
          </div>
        </Panel>
      </div>
    </NotebookShell>
  )
}
