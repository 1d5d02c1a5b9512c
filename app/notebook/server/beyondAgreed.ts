import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { type BeyondTolerance, beyondTolerance } from '../../../lib/core/ledger/tolerance.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import type { BooksFigures } from './booksFigures.ts'
import type { Opened } from './opened.ts'

/**
 * The items that came dearer than the tolerance that all have signed allows, and that not both have marked anew since. Where
 * nothing is signed, nothing is agreed.
 */
export function beyondAgreed({
  revisions,
  standings,
}: Pick<Opened, 'revisions' | 'standings'>): readonly BeyondTolerance[] {
  const signed = revisions.find(({ stillToSign }) => stillToSign.length === 0)?.notebook
  if (signed === undefined) return []
  return beyondTolerance(signed, digitsOf(signed), signed.arrangements).filter(({ id }) => {
    const markedAt = standings.find(({ item }) => item.key === itemKey(id))?.markedAt
    return markedAt !== undefined && (markedAt.a === undefined || markedAt.b === undefined)
  })
}

/** The same, whoever has marked them: by the figures that the books are held against. */
export function beyondItems({ notebook, signed }: BooksFigures): readonly BeyondTolerance[] {
  return signed === undefined ? [] : beyondTolerance(notebook, digitsOf(notebook), notebook.arrangements)
}
