import type { CostLine } from '../agreement/notebook.ts'
import { fromTakeOff, type StandingLine } from './offeredLines.ts'

/** What putting the take-off's quantities among an item's cost lines came to, in lines. */
export type TakenOver = { readonly added: number; readonly renewed: number }

/** @param after what `mergeOffered` made of `before` */
export function takenOver(before: readonly StandingLine[], after: readonly StandingLine[]): TakenOver {
  const was = new Map(before.filter(fromTakeOff).map((line) => [line.from, line]))
  const now = after.filter(fromTakeOff)
  const renewed = now.filter((line) => {
    const old = was.get(line.from)
    return old !== undefined && (old.quantity !== line.quantity || old.unit !== line.unit)
  })
  return { added: now.filter(({ from }) => !was.has(from)).length, renewed: renewed.length }
}

/** How an item's cost lines stand once some of them come from the take-off. */
export type LinesFromTakeOff = {
  readonly taken: number
  readonly unpriced: number
  /** Typed by hand beside them, credits left out: what these are for may be in the others too. */
  readonly beside: readonly CostLine[]
}

/** Undefined while none of the lines comes from the take-off. */
export function linesFromTakeOff(materials: readonly CostLine[]): LinesFromTakeOff | undefined {
  const taken = materials.filter(fromTakeOff)
  if (taken.length === 0) return undefined
  return {
    taken: taken.length,
    unpriced: taken.filter(({ unitPrice }) => unitPrice === '').length,
    beside: materials.filter((line) => !fromTakeOff(line) && !line.credit),
  }
}
