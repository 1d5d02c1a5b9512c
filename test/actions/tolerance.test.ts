import { beforeEach, describe, expect, test, vi } from 'vitest'
import { accountStanding } from '../../app/notebook/server/account/accountNow.ts'
import { agreeToItem } from '../../app/notebook/server/actions.ts'
import { beyondAgreed } from '../../app/notebook/server/beyondAgreed.ts'
import { booksMatters } from '../../app/notebook/server/booksMatters.ts'
import { markLineBought, takeLineMarkBack } from '../../app/notebook/server/boughtActions.ts'
import { agreedByBoth, openNotebook } from '../../app/notebook/server/opened.ts'
import { standingOf } from '../../app/notebook/server/standingOf.ts'
import { bothMarked } from '../core/ledger/settledBooks.ts'
import { settledBooks } from './givenAccount.ts'
import { markForm } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))

const world = worldForEachTest()
let id = ''
beforeEach(() => {
  id = world().notebook.id
  browseAs(world(), 'b')
})

describe('an item beyond the tolerance that all have signed', () => {
  const cost = (amount: string) => {
    const wire = { item: 's1', pot: 'materials', what: 'wire', place: '1', amount }
    return {
      contributions: [{ household: 'a', kind: 'cash', amount, date: '2027-05-03', for: 's1', lines: [wire] }],
      books: { bought: [{ ...wire, marks: bothMarked }] },
    }
  }

  test('loses both marks as soon as both mark the line that takes it there, and needs both again', async () => {
    await settledBooks(id, cost('130.00'))
    browseAs(world(), 'a')
    // Planned 300.00; 130.00 for the wire and 200.00 as planned for the posts are exactly 10 percent above it.
    expect(beyondAgreed(await openNotebook(id))).toEqual([])

    await settledBooks(id, cost('130.01'))
    const over = await openNotebook(id)
    expect(agreedByBoth(standingOf(over, 'item:s1'))).toBe(true)
    expect(beyondAgreed(over)).toEqual([])

    const line = JSON.stringify({ item: 's1', pot: 'materials', what: 'wire', place: '1' })
    const form = new FormData()
    form.set('line', line)
    form.set('amount', '130.01')
    browseAs(world(), 'b')
    await outcomeOf(() => takeLineMarkBack(id, {}, form))
    await markEverything(id)
    expect(agreedByBoth(standingOf(await openNotebook(id), 'item:s1'))).toBe(true)
    await outcomeOf(() => markLineBought(id, {}, form))

    const opened = await openNotebook(id)
    expect(standingOf(opened, 'item:s1').markedAt).toEqual({})
    expect(agreedByBoth(standingOf(opened, 'item:g1'))).toBe(true)
    expect(booksMatters(opened)).toContainEqual({
      text: 'Along the gardens came to $330.01, more than 10 percent above the plan: both look at it again',
      href: `/notebook/${id}/item/s1`,
    })
    expect((await accountStanding(opened)).now.open.map(({ kind }) => kind)).toContain('beyond tolerance')

    for (const household of ['a', 'b'] as const) {
      browseAs(world(), household)
      await outcomeOf(async () => agreeToItem(id, {}, await markForm(id, 'item:s1')))
    }
    expect(beyondAgreed(await openNotebook(id))).toEqual([])
  })
})
