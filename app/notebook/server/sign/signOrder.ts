import type { Household } from '../../../../lib/core/people/household.ts'
import type { FrozenRevision } from '../standingRevision.ts'
import { toSignHere } from './toSignHere.ts'

/** How the page for signing stands for the household that looks at it. */
export type SignState =
  /** Nothing was put up yet. */
  | 'draft with obstacles'
  | 'draft ready'
  /** A revision is up for signing. */
  | 'waits for us'
  | 'waits for them'
  | 'signed'
  /** Signed by all, and the notebook says something else by now. */
  | 'signed and changed'

export type SignPart =
  /** What the revision that is up for signing changes. */
  | 'amendment'
  | 'agreement'
  /** The forms by which this household's parties sign. */
  | 'forms'
  | 'copies'
  /** What stands in the way of the next revision, or the press that puts it up. */
  | 'next'

/** @param ready whether nothing stands in the way of putting the notebook up */
export function signState(
  newest: FrozenRevision | undefined,
  household: Household,
  differs: boolean,
  ready: boolean,
): SignState {
  if (newest === undefined) return ready ? 'draft ready' : 'draft with obstacles'
  if (newest.stillToSign.length === 0) return differs ? 'signed and changed' : 'signed'
  return toSignHere(newest, household).length > 0 ? 'waits for us' : 'waits for them'
}

/**
 * The parts of the page under what it says in short. Nobody is asked to sign, or to freeze a text, before the text; what
 * waits to be agreed to comes first while it stands in the way.
 */
export function signOrder(state: SignState, differs: boolean): readonly SignPart[] {
  switch (state) {
    case 'draft with obstacles':
      return ['next', 'agreement']
    case 'draft ready':
      return ['agreement', 'next']
    case 'waits for us':
      return ['amendment', 'agreement', 'forms', 'copies', ...(differs ? (['next'] as const) : [])]
    case 'waits for them':
      return ['amendment', 'agreement', 'copies', ...(differs ? (['next'] as const) : [])]
    case 'signed':
      return ['copies', 'agreement']
    case 'signed and changed':
      return ['next', 'agreement', 'copies']
  }
}
