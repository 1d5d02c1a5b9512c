import { type Capacity, capacities } from '../../core/agreement/notebook.ts'
import { currencyDigits } from '../../core/amounts/currency.ts'
import { minorUnits } from '../../core/amounts/money.ts'
import {
  accountParties,
  type FinalAccount,
  type WayOfGiving,
  waysOfGiving,
} from '../../core/ledger/finalAccount.ts'
import { spendingOfAccount } from '../../core/ledger/spentByDay.ts'
import { type ForBoth, type Household, households, otherHousehold } from '../../core/people/household.ts'
import { dayWords, momentWords } from '../day.ts'
import { spendingSteps } from '../figures/spendingSteps.ts'
import { itemTitle } from '../itemWords.ts'
import { capacityWords } from '../labels.ts'
import { moneyWords } from '../money.ts'
import type { Block, SignatureBlock } from '../summary/block.ts'
import { figureBlocks } from '../summary/figureBlocks.ts'
import { capitalised } from '../summary/names.ts'
import { unbroken } from '../summary/unbroken.ts'
import { accountNames } from './accountText.ts'

/** A signature as far as it is printed. */
export type ShownSignature = {
  readonly household: Household
  readonly partyIndex: number
  readonly typedName: string
  readonly intent: string
  readonly drawing?: string
  readonly sha256: string
  readonly signedAt: Date
}

/** The whole account in words and tables, for the screen and for paper alike. */
export function accountBlocks(account: FinalAccount): Block[] {
  const names = accountNames(account)
  const money = moneyIn(account)
  const both = ({ a, b }: ForBoth<string>) => [money(a), money(b)]
  const { asked, total, items, givenInAll, balance, revision } = account
  return [
    {
      kind: 'paragraph',
      text: `This account settles what ${names.a} and ${names.b} agreed about the fence between them in revision ${revision.number}. Amounts are in ${account.currency}.`,
    },
    {
      kind: 'table',
      caption: 'What was planned, what it came to, and what was asked of each',
      columns: [
        { title: 'Item' },
        { title: 'Planned', figure: true },
        { title: 'Came to', figure: true },
        { title: `Of ${names.a}`, figure: true },
        { title: `Of ${names.b}`, figure: true },
      ],
      rows: items.map(({ id, kind, name, planned, actual, asked: share }) => ({
        cells: [itemTitle({ kind, name, key: `item:${id}` }), money(planned), money(actual), ...both(share)],
      })),
      foot: ['In all', money(total.planned), money(total.actual), ...both(asked)],
    },
    ...capWords(account),
    ...spendingBlocks(account),
    {
      kind: 'table',
      caption: 'What each household gave',
      columns: [
        { title: 'In what way' },
        ...households.map((household) => ({ title: capitalised(names[household]), figure: true })),
      ],
      rows: waysOfGiving
        .filter((way) => households.some((household) => !isNothing(account.given[way][household])))
        .map((way) => ({ cells: [wayWords[way], ...both(account.given[way])] })),
      foot: ['Given in all', ...both(givenInAll)],
    },
    ...paymentBlocks(account),
    {
      kind: 'table',
      caption: 'The balance',
      columns: [
        { title: '' },
        ...households.map((household) => ({ title: capitalised(names[household]), figure: true })),
      ],
      rows: [{ cells: ['Asked for', ...both(asked)] }, { cells: ['Given', ...both(givenInAll)] }],
      foot: ['Still to give', ...both(balance)],
    },
    {
      kind: 'paragraph',
      text: 'Each household has given what it was asked for. Neither owes the other anything for this fence.',
    },
  ]
}

/** A place for every party's signature. A signature counts only for the text that it was given for. */
export function accountSignatureBlocks(
  account: FinalAccount,
  sha256: string,
  signatures: readonly ShownSignature[],
): SignatureBlock[] {
  const names = accountNames(account)
  return accountParties(account).map(({ household, partyIndex, name, capacity }) => {
    const given = signatures.find(
      (one) => one.household === household && one.partyIndex === partyIndex && one.sha256 === sha256,
    )
    const known = capacities.find((one): one is Capacity => one === capacity)
    return {
      kind: 'signature',
      household,
      householdName: capitalised(names[household]),
      party: name.trim() || 'Not named',
      capacity: known === undefined ? capacity : capacityWords[known],
      state:
        given === undefined
          ? { kind: 'not signed yet', text: 'Not signed yet.' }
          : {
              kind: 'signed',
              typedName: given.typedName,
              intent: given.intent,
              when: momentWords(given.signedAt),
              ...(given.drawing ? { drawing: given.drawing } : {}),
            },
    }
  })
}

const wayWords: Readonly<Record<WayOfGiving, string>> = {
  money: 'Money paid to suppliers',
  goods: 'Goods in kind',
  hours: 'Hours worked, in money',
  gotBack: 'Money received back',
  keeps: 'Things that it keeps or sold',
  payments: 'Payments between the two',
}

/** What was spent, day by day, from the entries that the account was made of; one day alone is no figure on paper. */
function spendingBlocks(account: FinalAccount): Block[] {
  const digits = currencyDigits(account.currency) ?? 2
  const names = { ...accountNames(account), currency: account.currency }
  const planned = minorUnits(account.total.planned, digits)
  const shown = spendingSteps(spendingOfAccount(account, digits), planned, names)
  return shown === undefined || shown.days.length < 2 ? [] : figureBlocks(shown)
}

function paymentBlocks(account: FinalAccount): Block[] {
  const names = accountNames(account)
  const money = moneyIn(account)
  if (account.payments.length === 0)
    return [{ kind: 'paragraph', text: 'No payment was made between the two households.' }]
  return [
    {
      kind: 'table',
      caption: 'Payments between the two, confirmed by whoever received them',
      columns: [
        { title: 'Day' },
        { title: 'From' },
        { title: 'To' },
        { title: 'By what means' },
        { title: 'Amount', figure: true },
      ],
      rows: account.payments.map(({ from, amount, date, means }) => ({
        cells: [
          unbroken(dayWords(date)),
          names[from],
          names[otherHousehold(from)],
          means.trim() || 'not said',
          money(amount),
        ],
      })),
    },
  ]
}

/** Where a cap moved something, the items do not add to what was asked. */
function capWords(account: FinalAccount): Block[] {
  const digits = currencyDigits(account.currency) ?? 2
  const sum = account.items.reduce((total, { asked }) => total + minorUnits(asked.a, digits), 0n)
  if (sum === minorUnits(account.asked.a, digits)) return []
  return [
    {
      kind: 'paragraph',
      text: 'What was asked in all differs from the sum of the items, since the caps that both agreed on moved a part of it from one household to the other.',
    },
  ]
}

function moneyIn({ currency }: FinalAccount): (typed: string) => string {
  const digits = currencyDigits(currency) ?? 2
  return (typed) => moneyWords(minorUnits(typed, digits), currency)
}

function isNothing(typed: string): boolean {
  return /^[0.]*$/.test(typed)
}
