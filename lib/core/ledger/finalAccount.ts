import { canonicalText } from '../agreement/canonicalText.ts'
import type { ContributionKind, ItemKind, Notebook } from '../agreement/notebook.ts'
import type { PartyPlace } from '../agreement/revision.ts'
import { type Minor, moneyText } from '../amounts/money.ts'
import { assert } from '../assert.ts'
import { type ForBoth, type Household, households, otherHousehold } from '../people/household.ts'
import type { Statement } from '../shares/statement.ts'
import { contributionAmount } from './contributed.ts'
import { plannedAgainstActual } from './plannedAgainstActual.ts'
import { countedThings } from './things.ts'
import { transfersThatCount } from './transfers.ts'

/**
 * The last account as it is frozen and signed: what each item was planned at and came to, what each household was asked
 * for and gave. Money as the file writes it, so that the text reads by itself.
 */
export type FinalAccount = {
  readonly format: 'mearing-final-account'
  readonly version: 1
  readonly title: string
  readonly currency: string
  /** The agreement that it settles. */
  readonly revision: { readonly number: number; readonly sha256: string }
  readonly households: ForBoth<{
    readonly name: string
    readonly parties: readonly { readonly name: string; readonly capacity: string }[]
  }>
  readonly items: readonly {
    readonly id: string
    readonly kind: ItemKind
    readonly name: string
    readonly planned: string
    readonly actual: string
    readonly asked: ForBoth<string>
  }[]
  readonly total: { readonly planned: string; readonly actual: string }
  /** After caps. */
  readonly asked: ForBoth<string>
  readonly given: { readonly [Way in WayOfGiving]: ForBoth<string> }
  readonly givenInAll: ForBoth<string>
  /** Asked less given: nothing. */
  readonly balance: ForBoth<string>
  readonly payments: readonly {
    readonly from: Household
    readonly amount: string
    readonly date: string
    readonly means: string
  }[]
  /** Every entry that counts, so that whoever doubts a sum can redo it. */
  readonly entries: readonly {
    readonly household: Household
    readonly kind: ContributionKind
    readonly amount: string
    readonly date: string
    readonly for: string
    readonly note: string
  }[]
}

/** In what way a household gave; what it got back, and what it keeps, are below zero. */
export const waysOfGiving = ['money', 'goods', 'hours', 'gotBack', 'keeps', 'payments'] as const
export type WayOfGiving = (typeof waysOfGiving)[number]

const wayOf = {
  cash: 'money',
  material: 'goods',
  hours: 'hours',
  refund: 'gotBack',
  transfer: 'payments',
} as const satisfies Readonly<Record<ContributionKind, WayOfGiving>>

/** The final account of books in which nothing is open. */
export function finalAccountOf(
  notebook: Notebook,
  statement: Statement,
  revision: FinalAccount['revision'],
): FinalAccount {
  const { digits, asked, balance, contributed, items: shares } = statement
  const money = (minor: Minor) => moneyText(minor, digits)
  const moneyOfBoth = ({ a, b }: ForBoth<Minor>) => ({ a: money(a), b: money(b) })
  const { items } = plannedAgainstActual(notebook, digits)
  const sum = (key: 'planned' | 'counts') => items.reduce((total, item) => total + item[key], 0n)
  const given = givenByWay(notebook, digits)
  const inAll = households.map((household) =>
    waysOfGiving.reduce((total, way) => total + given[way][household], 0n),
  )
  assert(inAll[0] === contributed.a && inAll[1] === contributed.b, 'the ways of giving make what was given')
  return {
    format: 'mearing-final-account',
    version: 1,
    title: notebook.title,
    currency: notebook.currency,
    revision,
    households: { a: householdIn(notebook, 'a'), b: householdIn(notebook, 'b') },
    items: items.map(({ id, kind, name, planned, counts }) => {
      const share = shares.find((one) => one.id === id)
      assert(share !== undefined, 'every item of the books is shared')
      return { id, kind, name, planned: money(planned), actual: money(counts), asked: moneyOfBoth(share) }
    }),
    total: { planned: money(sum('planned')), actual: money(sum('counts')) },
    asked: moneyOfBoth(asked),
    given: {
      money: moneyOfBoth(given.money),
      goods: moneyOfBoth(given.goods),
      hours: moneyOfBoth(given.hours),
      gotBack: moneyOfBoth(given.gotBack),
      keeps: moneyOfBoth(given.keeps),
      payments: moneyOfBoth(given.payments),
    },
    givenInAll: moneyOfBoth(contributed),
    balance: moneyOfBoth(balance),
    payments: transfersThatCount(notebook, digits).map(({ from, amount, date, means }) => ({
      from,
      amount: money(amount),
      date,
      means,
    })),
    entries: notebook.contributions
      .map((entry) => ({ entry, amount: contributionAmount(entry, digits) }))
      .filter(({ amount }) => amount !== 0n)
      .map(({ entry, amount }) => ({
        household: entry.household,
        kind: entry.kind,
        amount: money(amount),
        date: entry.date,
        for: entry.for,
        note: entry.note,
      })),
  }
}

function householdIn(notebook: Notebook, household: Household) {
  const { name, parties } = notebook.households[household]
  return { name, parties: parties.map(({ name: party, capacity }) => ({ name: party, capacity })) }
}

function givenByWay(notebook: Notebook, digits: number): { readonly [Way in WayOfGiving]: ForBoth<Minor> } {
  const nothing = () => ({ a: 0n, b: 0n })
  const given = {
    money: nothing(),
    goods: nothing(),
    hours: nothing(),
    gotBack: nothing(),
    keeps: nothing(),
    payments: nothing(),
  }
  for (const entry of notebook.contributions) {
    const amount = contributionAmount(entry, digits)
    given[wayOf[entry.kind]][entry.household] += entry.kind === 'refund' ? -amount : amount
    if (entry.kind === 'transfer') given.payments[otherHousehold(entry.household)] -= amount
  }
  for (const { household, value } of countedThings(notebook, digits)) given.keeps[household] -= value
  return given
}

/** An account as it was frozen. Only for texts that this program froze. */
export function readFinalAccount(frozen: string): FinalAccount {
  const account = JSON.parse(frozen) as FinalAccount
  assert(account.format === 'mearing-final-account' && account.version === 1, 'a final account was frozen')
  return account
}

/**
 * Whether two accounts say the same of money and of who signs. Which revision they settle is left out: an amendment that
 * moves no figure, such as the closing, leaves a signed account as it is.
 */
export function saysTheSame(one: FinalAccount, other: FinalAccount): boolean {
  const figures = ({ revision: _settled, ...rest }: FinalAccount) => canonicalText(rest)
  return figures(one) === figures(other)
}

/** Every party that has to sign the account, household a first. */
export function accountParties({ households: both }: FinalAccount): readonly PartyPlace[] {
  return households.flatMap((household) =>
    both[household].parties.map(({ name, capacity }, partyIndex) => ({
      household,
      partyIndex,
      name,
      capacity,
    })),
  )
}
