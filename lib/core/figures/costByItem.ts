import { lesser, type Minor } from '../amounts/money.ts'
import type { ForBoth } from '../people/household.ts'
import type { ItemShares } from '../shares/itemShares.ts'

/** What an item asks of each household, and what each has spent on it so far, where anything was. */
export type ItemCost = {
  readonly item: ItemShares
  readonly asked: ForBoth<Minor>
  readonly spent: ForBoth<Minor> | undefined
}

/** Every item that can be shared, or the dearest of them in their order and the sum of the others. */
export type CostByItem = {
  readonly items: readonly ItemCost[]
  readonly others: (Omit<ItemCost, 'item'> & { readonly count: number }) | undefined
  /** Spent on the whole fence, and on no item. */
  readonly onNothing: ForBoth<Minor> | undefined
  readonly inAll: { readonly asked: ForBoth<Minor>; readonly spent: ForBoth<Minor> | undefined }
}

/**
 * The cost of a fence item by item.
 *
 * @param spent what each household spent, by item (`spentByItem`); empty while the books hold nothing
 * @param most as many bars as can be read; more items are added up
 */
export function costByItem(
  shares: readonly ItemShares[],
  spent: ReadonlyMap<string, ForBoth<Minor>>,
  most: number,
): CostByItem {
  const nothing = { a: 0n, b: 0n }
  const spentOn = (id: string) => (spent.size === 0 ? undefined : (spent.get(id) ?? nothing))
  const items = shares.map(
    (item): ItemCost => ({ item, asked: { a: item.a, b: item.b }, spent: spentOn(item.id) }),
  )
  const shown = items.length <= most ? new Set(items) : new Set(items.toSorted(dearer).slice(0, most - 1))
  const left = items.filter((one) => !shown.has(one))
  const whole = spent.get('')
  const sum = sumOf(items)
  return {
    items: items.filter((one) => shown.has(one)),
    others: left.length === 0 ? undefined : { ...sumOf(left), count: left.length },
    onNothing: whole !== undefined && (whole.a !== 0n || whole.b !== 0n) ? whole : undefined,
    inAll: { asked: sum.asked, spent: sum.spent && plus(sum.spent, whole ?? nothing) },
  }
}

function sumOf(costs: readonly ItemCost[]): Omit<ItemCost, 'item'> {
  const nothing = { a: 0n, b: 0n }
  return costs.reduce<Omit<ItemCost, 'item'>>(
    (sum, { asked, spent }) => ({
      asked: plus(sum.asked, asked),
      spent: spent ? plus(sum.spent ?? nothing, spent) : sum.spent,
    }),
    { asked: nothing, spent: undefined },
  )
}

function plus(one: ForBoth<Minor>, other: ForBoth<Minor>): ForBoth<Minor> {
  return { a: one.a + other.a, b: one.b + other.b }
}

/** By what is asked or spent, whichever is more; of two alike the earlier first. */
function dearer(one: ItemCost, other: ItemCost): number {
  const [first, second] = [sizeOf(one), sizeOf(other)]
  return first > second ? -1 : first < second ? 1 : 0
}

function sizeOf({ asked, spent = { a: 0n, b: 0n } }: ItemCost): Minor {
  const [all, given] = [asked.a + asked.b, spent.a + spent.b]
  return lesser(all, given) === all ? given : all
}
