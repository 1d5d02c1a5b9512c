import { beforeEach, describe, expect, test, vi } from 'vitest'
import { accountStanding } from '../../app/notebook/server/account/accountNow.ts'
import { agreeToItem } from '../../app/notebook/server/actions.ts'
import { beyondAgreed } from '../../app/notebook/server/beyondAgreed.ts'
import { booksMatters } from '../../app/notebook/server/booksMatters.ts'
import { markLineBought } from '../../app/notebook/server/boughtActions.ts'
import { agreedByBoth, openNotebook } from '../../app/notebook/server/opened.ts'
import { standingOf } from '../../app/notebook/server/standingOf.ts'
import { bothMarked } from '../core/ledger/settledBooks.ts'
import { settledBooks } from './givenAccount.ts'
import { withBooks } from './givenBooks.ts'
import { markForm } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))

const world = worldForEachTest()
let id = ''
beforeEach(() => {
  id = world().notebook.id
  browseAs(world(), 'b')
})

const wire = { item: 's1', pot: 'materials', what: 'wire', place: '1' }
const onWire = (amount: string, kind = 'cash') => ({
  household: 'a',
  kind,
  amount,
  date: '2027-05-03',
  for: 's1',
  lines: [{ ...wire, amount }],
})

/** Books in which the wire came to the amount, marked by these. */
const cost = (amount: string, marks: object) => ({
  contributions: [onWire(amount)],
  books: { bought: [{ ...wire, amount, marks }] },
})

const markWire = async (household: 'a' | 'b', amount: string) => {
  browseAs(world(), household)
  const form = new FormData()
  form.set('line', JSON.stringify(wire))
  form.set('amount', amount)
  expect(await outcomeOf(() => markLineBought(id, {}, form))).toMatchObject({ kind: 'redirect' })
}
const bothMarkWire = async (amount: string) => {
  for (const household of ['a', 'b'] as const) await markWire(household, amount)
}
const enterMore = (entry: object) =>
  withBooks(id, ({ contributions, ...document }) => ({
    ...document,
    contributions: [...(contributions as object[]), entry],
  }))
const agree = async (household: 'a' | 'b') => {
  browseAs(world(), household)
  await outcomeOf(async () => agreeToItem(id, {}, await markForm(id, 'item:s1')))
}
const markedBy = async () => Object.keys(standingOf(await openNotebook(id), 'item:s1').markedAt)

// Planned 300.00: 130.00 for the wire and 200.00 as planned for the posts are exactly 10 percent above it.
describe('an item beyond the tolerance that all have signed', () => {
  test('is none at exactly the tolerance, and none once both have marked it anew', async () => {
    await settledBooks(id, cost('130.00', bothMarked))
    expect(beyondAgreed(await openNotebook(id))).toEqual([])
    await settledBooks(id, cost('130.01', bothMarked))
    const over = await openNotebook(id)
    expect(agreedByBoth(standingOf(over, 'item:s1'))).toBe(true)
    expect(beyondAgreed(over)).toEqual([])
  })

  test('loses both marks as soon as both mark the line that takes it there, and needs both again', async () => {
    await settledBooks(id, cost('130.01', { a: bothMarked.a }))
    expect(agreedByBoth(standingOf(await openNotebook(id), 'item:s1'))).toBe(true)
    await markWire('b', '130.01')

    const opened = await openNotebook(id)
    expect(standingOf(opened, 'item:s1').markedAt).toEqual({})
    expect(agreedByBoth(standingOf(opened, 'item:g1'))).toBe(true)
    expect(booksMatters(opened)).toContainEqual({
      text: 'Along the gardens came to $330.01, more than 10 percent above the plan: both look at it again',
      href: `/notebook/${id}/item/s1#came-to`,
    })
    expect((await accountStanding(opened)).now.open.map(({ kind }) => kind)).toContain('beyond tolerance')

    for (const household of ['a', 'b'] as const) await agree(household)
    expect(beyondAgreed(await openNotebook(id))).toEqual([])
  })

  test('keeps the marks that both set anew when it comes cheaper, and loses them when it comes dearer', async () => {
    await settledBooks(id, cost('150.00', { a: bothMarked.a }))
    await markWire('b', '150.00')
    for (const household of ['a', 'b'] as const) await agree(household)

    await enterMore(onWire('10.00', 'refund'))
    await bothMarkWire('140.00')
    expect(await markedBy()).toEqual(['a', 'b'])
    await enterMore(onWire('30.00', 'refund'))
    await bothMarkWire('110.00')
    expect(await markedBy()).toEqual(['a', 'b'])
    expect(beyondAgreed(await openNotebook(id))).toEqual([])

    await enterMore(onWire('25.00'))
    await bothMarkWire('135.00')
    expect(await markedBy()).toEqual([])
  })

  test('that one household alone had marked anew keeps that one mark when it comes cheaper', async () => {
    await settledBooks(id, cost('150.00', { a: bothMarked.a }))
    await markWire('b', '150.00')
    await agree('b')
    await enterMore(onWire('40.00', 'refund'))
    await bothMarkWire('110.00')
    expect(await markedBy()).toEqual(['b'])
  })

  test('is not left or entered by what one household enters alone', async () => {
    await settledBooks(id, cost('130.01', bothMarked))
    await enterMore(onWire('20.00', 'refund'))
    expect(await markedBy()).toEqual(['a', 'b'])
    await enterMore(onWire('400.00'))
    await markWire('a', '510.01')
    expect(await markedBy()).toEqual(['a', 'b'])
    expect((await accountStanding(await openNotebook(id))).now.open.map(({ kind }) => kind)).toContain(
      'line moved',
    )
  })
})
