import { hoursText } from '../amounts/hours.ts'
import { moneyText } from '../amounts/money.ts'
import type { ForBoth, Household } from '../people/household.ts'
import type { ItemShares } from './itemShares.ts'
import type { Statement } from './statement.ts'

type PotFigures = { total: string; a: string; b: string }
type HoursFigures = { hours: string; hoursA: string; hoursB: string; giftHours: { a: string; b: string } }

/** What `npm run -s statement -- FILE` prints, key for key as the file format lays it down. */
export type StatementFile = {
  currency: string
  items: {
    id: string
    kind: ItemShares['kind']
    materials: PotFigures | { total: string }
    labour: (PotFigures | { total: string }) & HoursFigures
    together?: PotFigures
  }[]
  beforeCaps: PotFigures
  asked: PotFigures
  promised: { a: string; b: string }
  inMoney: { a: string; b: string }
  contributed: { a: string; b: string }
  balance: { a: string; b: string }
  outstanding: string
  transfer: { from: Household; to: Household; amount: string } | null
}

export function statementFile(statement: Statement): StatementFile {
  const money = (minor: bigint) => moneyText(minor, statement.digits)
  const both = (amounts: ForBoth<bigint>) => ({ a: money(amounts.a), b: money(amounts.b) })
  const pot = (amounts: ForBoth<bigint> & { readonly total: bigint }) => ({
    total: money(amounts.total),
    ...both(amounts),
  })
  return {
    currency: statement.currency,
    items: statement.items.map((item) => itemFigures(item, money, pot)),
    beforeCaps: pot({ ...statement.beforeCaps, total: statement.total }),
    asked: pot({ ...statement.asked, total: statement.total }),
    promised: both(statement.promised),
    inMoney: both(statement.inMoney),
    contributed: both(statement.contributed),
    balance: both(statement.balance),
    outstanding: money(statement.outstanding),
    transfer: statement.transfer ? { ...statement.transfer, amount: money(statement.transfer.amount) } : null,
  }
}

function itemFigures(
  item: ItemShares,
  money: (minor: bigint) => string,
  pot: (amounts: ForBoth<bigint> & { readonly total: bigint }) => PotFigures,
): StatementFile['items'][number] {
  const hours = {
    hours: hoursText(item.hours.hours),
    hoursA: hoursText(item.hours.a),
    hoursB: hoursText(item.hours.b),
    giftHours: { a: hoursText(item.hours.gifts.a), b: hoursText(item.hours.gifts.b) },
  }
  const head = { id: item.id, kind: item.kind }
  if (item.pots.form === 'together') {
    return {
      ...head,
      materials: { total: money(item.materialsTotal) },
      labour: { total: money(item.labourTotal), ...hours },
      together: pot(item.pots.together),
    }
  }
  return { ...head, materials: pot(item.pots.materials), labour: { ...pot(item.pots.labour), ...hours } }
}
