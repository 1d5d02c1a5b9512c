import { describe, expect, test } from 'vitest'
import { canonicalText } from '../../../lib/core/agreement/canonicalText.ts'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import {
  accountParties,
  finalAccountOf,
  readFinalAccount,
  saysTheSame,
} from '../../../lib/core/ledger/finalAccount.ts'
import { openForAccount } from '../../../lib/core/ledger/openForAccount.ts'
import { beyondTolerance } from '../../../lib/core/ledger/tolerance.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { bothMarked, settledDocument } from './settledBooks.ts'

type Entry = Record<string, unknown>
type Settled = { contributions: Entry[]; books: { bought: Entry[]; things?: Entry[]; conversions?: Entry[] } }

function settled(change: (document: Settled) => Entry = () => ({})): Notebook {
  const read = readDocument(settledDocument(change(settledDocument() as unknown as Settled)))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.value.notebook
}

const open = (notebook: Notebook, signed = true) =>
  openForAccount(notebook, 2, {
    signed,
    statement: statementOf(notebook),
    beyond: beyondTolerance(notebook, 2, notebook.arrangements),
  })
const kinds = (change: (document: Settled) => Entry) => open(settled(change)).map(({ kind }) => kind)

describe('what is open before the final account', () => {
  test('is nothing where every line is marked, every payment confirmed and nothing owed', () => {
    expect(open(settled())).toEqual([])
  })

  test('is a line that was bought and that only one household has marked', () => {
    const found = open(
      settled(({ books }) => ({
        books: { bought: books.bought.map((one) => ({ ...one, marks: { a: bothMarked.a } })) },
      })),
    )
    expect(found.filter(({ kind }) => kind === 'lines')).toMatchObject([
      { item: { id: 's1' }, lines: ['wire', 'posts'] },
      { item: { id: 'g1' }, lines: ['hinge'] },
    ])
  })

  test('is a line that has come to another amount since both marked it, whoever has marked that already', () => {
    const more = {
      household: 'a',
      kind: 'cash',
      amount: '6.00',
      date: '2027-05-21',
      for: 's1',
      lines: [{ item: 's1', pot: 'materials', what: 'wire', place: '1', amount: '6.00' }],
    }
    const wire = { item: 's1', pot: 'materials', what: 'wire', place: '1', amount: '110.00' }
    for (const half of [[], [{ ...wire, marks: { a: bothMarked.a } }]]) {
      const found = open(
        settled(({ contributions, books }) => ({
          contributions: [...contributions, more],
          books: { bought: [...books.bought, ...half] },
        })),
      )
      expect(found).toMatchObject([
        {
          kind: 'line moved',
          moved: {
            line: { what: 'wire' },
            held: 10400n,
            actual: 11000n,
            markedBy: half.length === 0 ? [] : ['a'],
          },
        },
        { kind: 'outstanding', amount: -600n },
      ])
    }
  })

  test.each([
    ['changed it', { value: '2.00' }, 'changed since both marked it'],
    [
      'changed it to nothing that has a value',
      { kind: 'borrowed', returned: '2027-05-21' },
      'changed since both marked it',
    ],
    [
      'took it off the list',
      { off: { on: '2027-05-21', by: 'a' }, marks: { a: bothMarked.a } },
      'taken off by one',
    ],
  ])('is a thing that both marked, after one household %s', (_case, change, why) => {
    const thing = { kind: 'tool', what: 'pliers', item: 's1', household: 'a', value: '5.00' }
    const changed = { ...thing, ...change, agreed: { ...thing, marks: bothMarked } }
    expect(open(settled(({ books }) => ({ books: { ...books, things: [changed] } })))).toContainEqual({
      kind: 'thing',
      what: 'pliers',
      why,
    })
  })

  test('is nothing of a thing that is off the list', () => {
    const thing = { kind: 'borrowed', what: 'auger', off: { on: '2027-05-21', by: 'a' } }
    expect(kinds(({ books }) => ({ books: { ...books, things: [thing] } }))).toEqual([])
  })

  test('is a line of which nothing was bought, until both marked that it was not needed', () => {
    expect(kinds(({ books }) => ({ books: { bought: books.bought.slice(0, 2) } }))).toContain('lines')
  })

  test('is a payment that its receiver has not confirmed, and then what it would have settled', () => {
    const waits = ({ contributions: [first, second] }: Settled) => {
      const { confirmed: _not, ...payment } = second ?? {}
      return { contributions: [first, { ...payment, waits: true }] }
    }
    expect(open(settled(waits))).toMatchObject([
      { kind: 'payment waits', transfer: { from: 'b', to: 'a', amount: 15200n } },
      { kind: 'owed', evening: { from: 'b', to: 'a', amount: 15200n } },
    ])
  })

  test.each([
    ['a borrowed tool that was not brought back', { kind: 'borrowed', what: 'auger' }, 'not brought back'],
    [
      'a hired tool that was not brought back',
      { kind: 'hired', what: 'mixer', due: '2027-05-01' },
      'not brought back',
    ],
    ['a leftover that nobody keeps', { kind: 'leftover', what: 'wire' }, 'nobody keeps it'],
    [
      'a tool whose value one household has marked',
      { kind: 'tool', what: 'pliers', item: 's1', household: 'a', value: '5.00', marks: { a: bothMarked.a } },
      'not marked by both',
    ],
  ])('is %s', (_name, thing, why) => {
    const found = open(settled(({ books }) => ({ books: { ...books, things: [thing] } })))
    expect(found).toEqual([{ kind: 'thing', what: thing.what, why }])
  })

  test.each([
    ['a borrowed tool that went back', { kind: 'borrowed', what: 'auger', returned: '2027-05-09' }],
    ['a leftover of no value that somebody keeps', { kind: 'leftover', what: 'wire', household: 'b' }],
  ])('is nothing of %s', (_name, thing) => {
    expect(kinds(({ books }) => ({ books: { ...books, things: [thing] } }))).toEqual([])
  })

  test('is an exchange of hours and money that one household has not marked', () => {
    const conversion = {
      household: 'a',
      to: 'money',
      item: 's1',
      hours: '1',
      rate: '20',
      on: '2027-05-01',
      marks: { a: bothMarked.a },
    }
    expect(kinds(({ books }) => ({ books: { ...books, conversions: [conversion] } }))).toEqual([
      'conversion waits',
    ])
  })

  test('is money that was given and is on no line', () => {
    const found = open(
      settled(({ contributions }) => ({
        contributions: [
          ...contributions,
          { household: 'a', kind: 'cash', amount: '9.00', date: '2027-05-04' },
        ],
      })),
    )
    expect(found).toEqual([{ kind: 'outstanding', amount: -900n }])
  })

  test('is an item beyond the tolerance that not both have marked anew', () => {
    const notebook = settled(() => ({ arrangements: { tolerance: '1' } }))
    expect(open(notebook)).toMatchObject([
      { kind: 'beyond tolerance', item: { id: 's1', planned: 30000n, actual: 30400n, allowed: 30300n } },
    ])
  })

  test('is everything while nothing is signed', () => {
    expect(open(settled(), false)).toEqual([{ kind: 'nothing signed' }])
  })
})

