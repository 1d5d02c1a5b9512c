import type { Contribution, Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Minor } from '../../../lib/core/amounts/money.ts'
import { countedLines } from '../../../lib/core/ledger/actual.ts'
import { contributionAmount } from '../../../lib/core/ledger/contributed.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'
import { capReached, capsReached } from '../../../lib/core/shares/capReached.ts'
import { placesOf } from '../../../lib/core/shares/itemShares.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { reachedCapSentences } from '../../../lib/words/capText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { spokenList } from '../../../lib/words/summary/names.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { heldCaps } from './heldCaps.ts'

/**
 * Buying on an item pauses where a household's cap is reached, or would be, beyond what the other has agreed to bear: the
 * newest entry of a document is then refused, with the figures, until caps or prices were changed and marked by both.
 * Only money paid to a supplier is buying; what came back, hours and goods in kind are always taken.
 *
 * @param books what the books are held against, without the new entry; caps of the draft take the place of signed ones
 * once both have marked them
 * @param signed whether that is signed by all, and so marked by both
 * @param capsMarked who has marked the caps of the draft
 */
export function capFaults(
  next: NotebookDocument,
  books: Notebook,
  signed: boolean,
  capsMarked: ForBoth<boolean>,
): readonly Fault[] {
  const read = readDocument(next)
  const draft = { caps: read.ok ? read.value.notebook.caps : books.caps, marked: capsMarked }
  const { caps, marked } = heldCaps(books, signed, draft)
  const plan = { ...books, caps }
  const entry = read.ok ? read.value.notebook.contributions.at(-1) : undefined
  if (entry?.kind !== 'cash') return []
  const names = shareNames(plan)
  const titles = new Map(placesOf(plan).map(({ item }) => [item.id, item.name.trim() || item.id]))
  const titleOf = (item: string) => titles.get(item) ?? item
  const spent = spentOn(entry, digitsOf(plan))
  const alone = [...spent].flatMap(([item, amount]) =>
    capReached(plan, item, amount, marked)
      .filter(({ pauses }) => pauses)
      .map((reached) => reachedCapSentences(reached, names, titleOf(item)).join(' ')),
  )
  // Several items may reach a cap together that none of them reaches alone.
  const together = () => {
    const after = { ...plan, contributions: [...plan.contributions, entry] }
    return capsReached(after, marked)
      .filter(({ pauses, items }) => pauses && items.some((item) => spent.has(item)))
      .map((reached) =>
        reachedCapSentences(reached, names, spokenList([...spent.keys()].map(titleOf))).join(' '),
      )
  }
  const messages = alone.length > 0 || spent.size < 2 ? alone : together()
  return [...new Set(messages)].map((message) => ({ path: 'amount', message }))
}

/** What an entry spends on each item, by its lines and, for the rest, by what it is for. */
function spentOn(entry: Contribution, digits: number): ReadonlyMap<string, Minor> {
  const spent = new Map<string, Minor>()
  let rest = contributionAmount(entry, digits)
  const add = (item: string, amount: Minor) => spent.set(item, (spent.get(item) ?? 0n) + amount)
  for (const { spent: line, amount } of countedLines(entry, digits)) {
    add(line.item, amount)
    rest -= amount
  }
  if (entry.for !== '' && rest > 0n) add(entry.for, rest)
  return spent
}
