import type { SimplePrinciple } from '../agreement/notebook.ts'
import { ratio } from '../amounts/ratio.ts'
import { never } from '../assert.ts'
import { held, type Result } from '../result.ts'
import type { ExactShareOfA, ShareContext } from './context.ts'
import { equalShare } from './equal.ts'
import { oneShare } from './one.ts'
import { percentShare } from './percent.ts'
import { savingShare } from './saving.ts'
import { shareByBenefit, shareByLength, shareByUse } from './weights.ts'

/** What a is asked for of one pot under one principle, exact. A pot of zero is shared as zero whatever the principle. */
export function exactShare(
  principle: SimplePrinciple,
  pot: bigint,
  context: ShareContext,
): Result<ExactShareOfA> {
  if (pot === 0n) return held(ratio(0n, 1n))
  switch (principle.principle) {
    case 'equal':
      return held(equalShare(pot))
    case 'percent':
      return held(percentShare(pot, principle))
    case 'one':
      return held(oneShare(pot, principle))
    case 'length':
      return shareByLength(pot, principle, context)
    case 'use':
      return shareByUse(pot, context)
    case 'benefit':
      return shareByBenefit(pot, principle, context)
    case 'saving':
      return savingShare(pot, principle, context)
    default:
      return never(principle)
  }
}
