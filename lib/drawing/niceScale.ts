import { tickStep } from 'd3-array'
import { inMillimetres, type Millimetres } from '../core/amounts/length.ts'
import { ratio } from '../core/amounts/ratio.ts'

/** The largest of 1, 2, 5, 10, 20, 50, … that is no more than `most`; 0 where not even 1 is. */
export function roundFigureUpTo(most: number): number {
  if (!(most >= 1)) return 0
  // The step nearest to the whole may be more than it; half of it never is.
  const nearest = tickStep(0, most, 1)
  return nearest <= most ? nearest : tickStep(0, most, 2)
}

/** How a small dimension is drawn so that it can be seen. */
export type Exaggeration = { readonly unitsPerMillimetre: number; readonly times: number }

/**
 * To scale where the largest is at least `visible` units; else a round figure of times larger, up to `most` units.
 * Where to scale would be more than `most`, smaller than to scale (times below 1).
 */
export function exaggerate(
  largest: number,
  unitsPerMillimetre: number,
  visible: number,
  most: number,
): Exaggeration {
  const drawn = largest * unitsPerMillimetre
  if (!(drawn > 0) || (drawn >= visible && drawn <= most)) return { unitsPerMillimetre, times: 1 }
  const times = drawn > most ? most / drawn : Math.max(1, roundFigureUpTo(most / drawn))
  return { unitsPerMillimetre: unitsPerMillimetre * times, times }
}

/** The length of a scale bar: the longest round number of feet or metres, else of inches or centimetres, within `longest`. */
export function scaleBar(
  units: 'ft-in' | 'metric',
  unitsPerMillimetre: number,
  longest: number,
): { readonly millimetres: number; readonly exact: Millimetres } | undefined {
  const bases =
    units === 'metric'
      ? [ratio(1000n, 1n), ratio(10n, 1n), ratio(1n, 1n)]
      : [ratio(3048n, 10n), ratio(254n, 10n)]
  for (const base of bases) {
    const one = inMillimetres(base)
    const count = roundFigureUpTo(longest / (one * unitsPerMillimetre))
    if (count < 1 || !Number.isSafeInteger(count)) continue
    return { millimetres: one * count, exact: ratio(base.over * BigInt(count), base.under) }
  }
  return undefined
}
