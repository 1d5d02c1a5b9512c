import { type FirstSplit, firstWays } from '../core/shares/firstSplit.ts'

/** A first split as its form sends it; whatever is no text, or no choice, is left empty or as the form begins. */
export function readFirstSplit(draft: Readonly<Record<string, unknown>>): FirstSplit {
  const text = (value: unknown) => (typeof value === 'string' ? value.trim() : '')
  return {
    length: text(draft.length),
    height: text(draft.height),
    materials: text(draft.materials),
    hours: text(draft.hours),
    rate: text(draft.rate),
    by: draft.by === 'b' || draft.by === 'hired' ? draft.by : 'a',
    way: firstWays.find((way) => way === draft.way) ?? 'equal',
    frontA: text(draft.frontA),
    frontB: text(draft.frontB),
    basic: text(draft.basic),
    wants: draft.wants === 'b' ? 'b' : 'a',
  }
}
