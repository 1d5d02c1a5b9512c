import { compareLengths, type Millimetres } from '../amounts/length.ts'
import { addRatios } from '../amounts/ratio.ts'
import { ceilingOf, divideRatios, lowestTerms, subtractRatios, times } from './exact.ts'

/** How the bays of a run come about. */
export type BaySpec = {
  /** Largest distance between post centres, above zero. */
  readonly spacing: Millimetres
  /** Length of the rails' stock where bays are laid out to it, above zero. */
  readonly stock?: Millimetres
  /** Brace bays at the beginning and at the end of the run, each of its length. */
  readonly bracesBefore: readonly Millimetres[]
  readonly bracesAfter: readonly Millimetres[]
}

/** Post centres along one run, its two ends included. */
export type BayLayout = {
  readonly places: readonly Millimetres[]
  /** Bays that are neither a brace nor, laid out to stock, the remainder; all of length `bay`. */
  readonly bays: number
  readonly bay: Millimetres
  /** Laid out to stock: the bay that is left; undefined where none is. */
  readonly remainder?: Millimetres
  /** False where the brace assemblies need more than the run has: they are left out. */
  readonly bracesFit: boolean
}

/** ⌈length ÷ spacing⌉ equal bays between the braces; or bays of the stock, divided evenly where it is too long, and one remainder. */
export function layOutBays(from: Millimetres, to: Millimetres, spec: BaySpec): BayLayout {
  const before = placesAfter(from, spec.bracesBefore)
  const after = placesAfter(
    to,
    spec.bracesAfter.map((span) => ({ over: -span.over, under: span.under })),
  )
  const [start, end] = [before.at(-1) ?? from, after.at(-1) ?? to]
  if (before.length + after.length > 0 && compareLengths(start, end) > 0) {
    return { ...layOutBays(from, to, { ...spec, bracesBefore: [], bracesAfter: [] }), bracesFit: false }
  }
  const between = spec.stock
    ? stockBays(start, end, spec.spacing, spec.stock)
    : equalBays(start, end, spec.spacing)
  // The braces' own posts at both ends of what lies between are in `between.places` already.
  const ends = (places: readonly Millimetres[], at: Millimetres) => (places.length > 0 ? [at] : [])
  return {
    ...between,
    places: [
      ...ends(before, from),
      ...before.slice(0, -1),
      ...between.places,
      ...after.slice(0, -1).reverse(),
      ...ends(after, to),
    ],
    bracesFit: true,
  }
}

function placesAfter(from: Millimetres, spans: readonly Millimetres[]): Millimetres[] {
  let at = from
  return spans.map((span) => {
    at = lowestTerms(addRatios(at, span))
    return at
  })
}

type Between = Omit<BayLayout, 'bracesFit'>

function equalBays(from: Millimetres, to: Millimetres, spacing: Millimetres): Between {
  const length = lowestTerms(subtractRatios(to, from))
  if (length.over === 0n) return { places: [from], bays: 0, bay: length }
  const bays = ceilingOf(divideRatios(length, spacing))
  const bay = lowestTerms({ over: length.over, under: length.under * BigInt(bays) })
  const places = Array.from({ length: bays + 1 }, (_, index) =>
    index === bays ? to : index === 0 ? from : lowestTerms(addRatios(from, times(bay, index))),
  )
  return { places, bays, bay }
}

function stockBays(from: Millimetres, to: Millimetres, spacing: Millimetres, stock: Millimetres): Between {
  const parts = ceilingOf(divideRatios(stock, spacing))
  const bay = lowestTerms({ over: stock.over, under: stock.under * BigInt(parts) })
  const length = lowestTerms(subtractRatios(to, from))
  const whole = divideRatios(length, bay)
  const full = Number(whole.over / whole.under)
  const remainder = lowestTerms(subtractRatios(length, times(bay, full)))
  const places = [
    ...Array.from({ length: full + 1 }, (_, index) => lowestTerms(addRatios(from, times(bay, index)))),
    ...(remainder.over > 0n ? [to] : []),
  ]
  return { places, bays: full, bay, ...(remainder.over > 0n ? { remainder } : {}) }
}
