import type { Notebook } from '../agreement/notebook.ts'
import { currencyDigits } from '../amounts/currency.ts'
import type { Minor } from '../amounts/money.ts'
import { assert } from '../assert.ts'
import type { Fault } from '../faults.ts'
import { asBuilt } from '../ledger/asBuilt.ts'
import { contributed } from '../ledger/contributed.ts'
import { type Evening, eveningPayment } from '../ledger/evening.ts'
import type { ForBoth } from '../people/household.ts'
import { held, type Result, refused } from '../result.ts'
import { applyCaps, type Capped } from './caps.ts'
import {
  type AskedSoFar,
  type ItemShares,
  type LayingAt,
  nothingAsked,
  placesOf,
  shareItem,
} from './itemShares.ts'
import { type Laying, layingOn, type SpreadTarget } from './spread.ts'
import { spreadTarget } from './spreadTargets.ts'

/** Everything the notebook's figures come to. Money in minor units of `currency`, which has `digits` after the point. */
export type Statement = {
  readonly currency: string
  readonly digits: number
  readonly items: readonly ItemShares[]
  readonly beforeCaps: ForBoth<Minor>
  readonly total: Minor
  /** After caps. */
  readonly asked: Capped
  /** Planned in kind and counted labour, priced. */
  readonly promised: ForBoth<Minor>
  /** Asked less promised: what each brings in money if all goes as planned. */
  readonly inMoney: ForBoth<Minor>
  readonly contributed: ForBoth<Minor>
  /** Asked less contributed; positive is still to give. */
  readonly balance: ForBoth<Minor>
  /** Asked total less contributed total: bills nobody has met yet. */
  readonly outstanding: Minor
  readonly transfer: Evening | undefined
}

/** The items that can be shared, and the faults of those that cannot yet. */
export type SharedItems = { readonly items: readonly ItemShares[]; readonly faults: readonly Fault[] }

/** Shares every item in file order; an item at fault is left out and asks nobody for anything. */
export function shareItems(notebook: Notebook): SharedItems {
  const { items, faults } = shareAll(
    notebook,
    notebook.common.some(({ spread }) => spread !== ''),
  )
  return { items, faults }
}

/** What a common cost of this notebook is laid on, for trying one that stands by itself. */
export function layingIn(notebook: Notebook): LayingAt {
  return shareAll({ ...notebook, common: [] }, true).laying
}

function shareAll(notebook: Notebook, spreads: boolean): SharedItems & { readonly laying: LayingAt } {
  const digits = digitsOf(notebook)
  const items: ItemShares[] = []
  const faults: Fault[] = []
  let asked: AskedSoFar = nothingAsked
  const targets: SpreadTarget[] = []
  const unshared: string[] = []
  const laying = layingOnce(targets, unshared)
  for (const place of placesOf(notebook)) {
    const shared = shareItem(place, digits, asked, laying)
    if (!shared.ok) {
      faults.push(...shared.faults)
      if (place.kind !== 'common') unshared.push(place.item.name.trim() || place.item.id)
      continue
    }
    const item = shared.value
    items.push(item)
    const target = spreads ? spreadTarget(place, item, digits) : undefined
    if (target) targets.push(target)
    asked = {
      money: { a: asked.money.a + item.a, b: asked.money.b + item.b },
      hours: { a: asked.hours.a + item.hours.a, b: asked.hours.b + item.hours.b },
    }
  }
  return { items, faults, laying }
}

/** Common costs come last in the file, so by then every section and gate has been shared, or can't be. */
function layingOnce(targets: readonly SpreadTarget[], unshared: readonly string[]): LayingAt {
  let once: Laying | undefined
  return (path) => {
    if (unshared.length > 0) return refused({ path, kind: 'spread-waits', on: unshared })
    if (targets.length === 0) return refused({ path, kind: 'spread-nowhere' })
    once ??= layingOn(targets)
    return held(once)
  }
}

/**
 * The statement of a notebook whose file holds, with the actual figures of what both marked in the books. Refused, with
 * every fault, where a share cannot be worked out (weights of zero, a saving that is none, a pot below zero) or two caps
 * fall short.
 */
export function statementOf(notebook: Notebook): Result<Statement> {
  const digits = digitsOf(notebook)
  const built = asBuilt(notebook, digits)
  const { items, faults } = shareItems(built.notebook)
  if (faults.length > 0) return refused(...faults)
  const beforeCaps = sumForBoth(items)
  const capped = applyCaps(beforeCaps, notebook.caps, digits)
  if (!capped.ok) return capped
  const asked = capped.value
  const promised = sumForBoth(items.map((item) => item.promised))
  const given = contributed(notebook.contributions, digits, built.things)
  const balance = subtract(asked, given)
  const total = beforeCaps.a + beforeCaps.b
  return held({
    currency: notebook.currency,
    digits,
    items,
    beforeCaps,
    total,
    asked,
    promised,
    inMoney: subtract(asked, promised),
    contributed: given,
    balance,
    outstanding: total - given.a - given.b,
    transfer: eveningPayment(balance),
  })
}

/**
 * The statement of the plan alone, as it is agreed and signed: whatever was marked as bought, or valued, in the books
 * moves no figure in it.
 */
export function plannedStatement(notebook: Notebook): Result<Statement> {
  return statementOf({ ...notebook, books: { ...notebook.books, bought: [], things: [] } })
}

/** Digits after the point of the notebook's currency. */
export function digitsOf(notebook: { readonly currency: string }): number {
  const digits = currencyDigits(notebook.currency)
  assert(digits !== undefined, 'a notebook that was read has a currency in use')
  return digits
}

function sumForBoth(amounts: readonly ForBoth<Minor>[]): ForBoth<Minor> {
  return amounts.reduce((sum, amount) => ({ a: sum.a + amount.a, b: sum.b + amount.b }), { a: 0n, b: 0n })
}

function subtract(left: ForBoth<Minor>, right: ForBoth<Minor>): ForBoth<Minor> {
  return { a: left.a - right.a, b: left.b - right.b }
}
