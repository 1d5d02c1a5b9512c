import type { ReactNode } from 'react'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import {
  agreeToConversion,
  askConversion,
  withdrawConversion,
} from '../../app/notebook/server/conversionActions.ts'
import { withdrawnLately } from '../../app/notebook/server/withdrawnLately.ts'
import { conversionsIn } from '../../lib/forms/conversions.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { everyTable } from './everyTable.ts'
import { aConversion, conversionForm, putInDocument, waitingConversion } from './givenHours.ts'
import { outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()
beforeEach(() => browseAs(world(), 'b'))

const ask = (more: object = {}) =>
  outcomeOf(() => askConversion(world().notebook.id, 'new', { ...aConversion, ...more }))
const stored = async () => conversionsIn(await documentOf(world().notebook.id))
const toWork = { kind: 'redirect', to: expect.stringMatching(/\/work$/) }
const refused = (path: string, message: RegExp) => ({
  kind: 'answer',
  answer: { faults: [{ path, message: expect.stringMatching(message) }] },
})

async function workPage(): Promise<string> {
  const show = (await everyAddress()).get('app/notebook/[notebookId]/work/page.tsx#default') as AnyFunction
  const end = await outcomeOf(() => show({ params: Promise.resolve({ notebookId: world().notebook.id }) }))
  if (end.kind !== 'answer') throw new Error(`no page: ${end.kind}`)
  return shownMarkup(end.answer as ReactNode)
}

describe('money in the place of hours', () => {
  test('is asked for in the household’s own name, and counts once the other has marked it', async () => {
    const { id } = world().notebook
    await markEverything(id)
    const marks = await marksOf(id)
    expect(await ask({ household: 'a', marks: { a: { on: '2027-04-01' } } })).toEqual(toWork)
    const [asked] = await stored()
    expect(asked).toMatchObject({ household: 'b', to: 'money', item: 's2', hours: '2.5', rate: '22' })
    expect(Object.keys(asked?.marks as object)).toEqual(['b'])
    expect(await workPage()).toContain('Waits for no. 12')
    expect(await workPage()).not.toContain('brings $55.00 more in money')

    browseAs(world(), 'a')
    await outcomeOf(async () => agreeToConversion(id, {}, await conversionForm(id, 'b')))
    expect(Object.keys((await stored())[0]?.marks as object)).toEqual(['b', 'a'])
    expect(await workPage()).toContain('No. 14 brings $55.00 more in money')
    // The books are no part of what is agreed item by item.
    expect(await marksOf(id)).toEqual(marks)
  })

  test('goes on record with its figures, step by step', async () => {
    const { id } = world().notebook
    await ask()
    browseAs(world(), 'a')
    await outcomeOf(async () => agreeToConversion(id, {}, await conversionForm(id, 'b')))
    const { Change: changes = [] } = await everyTable()
    const said = { books: 'conversion', to: 'money', hours: '2.5', rate: '22', why: 'a bad back' }
    const books = changes.filter((change) => change.kind === 'books' && change.notebookId === id)
    expect(
      books.map(({ household, itemKey, detail }) => [household, itemKey, JSON.parse(String(detail))]),
    ).toEqual([
      ['b', 'item:s2', { ...said, step: 'asked' }],
      ['a', 'item:s2', { ...said, step: 'agreed' }],
    ])
  })

  test('can be taken back by whoever asked, only until the other has marked it', async () => {
    const { id } = world().notebook
    await ask()
    browseAs(world(), 'a')
    const withdraw = async () =>
      outcomeOf(async () => withdrawConversion(id, {}, await conversionForm(id, 'b')))
    const before = await everyTable()
    expect(await withdraw()).toMatchObject({
      answer: { refused: expect.stringContaining('not yours to press') },
    })
    expect(await everyTable()).toEqual(before)
    browseAs(world(), 'b')
    expect(await withdraw()).toEqual(toWork)
    expect(await documentOf(id)).not.toHaveProperty('books')

    await ask()
    browseAs(world(), 'a')
    await outcomeOf(async () => agreeToConversion(id, {}, await conversionForm(id, 'b')))
    browseAs(world(), 'b')
    expect(await withdraw()).toMatchObject({
      answer: { refused: expect.stringContaining('in the meantime') },
    })
    expect(await stored()).toHaveLength(1)
  })

  test('that was taken back stands in the form again, for who took it back, for an hour', async () => {
    const { id } = world().notebook
    await ask()
    const back = (household: 'a' | 'b', later = 0) =>
      withdrawnLately(id, household, new Date(Date.now() + later))
    expect(await back('b')).toBeUndefined()
    await outcomeOf(async () => withdrawConversion(id, {}, await conversionForm(id, 'b')))
    expect(await back('b')).toEqual(aConversion)
    expect(await back('a')).toBeUndefined()
    expect(await back('b', 3_600_001)).toBeUndefined()
    const again = await back('b')
    expect(await outcomeOf(() => askConversion(id, 'new', again))).toEqual(toWork)
    expect(await stored()).toHaveLength(1)
    expect(await back('b')).toBeUndefined()
  })

  test('is agreed to by the other household alone', async () => {
    const { id } = world().notebook
    await ask()
    const before = await everyTable()
    const own = await outcomeOf(async () => agreeToConversion(id, {}, await conversionForm(id, 'b')))
    expect(own).toMatchObject({ answer: { refused: expect.stringContaining('not yours to press') } })
    expect(await everyTable()).toEqual(before)
  })

  test('that came with a file has no mark, and needs those of both', async () => {
    const { id } = world().notebook
    await putInDocument(id, (document) => ({
      ...document,
      books: { conversions: [{ household: 'b', ...aConversion, on: '2027-04-01' }] },
    }))
    for (const household of ['b', 'a'] as const) {
      browseAs(world(), household)
      expect(await workPage()).toContain('Agree to this')
      expect(await outcomeOf(async () => agreeToConversion(id, {}, await conversionForm(id, 'b')))).toEqual(
        toWork,
      )
    }
    expect(await workPage()).toContain('No. 14 brings $55.00 more in money')
  })

  test.each<[string, object, [string, RegExp]]>([
    // 37.5 h on the second section, 45 percent of them asked of b: 16.875 h. Both remainders tie, and both
    // were asked for 8.25 h before: the odd hundredth goes to a, and b is asked for 16.87 h.
    [
      'more hours than are still to give',
      { hours: '16.88' },
      ['hours', /no. 14 has 16.87 h still to give\.$/],
    ],
    ['no hours', { hours: '0' }, ['hours', /more than no hours/]],
    ['hours that are none', { hours: 'two' }, ['hours', /as a number/]],
    ['no rate', { rate: '' }, ['rate', /Needed/]],
    ['an item that is not there', { item: 's99' }, ['item', /choose the section/]],
    ['neither way', { to: '' }, ['to', /choose one/]],
    [
      'hours worth more than what is still to give',
      { to: 'hours', hours: '1000' },
      ['hours', /\$22,000.00, and no. 14 has \$2,790.70/],
    ],
  ])('is refused for %s, and nothing changes', async (_, more, [path, message]) => {
    const before = await everyTable()
    expect(await ask(more)).toEqual(refused(path, message))
    expect(await everyTable()).toEqual(before)
  })

  test('leaves as much less to ask for as waits already', async () => {
    await waitingConversion(world().notebook.id, 'b')
    expect(await ask({ hours: '14.375' })).toEqual(
      refused('hours', /14.37 h still to give \(2.5 h more wait for a mark already\)/),
    )
    expect(await ask({ hours: '14.37' })).toEqual(toWork)
  })

  test('the other way round gives hours in the place of money', async () => {
    expect(await ask({ to: 'hours', hours: '4' })).toEqual(toWork)
    expect(await workPage()).toContain(
      'no. 14 gives 4 h on Along the gardens in the place of $88.00, at $22.00 an hour',
    )
  })
})
