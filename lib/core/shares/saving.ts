import { minorUnits, moneyText } from '../amounts/money.ts'
import { ratio } from '../amounts/ratio.ts'
import { held, type Result, refused } from '../result.ts'
import type { ExactShareOfA, ShareContext } from './context.ts'

/**
 * Share the saving: each household is asked for what it would have paid building alone, less half of what building
 * together saves: (C + aloneA − aloneB)/2. For two parties this is the Shapley value, the nucleolus and the separable
 * costs method at once. Refused where building together costs more than both alone, or where one would be paid.
 */
export function savingShare(
  pot: bigint,
  alone: { readonly aloneA: string; readonly aloneB: string },
  context: ShareContext,
): Result<ExactShareOfA> {
  const money = (minor: bigint) => moneyText(minor, context.digits)
  const aloneA = minorUnits(alone.aloneA, context.digits)
  const aloneB = minorUnits(alone.aloneB, context.digits)
  if (pot > aloneA + aloneB) {
    const facts = { pot: money(pot), alone: money(aloneA + aloneB), over: money(pot - aloneA - aloneB) }
    return refused({ path: context.path, kind: 'saving-dearer', ...facts })
  }
  const twiceA = pot + aloneA - aloneB
  if (twiceA >= 0n && twiceA <= 2n * pot) return held(ratio(twiceA, 2n))
  const household = twiceA < 0n ? 'a' : 'b'
  const twiceShare = household === 'a' ? twiceA : 2n * pot - twiceA
  // Half a minor unit can decide it, so the half is shown.
  const share =
    twiceShare % 2n === 0n
      ? moneyText(twiceShare / 2n, context.digits)
      : moneyText(twiceShare * 5n, context.digits + 1)
  return refused({ path: context.path, kind: 'saving-outside', household, share, pot: money(pot) })
}
