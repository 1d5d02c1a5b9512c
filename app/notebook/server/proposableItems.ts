import { placesOf } from '../../../lib/core/shares/itemShares.ts'
import { readPart } from '../../../lib/forms/parts.ts'
import type { Proposal } from '../../../lib/store/proposals.ts'
import { differences } from '../../../lib/words/differences.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { proposedChangeWords } from '../../../lib/words/proposalText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import type { ProposableItem } from '../forms/ProposalForm.tsx'
import { basicFenceOf } from './basicOffers.ts'
import { itemTitles } from './itemTitles.ts'
import type { Opened } from './opened.ts'
import { usable } from './proposalDraft.ts'

/** The items as the form for a proposal shows them, in the order of its draft. */
export function proposableItems(opened: Opened, answered: Proposal | undefined): readonly ProposableItem[] {
  const { notebook, document, shared } = opened
  const names = shareNames(notebook)
  const titleOf = itemTitles(document)
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  return placesOf(notebook).map(({ kind, item: { id } }) => {
    const section = notebook.sections.find((one) => one.id === id)
    const basic = section && basicFenceOf(opened.notebookId, notebook, section).sums
    const asks = shared.items.find((one) => one.id === id)
    const { share: _ours, ...now } = readPart(document, { part: 'item', id }) ?? {}
    const { share: _theirs, ...would } = usable(document, answered, id) ?? now
    return {
      id,
      title: titleOf(id),
      kind,
      ...(basic && { basic }),
      now:
        asks === undefined
          ? 'Can’t be shared yet.'
          : `Asks ${money(asks.a)} of ${names.a} and ${money(asks.b)} of ${names.b} now.`,
      theirs: differences(now, would, { currency: notebook.currency, names }).map(
        (one) => `${proposedChangeWords(one)}.`,
      ),
    }
  })
}
