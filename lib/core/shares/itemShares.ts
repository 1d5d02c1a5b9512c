import type { CommonCost, Gate, ItemKind, Notebook, Section, Share } from '../agreement/notebook.ts'
import { labourAmount, signedCostAmount } from '../amounts/lineAmount.ts'
import { type Minor, moneyText } from '../amounts/money.ts'
import type { Fault } from '../faults.ts'
import type { ForBoth } from '../people/household.ts'
import { held, type Result, refused } from '../result.ts'
import type { ShareContext } from './context.ts'
import { type HoursShare, shareHours } from './hoursShare.ts'
import { type PotShare, sharePot } from './potShare.ts'

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

/** Shares one item; the faults carry full paths. */
export function shareItem(
  place: ItemPlace & { readonly item: PricedItem },
  digits: number,
  asked: AskedSoFar,
): Result<ItemShares> {
  const { item, kind, index, path } = place
  const sums = sumLines(item, digits)
  const lowest = 'together' in item.share ? sums.materials + sums.labour : sums.materials
  const belowZero: Fault[] =
    lowest < 0n
      ? [{ path: `${path}.materials`, kind: 'pot-below-zero', below: moneyText(-lowest, digits) }]
      : []
  const context = { path: `${path}.share`, digits, uses: 'uses' in item ? item.uses : undefined }
  // A pot below zero is shared as if it were empty, so that faults of the other pot are found as well.
  const pots = sharePots(item.share, lowest < 0n ? emptied(item.share, sums) : sums, context, asked.money)
  if (!pots.ok || lowest < 0n) return refused(...belowZero, ...(pots.ok ? [] : pots.faults))
  const labourPot = pots.value.form === 'together' ? pots.value.together : pots.value.labour
  const shared =
    pots.value.form === 'together' ? [pots.value.together] : [pots.value.materials, pots.value.labour]
  const sumOf = (household: 'a' | 'b') => shared.reduce((sum, pot) => sum + pot[household], 0n)
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

function emptied(share: Share, sums: LineSums): LineSums {
  return { ...sums, materials: 0n, ...('together' in share ? { labour: 0n } : {}) }
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
