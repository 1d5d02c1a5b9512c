import type { CommonCost, Gate, ItemKind, Notebook, Section, Share, Spread } from '../agreement/notebook.ts'
import { labourAmount, signedCostAmount } from '../amounts/lineAmount.ts'
import { type Minor, moneyText } from '../amounts/money.ts'
import type { Fault } from '../faults.ts'
import type { ForBoth } from '../people/household.ts'
import { held, type Result, refused } from '../result.ts'
import type { ShareContext } from './context.ts'
import { type HoursShare, shareHours } from './hoursShare.ts'
import { sharedUses } from './passages.ts'
import { type PotShare, sharePot } from './potShare.ts'
import { type Laying, laidOnNothing, laidPot } from './spread.ts'

/** Where an item stands in the file. */
export type ItemPlace = { readonly kind: ItemKind; readonly index: number; readonly path: string }

/** An item's pots: two, each with its share, or one of both. Totals are kept for each either way. */
export type ItemPots =
  | { readonly form: 'two pots'; readonly materials: PotShare; readonly labour: PotShare }
  | { readonly form: 'together'; readonly together: PotShare }

/** One section, gate or common cost, shared. Money in minor units, hours in hundredths. */
export type ItemShares = ItemPlace & {
  readonly id: string
  readonly name: string
  readonly materialsTotal: Minor
  readonly labourTotal: Minor
  readonly total: Minor
  readonly a: Minor
  readonly b: Minor
  readonly pots: ItemPots
  readonly hours: HoursShare
  /** Planned in kind and counted labour of each household, priced. */
  readonly promised: ForBoth<Minor>
}

/** What both households were asked for before an item, which decides odd units on a tie. */
export type AskedSoFar = { readonly money: ForBoth<Minor>; readonly hours: ForBoth<bigint> }

export const nothingAsked: AskedSoFar = { money: { a: 0n, b: 0n }, hours: { a: 0n, b: 0n } }

type PricedItem = Section | Gate | CommonCost

/** All items in file order: sections, gates, common costs. */
export function placesOf(notebook: Notebook): readonly (ItemPlace & { readonly item: PricedItem })[] {
  const placed = (kind: ItemKind, list: string, items: readonly PricedItem[]) =>
    items.map((item, index) => ({ kind, index, path: `${list}[${index}]`, item }))
  return [
    ...placed('section', 'sections', notebook.sections),
    ...placed('gate', 'gates', notebook.gates),
    ...placed('common', 'common', notebook.common),
  ]
}

/** What a spread common cost is laid on: the sections and gates, or why they can't bear it. */
export type LayingAt = (path: string) => Result<Laying>

/** Tried alone, a common cost has nothing to be laid on. */
const nowhere: LayingAt = (path) => refused({ path, kind: 'spread-nowhere' })

/** What the principles of an item look at besides their own keys. */
export function shareContext(
  { item, path }: ItemPlace & { readonly item: PricedItem },
  digits: number,
): ShareContext {
  return { path: `${path}.share`, digits, uses: sharedUses(item) }
}

/** How a common cost is laid on the sections and gates; undefined on every item that is shared by itself. */
export function spreadOf(item: PricedItem): Spread | undefined {
  return 'spread' in item && item.spread !== '' ? item.spread : undefined
}

/**
 * Shares one item; the faults carry full paths. A common cost that is laid on sections and gates has two pots, whatever
 * its own share, which rests.
 */
