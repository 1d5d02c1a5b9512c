import { beforeEach, describe, expect, test, vi } from 'vitest'
import { enterContribution, takeEntryBack } from '../../app/notebook/server/bookActions.ts'
import { booksMatters } from '../../app/notebook/server/booksMatters.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { confirmTransfer } from '../../app/notebook/server/transferActions.ts'
import { contributed } from '../../lib/core/ledger/contributed.ts'
import { historyOf } from '../../lib/store/historyChain.ts'
import { everyTable } from './everyTable.ts'
import { confirmForm, saidToBePaid } from './givenAccount.ts'
import { takeBackForm } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))

const world = worldForEachTest()
let id = ''
beforeEach(() => {
  id = world().notebook.id
  browseAs(world(), 'b')
})

describe('a payment between the households', () => {
  const payment = {
    household: 'b',
    kind: 'transfer',
    amount: '152.00',
    date: new Date().toISOString().slice(0, 10),
    means: 'by bank',
    earlierIsMeant: true,
  }
  const newest = async () => (await openNotebook(id)).notebook.contributions.at(-1)
  const given = async () => contributed((await openNotebook(id)).notebook.contributions, 2)

  test('asks for the means, and keeps nothing without them', async () => {
    browseAs(world(), 'b')
    const before = await everyTable()
    const answer = await enterContribution(id, 'new', { ...payment, means: ' ' })
    expect(answer).toMatchObject({ faults: [{ path: 'means' }] })
    expect(await everyTable()).toEqual(before)
  })

  test('counts once the one who received it confirms it: not before, and not twice', async () => {
    const before = await given()
    browseAs(world(), 'b')
    await outcomeOf(() => enterContribution(id, 'new', payment))
    expect(await newest()).toMatchObject({ waits: true, enteredBy: 'b' })
    expect(await given()).toEqual(before)
    const own = await outcomeOf(async () => confirmTransfer(id, {}, await confirmForm(id, 'a')))
    expect(own).toMatchObject({ answer: { refused: expect.stringMatching(/^Only .* can confirm it/) } })

    browseAs(world(), 'a')
    const form = await confirmForm(id, 'a')
    expect(booksMatters(await openNotebook(id))).toContainEqual(
      expect.objectContaining({ text: 'A payment waits for your word' }),
    )
    expect(await outcomeOf(() => confirmTransfer(id, {}, form))).toMatchObject({ kind: 'redirect' })
    const after = await given()
    expect([after.a - before.a, after.b - before.b]).toEqual([-15200n, 15200n])

    const history = await historyOf(id)
    expect(history.at(-1)).toMatchObject({
      kind: 'books',
      household: 'a',
      detail: { books: 'confirmed', what: 'by bank', amount: '$152.00' },
    })
    expect(history.filter(({ itemKey }) => itemKey === 'contributions')).toEqual([])

    const twice = await outcomeOf(() => confirmTransfer(id, {}, form))
    expect(twice).toMatchObject({
      answer: { refused: expect.stringContaining('It was not confirmed a second time, and counts once.') },
    })
    expect(await given()).toEqual(after)
  })

  test('entered by the one who received it, counts at once', async () => {
    browseAs(world(), 'a')
    await outcomeOf(() => enterContribution(id, 'new', { ...payment, waits: true }))
    expect(await newest()).toMatchObject({ waits: false, enteredBy: 'a', confirmed: { by: 'a' } })
  })

  test('is taken back by its payer while it waits, and by nobody alone once it is confirmed', async () => {
    await saidToBePaid(id, 'b')
    await saidToBePaid(id, 'b')
    const last = (await openNotebook(id)).notebook.contributions.length - 1
    browseAs(world(), 'a')
    await outcomeOf(async () => confirmTransfer(id, {}, await confirmForm(id, 'a')))
    browseAs(world(), 'b')
    const confirmed = await outcomeOf(async () => takeEntryBack(id, {}, await takeBackForm(id, last)))
    expect(confirmed).toMatchObject({
      answer: { refused: expect.stringContaining('has confirmed this payment') },
    })
    const waiting = await outcomeOf(async () => takeEntryBack(id, {}, await takeBackForm(id, last - 1)))
    expect(waiting).toMatchObject({ kind: 'redirect' })
  })
})
