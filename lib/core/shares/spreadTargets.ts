import type { Gate, Section } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { addRatios, half, type Ratio, ratio } from '../amounts/ratio.ts'
import { lowestTerms } from '../takeoff/exact.ts'
import { exactShare } from './exactShare.ts'
import { type ItemShares, type placesOf, shareContext } from './itemShares.ts'
import type { PotShare } from './potShare.ts'
import type { SpreadTarget } from './spread.ts'

type Place = ReturnType<typeof placesOf>[number]

/** A section or gate that was shared, as something that common costs can be laid on; undefined for a common cost. */
export function spreadTarget(place: Place, shares: ItemShares, digits: number): SpreadTarget | undefined {
  if (place.kind === 'common') return undefined
  const { pots, id, kind, index, name } = shares
  const [materials, labour] =
    pots.form === 'together' ? [pots.together, pots.together] : [pots.materials, pots.labour]
  const fractionA = (pot: PotShare) => lowestTerms(fractionOf(pot, place, digits))
  return {
    id,
    kind,
    index,
    name,
    ...lengthOfItem(place.item as Section | Gate),
    cost: shares.total,
    fractionA: { materials: fractionA(materials), labour: fractionA(labour) },
  }
}

/**
 * Of a pot with nothing in it, the fraction that its principle asks of any pot: a gate that b bears alone carries its part
 * of a common cost alone before anything on it is priced. One half where a principle needs an amount (`saving`,
 * `difference`) or weights that are not there.
 */
function fractionOf(pot: PotShare, place: Place, digits: number): Ratio {
  const { principle } = pot
  if (pot.total > 0n) return pot.fractionA
  if (principle.principle === 'laid' || principle.principle === 'difference') return half
  if (principle.principle === 'saving') return half
  const ofOne = exactShare(principle, 1n, shareContext(place, digits))
  return ofOne.ok ? ofOne.value : half
}

/** A section's stretch, a gate's opening. What is not said, or runs backwards, has no length. */
function lengthOfItem(item: Section | Gate): { length: Millimetres; typed: string } {
  const nothing = { length: ratio(0n, 1n), typed: '' }
  if ('opening' in item)
    return item.opening === '' ? nothing : { length: lengthOf(item.opening), typed: item.opening }
  if (item.from === '' || item.to === '') return nothing
  const [from, to] = [lengthOf(item.from), lengthOf(item.to)]
  if (compareLengths(from, to) >= 0) return nothing
  return {
    length: addRatios(to, ratio(-from.over, from.under)),
    typed: `${item.from} to ${item.to}`,
  }
}
