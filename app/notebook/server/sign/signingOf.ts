import type { Obstacle } from '../../../../lib/core/agreement/readiness.ts'
import type { Amendment, SummaryInput } from '../../../../lib/words/summary/summaryInput.ts'
import { amendmentOf } from '../amendment.ts'
import type { Opened } from '../opened.ts'
import { draftDiffers, type FrozenRevision } from '../standingRevision.ts'
import { draftSummary, revisionSummary } from '../summaryOf.ts'
import { obstaclesOf } from './obstaclesOf.ts'
import { type SignPart, signOrder, signState } from './signOrder.ts'

/** What the page for signing shows, and in which order. */
export type Signing = {
  readonly opened: Opened
  /** The revision that was put up last; undefined while there is none. */
  readonly newest: FrozenRevision | undefined
  /** The notebook says something else than that revision, or there is none. */
  readonly differs: boolean
  /** What stands in the way of the next one. */
  readonly obstacles: readonly Obstacle[]
  /** Of that revision, or of the draft where there is none: the text that is read here. */
  readonly summary: SummaryInput
  /** What that revision changes in one that all have signed, while it is up for signing. */
  readonly amends: Amendment | undefined
  /** What the notebook would change by now. */
  readonly draftAmends: Amendment | undefined
  readonly parts: readonly SignPart[]
}

export function signingOf(opened: Opened): Signing {
  const { revisions, household, document } = opened
  const [newest] = revisions
  const differs = newest === undefined || draftDiffers(opened, newest)
  const obstacles = differs ? obstaclesOf(opened) : []
  const state = signState(newest, household, differs, obstacles.length === 0)
  const summary = newest ? revisionSummary(newest, revisions) : draftSummary(opened)
  const waits = newest !== undefined && newest.stillToSign.length > 0
  const amends = waits ? summary.amends : undefined
  return {
    opened,
    newest,
    differs,
    obstacles,
    summary,
    amends,
    draftAmends: newest && differs ? amendmentOf(document, revisions) : undefined,
    parts: signOrder(state, differs).filter((part) => part !== 'amendment' || amends !== undefined),
  }
}
