import type { CostLine, Notebook } from '../agreement/notebook.ts'
import { lesser, type Minor, minorUnits, moneyText } from '../amounts/money.ts'
import { contributionAmount } from '../ledger/contributed.ts'
import { type ForBoth, type Household, households, otherHousehold } from '../people/household.ts'
import { digitsOf, plannedStatement, type Statement, statementOf } from './statement.ts'

/** A household's cap against what it is asked for as things stand. All in minor units, before caps. */
export type ReachedCap = {
  readonly household: Household
  readonly cap: Minor
  /** What it is asked for: actual figures where both marked them, what was spent where that is more than was planned. */
  readonly asked: Minor
  /** The same once the amount in question is spent; `asked` where there is none. */
  readonly afterwards: Minor
  /** By how much `afterwards` lies above the cap. */
  readonly over: Minor
  /** How much above the cap the plan asks for, where the other household marked the caps: so much it takes over. */
  readonly agreed: Minor
  /** Nobody has agreed to bear what lies above: buying on the items pauses. */
  readonly pauses: boolean
}

/**
 * The caps that are reached as things stand, each with the items whose cost its household bears a part of: buying on these
 * pauses where `pauses` says so. Nothing where the shares can't be worked out.
 *
 * @param marked who has marked the caps as they stand; in what was signed, both
 */
export function capsReached(
  notebook: Notebook,
  marked: ForBoth<boolean>,
): readonly (ReachedCap & { readonly items: readonly string[] })[] {
  const now = forecast(notebook)
  if (now === undefined) return []
  return reached(notebook, marked, now.beforeCaps, now.beforeCaps).map((cap) => ({
    ...cap,
    items: now.items.filter((item) => item[cap.household] > 0n).map(({ id }) => id),
  }))
}

/**
 * The caps that are reached, or would be once `amount` more is spent on an item, and by how much. Spending what the plan
 * has for the item raises nothing; what goes beyond it is asked of the households as the item is shared. Only caps of
 * households that bear a part of the item.
 *
 * @param amount minor units, zero or more
 * @param marked who has marked the caps as they stand; in what was signed, both
 */
export function capReached(
  notebook: Notebook,
  itemId: string,
  amount: Minor,
  marked: ForBoth<boolean>,
): readonly ReachedCap[] {
  const now = forecast(notebook)
  const then = forecast(notebook, { item: itemId, amount }) ?? now
  const item = then?.items.find(({ id }) => id === itemId)
  if (now === undefined || then === undefined || item === undefined) return []
  return reached(notebook, marked, now.beforeCaps, then.beforeCaps).filter(
    ({ household }) => item[household] > 0n,
  )
}

function reached(
  notebook: Notebook,
  marked: ForBoth<boolean>,
  asked: ForBoth<Minor>,
  then: ForBoth<Minor>,
): readonly ReachedCap[] {
  const planned = plannedStatement({ ...notebook, caps: {} })
  return households.flatMap((household) => {
    const typed = notebook.caps[household]
    if (typed === undefined) return []
    const cap = minorUnits(typed, digitsOf(notebook))
    if (then[household] < cap) return []
    const above = (amount: Minor) => (amount > cap ? amount - cap : 0n)
    const agreed =
      planned.ok && marked[otherHousehold(household)] ? above(planned.value.beforeCaps[household]) : 0n
    const over = above(then[household])
    return [
      {
        household,
        cap,
        asked: asked[household],
        afterwards: then[household],
        over,
        agreed,
        pauses: over > agreed,
      },
    ]
  })
}

/** What the fence comes to where every item costs at least what was spent on it, and `more` goes onto one of them. */
function forecast(
  notebook: Notebook,
  more?: { readonly item: string; readonly amount: Minor },
): Statement | undefined {
  const digits = digitsOf(notebook)
  // Without caps: two that fall short of the total must not hide that they are reached.
  const statement = statementOf({ ...notebook, caps: {} })
  if (!statement.ok) return undefined
  const spent = spentByItem(notebook, digits)
  const raises = new Map<string, Minor>()
  for (const { id, total } of statement.value.items) {
    const spending = (spent.get(id) ?? 0n) + (more?.item === id ? more.amount : 0n)
    if (spending > total) raises.set(id, spending - total)
  }
  if (raises.size === 0) return statement.value
  const raised = statementOf({ ...withRaises(notebook, raises, digits), caps: {} })
  return raised.ok ? raised.value : undefined
}

/** What was spent on each item so far: money, goods and hours, less what came back. */
function spentByItem(notebook: Notebook, digits: number): ReadonlyMap<string, Minor> {
  const spent = new Map<string, Minor>()
  const add = (item: string, amount: Minor) => spent.set(item, (spent.get(item) ?? 0n) + amount)
  for (const entry of notebook.contributions) {
    if (entry.kind === 'transfer') continue
    const sign = entry.kind === 'refund' ? -1n : 1n
    let left = contributionAmount(entry, digits)
    for (const line of entry.lines) {
      const amount = lesser(minorUnits(line.amount, digits), left)
      left -= amount
      add(line.item, sign * amount)
    }
    if (entry.for !== '') add(entry.for, sign * left)
  }
  return spent
}

/** Each item with one more line, of what it comes dearer. */
function withRaises(notebook: Notebook, raises: ReadonlyMap<string, Minor>, digits: number): Notebook {
  const raised = <Item extends { readonly id: string; readonly materials: readonly CostLine[] }>(
    item: Item,
  ): Item => {
    const raise = raises.get(item.id)
    return raise === undefined
      ? item
      : { ...item, materials: [...item.materials, lineOf(moneyText(raise, digits))] }
  }
  return {
    ...notebook,
    sections: notebook.sections.map(raised),
    gates: notebook.gates.map(raised),
    common: notebook.common.map(raised),
  }
}

function lineOf(unitPrice: string): CostLine {
  return {
    what: '',
    quantity: '1',
    unit: '',
    unitPrice,
    taxPercent: '0',
    suppliedBy: 'bought',
    credit: false,
    from: '',
    changed: false,
  }
}
