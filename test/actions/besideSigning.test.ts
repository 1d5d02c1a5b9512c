import type { ReactNode } from 'react'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { enteredSince } from '../../app/notebook/server/account/enteredSince.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { openMatters } from '../../app/notebook/server/openMatters.ts'
import { withdrawOwn } from '../../app/notebook/server/proposalReplyActions.ts'
import { confirmTransfer } from '../../app/notebook/server/transferActions.ts'
import { finalAccountOf } from '../../lib/core/ledger/finalAccount.ts'
import { paymentPlanStanding } from '../../lib/core/ledger/paymentPlan.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { moneyWords } from '../../lib/words/money.ts'
import { settledDocument } from '../core/ledger/settledBooks.ts'
import { plainBlanks } from '../shownMarkup.ts'
import { accountSignedByAll, confirmForm, drawnUp, saidToBePaid, settledBooks } from './givenAccount.ts'
import { aProposal, proposalForm } from './givenForms.ts'
import { putArrangements } from './givenHours.ts'
import { outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()
let id = ''
beforeEach(() => {
  id = world().notebook.id
})

/** A page as it is sent; parts that wait for the database are waited for. */
async function page(name: string): Promise<string> {
  const show = (await everyAddress()).get(`app/notebook/[notebookId]${name}/page.tsx#default`) as AnyFunction
  const end = await outcomeOf(() =>
    show({ params: Promise.resolve({ notebookId: id }), searchParams: Promise.resolve({}) }),
  )
  if (end.kind !== 'answer') throw new Error(`no page: ${end.kind}`)
  const { prelude } = await (await import('react-dom/static')).prerenderToNodeStream(end.answer as ReactNode)
  let html = ''
  for await (const chunk of prelude) html += String(chunk)
  return plainBlanks(html).replaceAll('<!-- -->', '')
}

describe('a final account that all have signed', () => {
  beforeEach(async () => {
    await settledBooks(id)
    await drawnUp(id)
    await accountSignedByAll(id)
  })

  const pages = ['/money', '', '/final-account']

  test('is said to be closed, and nothing else, while the books say the same', async () => {
    browseAs(world(), 'a')
    for (const name of pages) {
      const html = await page(name)
      expect(html).toContain('The account is closed: nothing is owed.')
      expect(html).not.toContain('say something else')
    }
  })

  test('is told to both to be overtaken by a later entry, with the entry, and is an open matter', async () => {
    await saidToBePaid(id, 'a')
    browseAs(world(), 'b')
    await outcomeOf(async () => confirmTransfer(id, {}, await confirmForm(id, 'b')))
    for (const household of ['a', 'b'] as const) {
      browseAs(world(), household)
      for (const name of pages) {
        const html = await page(name)
        expect(html).toContain('The books say something else than the final account')
        expect(html).toMatch(
          /Entered since:.*Money paid to the other household, No\. 12, 28 May 2027: a part from a, \$20\.00/,
        )
        expect(html).not.toContain('nothing is owed.')
      }
      expect(openMatters(await openNotebook(id))).toContainEqual({
        text: 'Final account 1 was signed, and the books were changed since',
        href: `/notebook/${id}/final-account`,
      })
    }
  })

  test('is overtaken too by a payment that waits for a word, which counts as nothing yet', async () => {
    await saidToBePaid(id, 'a')
    browseAs(world(), 'a')
    const html = await page('/money')
    expect(html).toContain('The books say something else than the final account')
    expect(html).not.toContain('Entered since:')
  })

  test('is what it was where an entry went and another came: each is named', () => {
    const read = readDocument(settledDocument())
    if (!read.ok) throw new Error('the document holds')
    const { notebook } = read.value
    const statement = statementOf(notebook)
    if (!statement.ok) throw new Error('it can be shared')
    const account = finalAccountOf(notebook, statement.value, { number: 1, sha256: sha256Hex('x') })
    expect(enteredSince(account, notebook)).toEqual({ entered: [], gone: [] })
    const [first, ...rest] = notebook.contributions
    if (first === undefined) throw new Error('the books have entries')
    const twice = { ...notebook, contributions: [...notebook.contributions, first] }
    expect(enteredSince(account, twice).entered).toMatchObject([{ amount: first.amount, note: first.note }])
    const struck = { ...first, struck: { on: '2027-06-01', by: 'a', why: 'wrong' } } as const
    const changed = { ...notebook, contributions: [struck, ...rest] }
    expect(enteredSince(account, changed)).toMatchObject({ entered: [], gone: [{ amount: first.amount }] })
  })
})

describe('beside what is to be signed', () => {
  test('stands by how much its payment plan falls short of what is still asked for in money, as an open matter', async () => {
    const plan = (amount: string) => ({
      instalments: { from: 'b', total: amount, parts: [{ on: '2027-09-01', amount }] },
    })
    await putArrangements(id, plan('100.00'))
    browseAs(world(), 'b')
    const opened = await openNotebook(id)
    const standing = paymentPlanStanding(opened.notebook, statementOf(opened.inForce), '2027-06-01')
    if (standing === undefined || standing.short === 0n) throw new Error('the plan falls short')
    const html = await page('/sign')
    expect(html).toContain('Open: the payment plan falls short')
    expect(html).toContain(`The plan falls short by ${moneyWords(standing.short, 'USD')}:`)
    expect(html).toContain('This bars nobody from signing.')

    await putArrangements(id, plan('90000.00'))
    expect(await page('/sign')).not.toContain('Open: the payment plan falls short')
  })

  test('stands each proposal that waits, whose it is, and that it bars nobody', async () => {
    await aProposal(id, 'b', 's2')
    for (const household of ['a', 'b'] as const) {
      browseAs(world(), household)
      for (const name of ['/sign', '/final-account']) {
        const html = await page(name)
        expect(html).toContain('Proposal 1 of no. 14, for Along the gardens, waits for the answer of no. 12.')
        expect(html).toContain(
          name === '/sign' ? 'You can sign all the same' : 'They don’t stop the final account',
        )
        expect(html).toContain(`href="/notebook/${id}/proposals"`)
      }
    }
  })

  test('stands nothing once none waits, nor where nothing is left to sign', async () => {
    await aProposal(id, 'b', 's2')
    browseAs(world(), 'b')
    await outcomeOf(async () => withdrawOwn(id, {}, await proposalForm(id, 'b')))
    expect(await page('/sign')).not.toContain('Proposals still wait')
    await settledBooks(id)
    await aProposal(id, 'b', 's1')
    expect(await page('/sign')).not.toContain('Proposals still wait')
    expect(await page('/final-account')).toContain('Proposals still wait')
    await drawnUp(id)
    await accountSignedByAll(id)
    expect(await page('/final-account')).not.toContain('Proposals still wait')
  })
})
