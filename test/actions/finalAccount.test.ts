import { beforeEach, describe, expect, test, vi } from 'vitest'
import { drawUpAccount, signAccount } from '../../app/notebook/server/account/accountActions.ts'
import { accountMatters } from '../../app/notebook/server/account/accountMatters.ts'
import { accountStanding } from '../../app/notebook/server/account/accountNow.ts'
import { takeEntryBack } from '../../app/notebook/server/bookActions.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { recordPackOf } from '../../app/notebook/server/recordPackOf.ts'
import { confirmTransfer } from '../../app/notebook/server/transferActions.ts'
import { accountSignaturesOf, accountsOf } from '../../lib/store/finalAccounts.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { everyTable } from './everyTable.ts'
import {
  accountPlace,
  accountSignedByAll,
  confirmForm,
  drawnUp,
  saidToBePaid,
  settledBooks,
} from './givenAccount.ts'
import { takeBackForm } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, documentOf, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))

const world = worldForEachTest()
let id = ''
beforeEach(() => {
  id = world().notebook.id
  browseAs(world(), 'b')
})

const signs = (typedName: string) => ({ typedName, intent: true, drawing: 'M10 10L20 20' })
const standing = async () => accountStanding(await openNotebook(id))

describe('the final account', () => {
  test('is not drawn up while something is open', async () => {
    await settledBooks(id, { contributions: [] })
    browseAs(world(), 'a')
    const before = await everyTable()
    const end = await outcomeOf(() => drawUpAccount(id, {}, new FormData()))
    expect(end).toMatchObject({ answer: { refused: expect.stringContaining('can’t be drawn up yet') } })
    expect(await everyTable()).toEqual(before)
  })

  test('is drawn up once, signed by both, and then nothing is owed', async () => {
    await settledBooks(id)
    for (const household of ['a', 'b'] as const) {
      browseAs(world(), household)
      await outcomeOf(() => drawUpAccount(id, {}, new FormData()))
    }
    const [account, ...more] = await accountsOf(id)
    expect(more).toEqual([])
    expect(account?.sha256).toBe(sha256Hex(account?.canonicalText ?? ''))
    expect(await standing()).toMatchObject({ stands: true, closed: false })

    const place = await accountPlace(id)
    browseAs(world(), 'a')
    await outcomeOf(() => signAccount(id, place, 'new', signs('marnie  oakshott')))
    browseAs(world(), 'b')
    expect((await standing()).closed).toBe(false)
    await outcomeOf(() => signAccount(id, place, 'new', signs('Ines Vandermolen')))
    expect(await standing()).toMatchObject({ stands: true, closed: true })
    expect(await accountSignaturesOf(account?.id ?? '')).toMatchObject([
      { household: 'a', typedName: 'marnie  oakshott', drawing: 'M10 10L20 20' },
      { household: 'b', typedName: 'Ines Vandermolen' },
    ])
  })

  test.each([
    ['another name', { typedName: 'Ines Vandermolen', intent: true, drawing: '' }, 'typedName'],
    ['no tick', { typedName: 'Marnie Oakshott', intent: false, drawing: '' }, 'intent'],
    ['a drawing that is none', { typedName: 'Marnie Oakshott', intent: true, drawing: '<svg>' }, 'drawing'],
  ])('is not signed with %s', async (_name, draft, path) => {
    await settledBooks(id)
    await drawnUp(id)
    browseAs(world(), 'a')
    const before = await everyTable()
    expect(await signAccount(id, await accountPlace(id), 'new', draft)).toMatchObject({ faults: [{ path }] })
    expect(await everyTable()).toEqual(before)
  })

  test('is not signed for the other household, for a party that is not there, or on another hash', async () => {
    await settledBooks(id)
    await drawnUp(id)
    browseAs(world(), 'a')
    const place = await accountPlace(id)
    const before = await everyTable()
    for (const [where, name] of [
      [place, 'Ines Vandermolen'],
      [{ ...place, partyIndex: 1 }, 'Marnie Oakshott'],
      [{ ...place, sha256: sha256Hex('another') }, 'Marnie Oakshott'],
      [{ ...place, accountId: 'none' }, 'Marnie Oakshott'],
    ] as const)
      expect(await signAccount(id, where, 'new', signs(name))).toMatchObject({ faults: [{}] })
    expect(await everyTable()).toEqual(before)
  })

  test('no longer stands after a later entry: nobody signs it any more, and the next has a number of its own', async () => {
    await settledBooks(id)
    await drawnUp(id)
    const place = await accountPlace(id)
    browseAs(world(), 'a')
    await outcomeOf(() => signAccount(id, place, 'new', signs('Marnie Oakshott')))
    await saidToBePaid(id, 'a')
    browseAs(world(), 'b')
    expect(await signAccount(id, place, 'new', signs('Ines Vandermolen'))).toMatchObject({
      faults: [{ message: expect.stringContaining('The books have changed') }],
    })
    expect(await standing()).toMatchObject({ stands: false, closed: false })

    // It waits for nobody: both are told what came of it, and what to do.
    for (const household of ['a', 'b'] as const) {
      browseAs(world(), household)
      expect(accountMatters(await openNotebook(id))).toEqual([
        {
          text: 'Final account 1 can’t be signed any more: the books were changed since it was drawn up. Settle what is open, then draw up a new one',
          href: `/notebook/${id}/final-account`,
        },
      ])
    }

    // Taken back, the books say again what the account says.
    browseAs(world(), 'a')
    const last = ((await documentOf(id)).contributions as unknown[]).length - 1
    await outcomeOf(async () => takeEntryBack(id, {}, await takeBackForm(id, last)))
    expect((await standing()).stands).toBe(true)
    browseAs(world(), 'b')
    expect(accountMatters(await openNotebook(id))).toMatchObject([
      { text: 'Final account 1 waits for the signature of Ines Vandermolen' },
    ])
  })

  test('signed by all, it is outdated by the next payment, and a new account closes it again', async () => {
    await settledBooks(id)
    await drawnUp(id)
    await accountSignedByAll(id)
    browseAs(world(), 'a')
    expect((await standing()).closed).toBe(true)
    for (const [payer, receiver] of [
      ['a', 'b'],
      ['b', 'a'],
    ] as const) {
      await saidToBePaid(id, payer)
      browseAs(world(), receiver)
      await outcomeOf(async () => confirmTransfer(id, {}, await confirmForm(id, receiver)))
    }
    expect(await standing()).toMatchObject({ stands: false, closed: false, now: { open: [] } })
    await outcomeOf(() => drawUpAccount(id, {}, new FormData()))
    expect((await accountsOf(id)).map(({ number }) => number)).toEqual([2, 1])
    await accountSignedByAll(id)
    expect((await standing()).closed).toBe(true)
  })

  test('is in the record pack, its text and its paper', async () => {
    await settledBooks(id)
    await drawnUp(id)
    browseAs(world(), 'b')
    const pack = await recordPackOf(await openNotebook(id), new Date('2027-06-02T10:00:00Z'))
    const text = pack.find(({ name }) => name === 'accounts/final-account-1.json')
    const [account] = await accountsOf(id)
    expect(new TextDecoder().decode(await text?.bytes())).toBe(account?.canonicalText)
    const paper = await pack.find(({ name }) => name === 'accounts/final-account-1.pdf')?.bytes()
    expect(new TextDecoder('latin1').decode(paper?.slice(0, 5))).toBe('%PDF-')
  })
})
