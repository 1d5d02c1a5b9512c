import { notFound } from 'next/navigation'
import { cache } from 'react'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { type AgreedItem, agreedItems } from '../../../lib/core/agreement/agreedItems.ts'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { assert } from '../../../lib/core/assert.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import type { Result } from '../../../lib/core/result.ts'
import { type SharedItems, type Statement, shareItems } from '../../../lib/core/shares/statement.ts'
import { type NotebookDocument, readNotebook, unknownKeys } from '../../../lib/forms/readNotebook.ts'
import { type Change, latestChanges } from '../../../lib/store/changes.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { type FirstAnswer, firstAnswersOf } from '../../../lib/store/firstAnswers.ts'
import { marksOf } from '../../../lib/store/marks.ts'
import { type Message, messagesOf } from '../../../lib/store/messages.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { proposalsWaitingFor } from '../../../lib/store/proposals.ts'
import { pulseOf } from '../../../lib/store/pulse.ts'
import { type FrozenAccount, frozenAccounts } from './account/frozenAccounts.ts'
import { type DraftFigures, draftFigures } from './capsOf.ts'
import { shownUnits } from './shownUnits.ts'
import { type FrozenRevision, frozenRevisions } from './standingRevision.ts'

/** One agreed item as it stands: who has marked it as it is now, and what last changed in it. */
export type Standing = {
  readonly item: AgreedItem
  readonly fingerprint: string
  readonly markedAt: { readonly a?: Date; readonly b?: Date }
  readonly lastChange: Change | undefined
}

/** A notebook, opened by one of its households: what every page starts from. */
export type Opened = DraftFigures & {
  readonly notebookId: string
  readonly household: Household
  readonly example: boolean
  /** Where the notebook stood before it was read: what changes afterwards is fetched by the page itself. */
  readonly pulse: string
  readonly document: NotebookDocument
  /** With lengths in the units that this browser shows: for screens. */
  readonly notebook: Notebook
  /** With lengths in the units that are part of what is agreed: for papers. */
  readonly asAgreed: Notebook
  readonly shared: SharedItems
  /** Of the plan alone, as it is `inForce`; with the actual figures of the books it is that of `booksFigures`. */
  readonly statement: Result<Statement>
  readonly standings: readonly Standing[]
  readonly unknownKeys: readonly string[]
  /** Every revision that was put up for signing, newest first. */
  readonly revisions: readonly FrozenRevision[]
  /** Every final account that was drawn up, newest first. */
  readonly accounts: readonly FrozenAccount[]
  /** What the households said about its items, oldest first. */
  readonly messages: readonly Message[]
  /** How many proposals of the other household wait for an answer. */
  readonly waitingProposals: number
  /** What the invited household answered to being asked at all, newest first. */
  readonly firstAnswers: readonly FirstAnswer[]
}

/**
 * Opens a notebook for this browser's household, or ends the request with the one "not found" for everybody else. Read
 * once per request, however many parts of a page ask for it.
 */
export const openNotebook = cache(async (notebookId: string): Promise<Opened> => {
  const { household } = await requireHousehold(notebookId)
  const pulse = (await pulseOf(notebookId)) ?? notFound()
  const stored = (await findNotebook(notebookId)) ?? notFound()
  const read = readNotebook(stored.document)
  assert(read.ok, 'only notebooks that hold are stored')
  const { document, notebook: asAgreed } = read.value
  const notebook = { ...asAgreed, units: await shownUnits(notebookId, asAgreed.units) }
  const standings = await standingsOf(notebookId, document)
  return {
    notebookId,
    household,
    example: stored.example,
    pulse: pulse.text,
    document,
    notebook,
    asAgreed,
    shared: shareItems(notebook),
    ...draftFigures(notebook, standings),
    standings,
    unknownKeys: unknownKeys(document),
    revisions: await frozenRevisions(notebookId, asAgreed),
    accounts: await frozenAccounts(notebookId),
    messages: await messagesOf(notebookId),
    waitingProposals: await proposalsWaitingFor(notebookId, household),
    firstAnswers: await firstAnswersOf(notebookId),
  }
})

/** Where every agreed item of a document stands. */
export async function standingsOf(
  notebookId: string,
  document: NotebookDocument,
): Promise<readonly Standing[]> {
  const [marks, changes] = await Promise.all([marksOf(notebookId), latestChanges(notebookId)])
  return agreedItems(document).map((item) => {
    const fingerprint = fingerprintOf(item.inputs)
    const standing = marks.filter((mark) => mark.itemKey === item.key && mark.fingerprint === fingerprint)
    const markOf = (household: Household) => standing.find((mark) => mark.household === household)?.at
    const [a, b] = [markOf('a'), markOf('b')]
    return {
      item,
      fingerprint,
      markedAt: { ...(a ? { a } : {}), ...(b ? { b } : {}) },
      lastChange: changes.find((change) => change.itemKey === item.key),
    }
  })
}

/** Whether both households have marked the item as it stands. */
export function agreedByBoth(standing: Standing): boolean {
  return standing.markedAt.a !== undefined && standing.markedAt.b !== undefined
}
