'use server'

import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { applyTried, triedItems } from '../../../lib/core/trying/applyTried.ts'
import { readPart } from '../../../lib/forms/parts.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { tidyDraft } from '../../../lib/forms/tidyDraft.ts'
import { readTried } from '../../../lib/forms/triedDraft.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { proposalRefusalWords } from '../../../lib/words/proposalText.ts'
import { quantityText } from '../../../lib/words/takeoff/quantityText.ts'
import { titleOfItem } from '../../../lib/words/titleOfItem.ts'
import { tryRefusals } from '../../../lib/words/tryText.ts'
import { itemsBase } from './proposalDraft.ts'
import { withSeen } from './proposalSeen.ts'
import { propose } from './propose.ts'
import { tryOffers } from './tryOffers.ts'
import { typedText } from './typedText.ts'

/**
 * Makes a proposal of what was tried. The tried plan is worked out again here, by the same function as in the browser:
 * only what was typed is taken from it, no figure.
 *
 * @param base the version of the items (`itemsBase`) that the page tried the change on
 */
export async function keepTried(
  notebookId: string,
  base: unknown,
  sent: unknown,
  why: unknown,
): Promise<{ readonly refused: string } | { readonly made: string }> {
  const { household } = await requireHousehold(notebookId)
  const tried = readTried(sent)
  const stored = await findNotebook(notebookId)
  const read = stored ? readNotebook(stored.document) : undefined
  if (tried === undefined || !read?.ok) return { refused: tryRefusals.unreadable }
  const { document, notebook } = read.value
  const offers = tryOffers(document)
  const plan = applyTried(notebook, tried, {
    sections: new Map(Object.entries(offers.sections)),
    gates: new Map(Object.entries(offers.gates)),
    nameOf: quantityText,
  })
  const changed = new Set(triedItems(notebook, plan))
  const items = [...plan.sections, ...plan.gates, ...plan.common].flatMap((item) => {
    const current = changed.has(item.id) ? readPart(document, { part: 'item', id: item.id }) : undefined
    if (current === undefined) return []
    const tidy = tidyDraft(item, current) as Record<string, unknown>
    return [{ id: item.id, fingerprint: fingerprintOf(current), was: current, item: tidy }]
  })
  const seen = base === itemsBase(document) ? withSeen(document, items) : items
  const outcome = await propose(notebookId, household, seen, typedText(why))
  if ('refused' in outcome)
    return { refused: proposalRefusalWords(outcome.refused, (id) => titleOfItem(notebook, id)) }
  return { made: `/notebook/${notebookId}/proposals` }
}
