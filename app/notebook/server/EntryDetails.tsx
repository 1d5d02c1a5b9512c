import type { Contribution } from '../../../lib/core/agreement/notebook.ts'
import { minorUnits } from '../../../lib/core/amounts/money.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { entryLineWords, lessCountsWords, shopWords } from '../../../lib/words/booksText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { meansWords } from '../../../lib/words/transferText.ts'
import { itemTitles } from './itemTitles.ts'
import type { Opened } from './opened.ts'

/** What an entry says beside its amount: the shop, the lines that it was for, the receipt, how goods were valued. */
export function EntryDetails({
  opened: { notebook, notebookId, document },
  entry,
  counts,
}: {
  opened: Opened
  entry: Contribution
  /** What counts of its amount, in minor units. */
  counts: bigint
}) {
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const digits = digitsOf(notebook)
  const titleOf = itemTitles(document)
  const whole = entry.kind === 'material' ? minorUnits(entry.amount, digits) : counts
  return (
    <>
      {entry.shop.trim() === '' ? null : <p>{shopWords(entry.kind, entry.shop)}</p>}
      {entry.means.trim() === '' ? null : <p>{meansWords(entry.means)}</p>}
      {entry.lines.length === 0 ? null : (
        <ul className="entry-lines">
          {entry.lines.map((line) => (
            <li key={JSON.stringify(line)}>
              {entryLineWords(line, titleOf(line.item), money(minorUnits(line.amount, digits)))}
            </li>
          ))}
        </ul>
      )}
      {entry.file === '' ? null : (
        <p>
          <a href={`/notebook/${notebookId}/files/${encodeURIComponent(entry.file)}`}>The receipt</a>
        </p>
      )}
      {whole <= counts ? null : (
        <p className="quiet">
          {lessCountsWords(money(whole), money(counts))}{' '}
          <a href={`/notebook/${notebookId}/books#values`}>Both can mark the whole on The books.</a>
        </p>
      )}
    </>
  )
}
