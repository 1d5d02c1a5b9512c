import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { comparedWords, quoteWords, rateTitle, skillWords } from '../../../lib/words/arrangementText.ts'
import { typedMoneyWords } from '../../../lib/words/money.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'

/** The agreed rates, each beside the local quote that it was held against. Nothing where no rate is agreed. */
export function RatesAgainstQuotes({ notebook }: { notebook: Notebook }) {
  const rates = notebook.arrangements?.rates ?? {}
  const agreed = (['skilled', 'plain'] as const).flatMap((skill) => {
    const rate = rates[skill]
    return rate === undefined || rate.rate === '' ? [] : [{ skill, rate }]
  })
  if (agreed.length === 0) return <p>No rate is agreed yet.</p>
  return (
    <FigureTable
      caption="Agreed rates, held against local quotes"
      columns={[
        { label: 'For' },
        { label: rateTitle, figures: true },
        { label: 'Local quote' },
        { label: 'Compared' },
      ]}
      rows={agreed.map(({ skill, rate }) => [
        skillWords[skill],
        typedMoneyWords(rate.rate, notebook.currency),
        quoteWords(rate, notebook.currency),
        comparedWords(rate) ?? 'can’t be compared',
      ])}
    />
  )
}