export function shareItem(
  place: ItemPlace & { readonly item: PricedItem },
  digits: number,
  asked: AskedSoFar,
  laying: LayingAt = nowhere,
): Result<ItemShares> {
  const { item, kind, index, path } = place
  const sums = sumLines(item, digits)
  const spread = spreadOf(item)
  const asOne = spread === undefined && 'together' in item.share
  const lowest = asOne ? sums.materials + sums.labour : sums.materials
  const belowZero: Fault[] =
    lowest < 0n
      ? [{ path: `${path}.materials`, kind: 'pot-below-zero', below: moneyText(-lowest, digits) }]
      : []
  // A pot below zero is shared as if it were empty, so that faults of the other pot are found as well.
  const shared = lowest < 0n ? { ...sums, materials: 0n, ...(asOne ? { labour: 0n } : {}) } : sums
  const pots =
    spread === undefined
      ? sharePots(item.share, shared, shareContext(place, digits), asked.money)
      : layPots(spread, shared, laying(`${path}.spread`), asked.money)
  if (!pots.ok || lowest < 0n) return refused(...belowZero, ...(pots.ok ? [] : pots.faults))
  const labourPot = pots.value.form === 'together' ? pots.value.together : pots.value.labour
  const each =
    pots.value.form === 'together' ? [pots.value.together] : [pots.value.materials, pots.value.labour]
  const sumOf = (household: 'a' | 'b') => each.reduce((sum, pot) => sum + pot[household], 0n)
  return held({
    kind,
    index,
    path,
    id: item.id,
    name: item.name,
    materialsTotal: sums.materials,
    labourTotal: sums.labour,
    total: sums.materials + sums.labour,
    a: sumOf('a'),
    b: sumOf('b'),
    pots: pots.value,
    hours: shareHours(item.labour, labourPot.fractionA, asked.hours),
    promised: sums.promised,
  })
}

/** Sums of an item's rounded lines: credits are taken off, gifts are in no sum. */
export type LineSums = {
  readonly materials: Minor
  readonly labour: Minor
  readonly promised: ForBoth<Minor>
}

export function sumLines(item: Pick<PricedItem, 'materials' | 'labour'>, digits: number): LineSums {
  const promised = { a: 0n, b: 0n }
  let materials = 0n
  for (const line of item.materials) {
    const amount = signedCostAmount(line, digits)
    materials += amount
    // A credit that a household keeps (it sold the scrap) lowers what that household brings.
    if (line.suppliedBy !== 'bought') promised[line.suppliedBy] += amount
  }
  let labour = 0n
  for (const line of item.labour) {
    if (!line.counts) continue
    const amount = labourAmount(line, digits)
    labour += amount
    if (line.by !== 'hired') promised[line.by] += amount
  }
  return { materials, labour, promised }
}

/** Nothing to share asks nobody for anything, so that a draft may be laid on what is not there yet. */
function layPots(
  spread: Spread,
  sums: LineSums,
  laying: Result<Laying>,
  asked: ForBoth<Minor>,
): Result<ItemPots> {
  const empty = sums.materials === 0n && sums.labour === 0n
  if (!laying.ok && !empty) return laying
  const laid = (pot: 'materials' | 'labour') =>
    laying.ok ? laying.value(spread, pot) : ({ ...laidOnNothing, by: spread } as const)
  const materials = laidPot(laid('materials'), sums.materials, asked)
  const labour = laidPot(laid('labour'), sums.labour, { a: asked.a + materials.a, b: asked.b + materials.b })
  return held({ form: 'two pots', materials, labour })
}

function sharePots(
  share: Share,
  sums: LineSums,
  context: ShareContext,
  asked: ForBoth<Minor>,
): Result<ItemPots> {
  const at = (pot: string) => ({ ...context, path: `${context.path}.${pot}` })
  if ('together' in share) {
    const together = sharePot(share.together, sums.materials + sums.labour, at('together'), asked)
    return together.ok ? held({ form: 'together', together: together.value }) : together
  }
  const materials = sharePot(share.materials, sums.materials, at('materials'), asked)
  const first = materials.ok ? materials.value : { a: 0n, b: 0n }
  const labour = sharePot(share.labour, sums.labour, at('labour'), {
    a: asked.a + first.a,
    b: asked.b + first.b,
  })
  if (materials.ok && labour.ok) {
    return held({ form: 'two pots', materials: materials.value, labour: labour.value })
  }
  const faults: Fault[] = [...(materials.ok ? [] : materials.faults), ...(labour.ok ? [] : labour.faults)]
  return refused(...faults)
}
