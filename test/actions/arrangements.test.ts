import { beforeEach, describe, expect, test, vi } from 'vitest'
import { hasMoreInstalment, withMoreInstalment } from '../../app/notebook/forms/moreInstalment.ts'
import {
  beginArrangements,
  removeArrangements,
  saveArrangements,
} from '../../app/notebook/server/arrangementActions.ts'
import { instalmentsNow, moreInstalment } from '../../app/notebook/server/instalmentsNow.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { settledDocument } from '../core/ledger/settledBooks.ts'
import { everyTable } from './everyTable.ts'
import { settledBooks } from './givenAccount.ts'
import { openedPart, tomorrow } from './givenForms.ts'
import { putArrangements } from './givenHours.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()
beforeEach(() => browseAs(world(), 'b'))

async function save(arrangements: object, more: object = {}) {
  const { id } = world().notebook
  const { base } = await openedPart(id, { part: 'arrangements' })
  return outcomeOf(() => saveArrangements(id, base, { arrangements, ...more }))
}

const faults = (...expected: [string, RegExp][]) => ({
  kind: 'answer',
  answer: { faults: expected.map(([path, message]) => ({ path, message: expect.stringMatching(message) })) },
})
const saved = { kind: 'answer', answer: expect.objectContaining({ saved: true }) }
const parts = (...given: [string, string][]) => given.map(([on, amount]) => ({ on, amount }))

/** What household b brings in money as planned: asked for, less its goods and hours. */
async function bringsInMoney(): Promise<string> {
  const read = readDocument(await documentOf(world().notebook.id))
  const statement = read.ok ? statementOf(read.value.notebook) : read
  if (!statement.ok) throw new Error('the example holds')
  const cents = statement.value.inMoney.b.toString()
  return `${cents.slice(0, -2)}.${cents.slice(-2)}`
}

