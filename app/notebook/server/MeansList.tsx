import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { households } from '../../../lib/core/people/household.ts'
import type { Statement } from '../../../lib/core/shares/statement.ts'
import { meansWords } from '../../../lib/words/meansText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'

/** Of what is asked of each household, what is money and what its own goods and work. */
export function MeansList({
  notebook,
  statement: { asked, inMoney, promised },
}: {
  notebook: Notebook
  statement: Pick<Statement, 'asked' | 'inMoney' | 'promised'>
}) {
  const names = shareNames(notebook)
  return (
    <ul className="whole-means">
      {households.map((household) => (
        <li key={household}>
          <HouseholdTag household={household} name={names[household]} short />{' '}
          {meansWords(
            { asked: asked[household], inMoney: inMoney[household], promised: promised[household] },
            notebook.currency,
          )}
        </li>
      ))}
    </ul>
  )
}
