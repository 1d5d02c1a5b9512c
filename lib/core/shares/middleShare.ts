import type { Share } from '../agreement/notebook.ts'
import { roundHalfUp } from '../amounts/round.ts'
import type { ItemDistance } from './distance.ts'

/** Percentages have up to four digits after the point. */
const whole = 1_000_000n

/**
 * Agreed parts of both pots together that ask for the middle of what an item asks for under two plans, to the nearest
 * ten-thousandth of a percent; undefined where the plans cost differently there, or nothing, and have no middle to share.
 */
export function middleShare({ from, to }: Pick<ItemDistance, 'from' | 'to'>): Share | undefined {
  const total = from.a + from.b
  if (total <= 0n || total !== to.a + to.b) return undefined
  const a = roundHalfUp((from.a + to.a) * whole, 2n * total)
  return { together: { principle: 'percent', a: percentText(a), b: percentText(whole - a) } }
}

function percentText(tenThousandths: bigint): string {
  const digits = String(tenThousandths % 10_000n)
    .padStart(4, '0')
    .replace(/0+$/, '')
  return `${tenThousandths / 10_000n}${digits === '' ? '' : `.${digits}`}`
}