describe('rates, tolerance and instalments', () => {
  test('are begun with one press, from which on both have to mark them, and taken out whole again', async () => {
    const { id } = world().notebook
    await putArrangements(id, undefined)
    await outcomeOf(() => beginArrangements(id, {}, new FormData()))
    expect(await documentOf(id)).toHaveProperty('arrangements', {})
    await markEverything(id)
    expect((await marksOf(id)).filter(({ itemKey }) => itemKey === 'arrangements')).toHaveLength(2)
    const { base } = await openedPart(id, { part: 'arrangements' })
    await outcomeOf(() => removeArrangements(id, base))
    expect(await documentOf(id)).not.toHaveProperty('arrangements')
    expect((await marksOf(id)).filter(({ itemKey }) => itemKey === 'arrangements')).toEqual([])
  })

  test('lose both marks when they are changed, and keep them when nothing is', async () => {
    const { id } = world().notebook
    await markEverything(id)
    const marks = async () => (await marksOf(id)).filter(({ itemKey }) => itemKey === 'arrangements').length
    const { draft } = await openedPart<{ arrangements: object }>(id, { part: 'arrangements' })
    expect(await save(draft.arrangements)).toEqual(saved)
    expect(await marks()).toBe(2)
    expect(await save({ ...draft.arrangements, tolerance: '15' })).toEqual(saved)
    expect(await marks()).toBe(0)
  })

  test.each<[string, object, [string, RegExp]]>([
    ['a tolerance above 100', { tolerance: '101' }, ['arrangements.tolerance', /between 0 and 100/]],
    ['a tolerance below 0', { tolerance: '-1' }, ['arrangements.tolerance', /without the minus/]],
    [
      'a rate that is no figure',
      { rates: { plain: { rate: 'twenty' } } },
      ['arrangements.rates.plain.rate', /as a number/],
    ],
    [
      'a quote on a day that is none',
      { rates: { skilled: { rate: '30', on: '2027-02-30' } } },
      ['arrangements.rates.skilled.on', /not a day/],
    ],
    [
      'a quote of a day that is yet to come',
      { rates: { plain: { rate: '30', quote: '40', quoteFrom: 'a builder', on: tomorrow() } } },
      [
        'arrangements.rates.plain.on',
        /is yet to come: today is .* Enter the day on which the quote was given/,
      ],
    ],
    [
      'a quote of nobody',
      { rates: { plain: { rate: '30', quote: '40', quoteFrom: ' ' } } },
      ['arrangements.rates.plain.quoteFrom', /who gave this quote/],
    ],
    [
      'instalments that fall short of their total',
      {
        instalments: {
          from: 'b',
          total: '100.00',
          parts: parts(['2027-05-01', '60.00'], ['2027-06-01', '39.50']),
        },
      },
      ['arrangements.instalments.total', /add to 99.50, 0.50 less than the total of 100.00/],
    ],
    [
      'instalments that go beyond their total',
      { instalments: { from: 'b', total: '100.00', parts: parts(['2027-05-01', '100.01']) } },
      ['arrangements.instalments.total', /0.01 more/],
    ],
    [
      'instalments out of the order of their days',
      {
        instalments: { from: 'b', total: '100.00', parts: parts(['2027-05-01', '50'], ['2027-04-30', '50']) },
      },
      ['arrangements.instalments.parts[1].on', /30 April 2027 lies before 1 May 2027/],
    ],
    [
      'an instalment without a day',
      { instalments: { from: 'b', total: '100.00', parts: [{ amount: '100' }] } },
      ['arrangements.instalments.parts[0].on', /Needed/],
    ],
  ])('refuse %s, name the field, and change nothing', async (_, arrangements, fault) => {
    const before = await everyTable()
    expect(await save(arrangements)).toEqual(faults(fault))
    expect(await everyTable()).toEqual(before)
  })

  test('tell every fault at once: a rate that is no number, and a quote from nobody', async () => {
    const rates = { skilled: { rate: 'dear', quote: '42', quoteFrom: '', on: '' } }
    expect(await save({ rates })).toEqual(
      faults(
        ['arrangements.rates.skilled.rate', /can't be read as a number/],
        ['arrangements.rates.skilled.quoteFrom', /who gave this quote/],
      ),
    )
  })

  test('ask about a total that the plan does not ask for, and take it with a tick or when it is that', async () => {
    const planned = await bringsInMoney()
    const plan = (total: string) => ({
      instalments: { from: 'b', total, parts: parts(['2027-05-01', total]) },
    })
    const before = await everyTable()
    expect(await save(plan('100.00'))).toEqual(
      faults([
        'totalIsMeant',
        /^As planned, no. 14 brings \$[\d,.]+ in money, \$[\d,.]+ more than this total of \$100.00/,
      ]),
    )
    expect(await everyTable()).toEqual(before)
    expect(await save(plan('100.00'), { totalIsMeant: true })).toEqual(saved)
    expect(await documentOf(world().notebook.id)).not.toHaveProperty('totalIsMeant')
    expect(await save(plan(planned))).toEqual(saved)
  })
})

describe('a payment plan that falls short, since the fence came dearer', () => {
  const wire = { item: 's1', pot: 'materials', what: 'wire', place: '1', amount: '204.00' }
  // 404.00 in the place of 304.00: b has paid 152.00 of 202.00.
  const dearer = {
    arrangements: {
      instalments: { from: 'b', total: '152.00', parts: parts(['2027-05-18', '152.00']) },
    },
    contributions: (settledDocument().contributions as object[]).map((entry, at) =>
      at === 0
        ? {
            ...entry,
            amount: '404.00',
            lines: [wire, { ...wire, what: 'posts', place: '2', amount: '200.00' }],
          }
        : entry,
    ),
    books: {
      bought: (settledDocument().books as { bought: object[] }).bought.map((one, at) =>
        at === 0 ? { ...one, amount: '204.00' } : one,
      ),
    },
  }

  test('is offered one more instalment of just that, until the draft has it', async () => {
    const { id } = world().notebook
    await settledBooks(id, dearer)
    const offered = moreInstalment(await openNotebook(id))
    expect(offered).toEqual({ amount: '50.00', words: '$50.00', digits: 2 })
    if (offered === undefined) throw new Error('something is offered')

    const { draft } = await openedPart<{ arrangements: object }>(id, { part: 'arrangements' })
    const longer = withMoreInstalment(draft, 'arrangements.instalments', offered) as typeof draft
    expect(longer).toMatchObject({
      arrangements: {
        instalments: { total: '202.00', parts: [{ amount: '152.00' }, { on: '', amount: '50.00' }] },
      },
    })
    expect(hasMoreInstalment(longer, 'arrangements.instalments', offered)).toBe(true)
    expect(await save(longer.arrangements)).toEqual(
      faults(['arrangements.instalments.parts[1].on', /Needed/]),
    )
    const dated = JSON.parse(JSON.stringify(longer.arrangements).replace('"on":""', '"on":"2027-07-01"'))
    expect(await save(dated)).toEqual(saved)
    expect(moreInstalment(await openNotebook(id))).toBeUndefined()
  })

  test('has nothing missing once nothing is owed, though not all of it was paid', async () => {
    const { id } = world().notebook
    await settledBooks(id, {
      arrangements: { instalments: { from: 'b', total: '500.00', parts: parts(['2027-05-18', '500.00']) } },
    })
    const plan = instalmentsNow(await openNotebook(id))
    expect(plan?.standing).toMatchObject({ paid: 15200n, met: 34800n, rest: 0n, overdue: 0n, short: 0n })
  })
})