describe('the final account', () => {
  const accountOf = (notebook: Notebook, revision = { number: 1, sha256: 'f'.repeat(64) }) => {
    const statement = statementOf(notebook)
    if (!statement.ok) throw new Error('shared')
    return finalAccountOf(notebook, statement.value, revision)
  }

  test('says what was planned, what it came to, what was asked and given, as worked out by hand', () => {
    const account = accountOf(settled())
    expect(account.items).toEqual([
      {
        id: 's1',
        kind: 'section',
        name: 'Along the gardens',
        planned: '300.00',
        actual: '304.00',
        asked: { a: '152.00', b: '152.00' },
      },
      {
        id: 'g1',
        kind: 'gate',
        name: 'Garden gate',
        planned: '20.00',
        actual: '0.00',
        asked: { a: '0.00', b: '0.00' },
      },
    ])
    expect(account.total).toEqual({ planned: '320.00', actual: '304.00' })
    expect(account.given.money).toEqual({ a: '304.00', b: '0.00' })
    expect(account.given.payments).toEqual({ a: '-152.00', b: '152.00' })
    expect(account.givenInAll).toEqual({ a: '152.00', b: '152.00' })
    expect(account.balance).toEqual({ a: '0.00', b: '0.00' })
    expect(account.payments).toEqual([{ from: 'b', amount: '152.00', date: '2027-05-18', means: 'by bank' }])
  })

  test('is read back from its text as it was', () => {
    const account = accountOf(settled())
    expect(readFinalAccount(canonicalText(account))).toEqual(account)
    expect(() => readFinalAccount('{"format":"mearing-notebook","version":1}')).toThrow()
  })

  test('is another one after any later entry in the books, and the same after an amendment that moves no figure', () => {
    const account = accountOf(settled())
    const later = accountOf(
      settled(({ contributions }) => ({
        contributions: [
          ...contributions,
          { household: 'a', kind: 'cash', amount: '5.00', date: '2027-06-01' },
          { household: 'a', kind: 'refund', amount: '5.00', date: '2027-06-02' },
        ],
      })),
    )
    expect(saysTheSame(account, later)).toBe(false)
    expect(saysTheSame(account, accountOf(settled(), { number: 2, sha256: 'e'.repeat(64) }))).toBe(true)
  })

  test('is signed by every party of both households', () => {
    expect(accountParties(accountOf(settled()))).toEqual([
      { household: 'a', partyIndex: 0, name: 'Marnie Oakshott', capacity: 'owner' },
      { household: 'b', partyIndex: 0, name: 'Ines Vandermolen', capacity: 'owner' },
    ])
  })
})
