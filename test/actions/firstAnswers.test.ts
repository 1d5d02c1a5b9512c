import { text } from 'node:stream/consumers'
import type { ReactNode } from 'react'
import { prerenderToNodeStream } from 'react-dom/static'
import { describe, expect, test, vi } from 'vitest'
import { giveFirstAnswer } from '../../app/notebook/server/firstAnswerActions.ts'
import { sayAboutItem } from '../../app/notebook/server/messageActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { shareItems, statementOf } from '../../lib/core/shares/statement.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'
import { newestFirstAnswer } from '../../lib/store/firstAnswers.ts'
import { messagesOf } from '../../lib/store/messages.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { dayWords } from '../../lib/words/day.ts'
import { moneyWords } from '../../lib/words/money.ts'
import { everyTable } from './everyTable.ts'
import { settledBooks, signedByAll } from './givenAccount.ts'
import { anAddedPhoto } from './givenFiles.ts'
import { formOf, tomorrow } from './givenForms.ts'
import { outcomeOf, refusalOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
// Forms ask the router where they are, which only Next can say; nothing here is pressed.
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()

async function pageOf(household: Household, file: string): Promise<string> {
  browseAs(world(), household)
  const page = (await everyAddress()).get(`app/notebook/[notebookId]/${file}#default`) as AnyFunction
  const end = await outcomeOf(() => page({ params: Promise.resolve({ notebookId: world().notebook.id }) }))
  if (end.kind !== 'answer') throw new Error(end.kind)
  // Blanks and breaks as a reader sees them.
  const { prelude } = await prerenderToNodeStream(end.answer as ReactNode)
  return (await text(prelude)).replace(/<!-- -->/g, '').replaceAll('\u00a0', ' ')
}

function answer(fields: Record<string, string>, household: Household = 'b') {
  browseAs(world(), household)
  return outcomeOf(() => giveFirstAnswer(world().notebook.id, {}, formOf(fields)))
}

/** What the plan asks of household b, and how much of it in money, in words. */
async function figuresOfB() {
  const read = readNotebook(documentText(await documentOf(world().notebook.id)))
  const statement = read.ok ? statementOf(read.value.notebook) : undefined
  if (!statement?.ok) throw new Error('the plan can be shared')
  const { asked, inMoney } = statement.value
  return { asked: moneyWords(asked.b, 'USD'), inMoney: moneyWords(inMoney.b, 'USD') }
}

const led = (page: string) => ({ kind: 'redirect', to: `/notebook/${world().notebook.id}${page}` })
const datesOf = async () =>
  ((await documentOf(world().notebook.id)).dates as { what: string; on: string; done?: boolean }[]).filter(
    ({ what }) => what === 'Ask no. 14 again about the fence',
  )
/** Draws a document anew, as an edit of household a. */
const changeDocument = (change: (document: Record<string, unknown>) => object) =>
  editNotebook({
    id: world().notebook.id,
    household: 'a',
    at: new Date('2027-03-01T20:00:00Z'),
    change: (stored) => ({
      document: documentText({ ...change(JSON.parse(stored)) }),
      changed: [],
      kept: undefined,
    }),
  })

const withoutCaps = (document: Record<string, unknown>) => ({ ...document, caps: {} })

/** The gate between the gardens, shared by use, with other keys. */
const byUse = (document: Record<string, unknown>, keys: object) => ({
  ...document,
  caps: {},
  gates: (document.gates as { id: string }[]).map((gate) =>
    gate.id === 'g3' ? { ...gate, share: { together: { principle: 'use' } }, ...keys } : gate,
  ),
})

describe('the first screen', () => {
  test('shows the photo of the old fence, what the plan asks now, that nothing binds, and five answers', async () => {
    await changeDocument(withoutCaps)
    expect(await pageOf('b', 'welcome/page.tsx')).toContain('There is no photo of the old fence yet.')
    const photo = await anAddedPhoto(world().notebook.id)
    const html = await pageOf('b', 'welcome/page.tsx')
    expect(html).toContain(`src="/notebook/${world().notebook.id}/files/${photo}"`)
    expect(html).toContain('No. 12 asks about the fence')
    const { asked } = await figuresOfB()
    expect(html).toContain(`<span class="figure">${asked}</span> as the plan stands now`)
    expect(html).toContain(`Asked of you: ${asked} as the plan stands now.`)
    expect(html).not.toContain('at most')
    expect(html).toContain('Nothing binds until you sign.')
    const labels = [...html.matchAll(/>Answer: ([^<]+)</g)].map(([, label]) => label)
    expect(labels).toEqual(['fine', 'fine, but without money', 'a question', 'not now', 'no'])
  })

  test('says what the figure rests on: the plan, a limit of its own, or one that both marked', async () => {
    await changeDocument((document) => ({ ...document, caps: { b: '9000.00' } }))
    const html = await pageOf('b', 'welcome/page.tsx')
    expect(html).toContain(
      'Until all have signed the plan can change, by what either household enters, and this figure becomes more or less with it. What changes takes your mark off, and nothing binds before you sign.',
    )
    expect(html).not.toContain('can’t rise')
    expect(await pageOf('a', 'welcome/page.tsx')).toContain(
      'What changes takes the mark of no. 14 off, and nothing binds before no. 14 signs.',
    )
    await markEverything(world().notebook.id, ['b'])
    const limited = await pageOf('b', 'welcome/page.tsx')
    expect(limited).toContain('That is the limit that you set.')
    expect(limited).toContain('at most <span class="figure">$9,000.00</span>')
    await markEverything(world().notebook.id)
    expect(await pageOf('b', 'welcome/page.tsx')).toContain('which both households have marked')
  })

  test('says which gate is shared by halves for now, since its passages are not settled', async () => {
    expect(await pageOf('b', 'welcome/page.tsx')).not.toContain('by halves for now')
    await changeDocument((document) => byUse(document, { uses: undefined, passages: { takes: {} } }))
    const html = await pageOf('b', 'welcome/page.tsx')
    expect(html).toContain('Mower gate is shared by halves for now: the passages are not settled yet.')
  })

  test('says which gate nobody has counted, what to do, and what the other items ask for meanwhile', async () => {
    await changeDocument((document) => byUse(document, { uses: undefined }))
    const read = readNotebook(documentText(await documentOf(world().notebook.id)))
    if (!read.ok) throw new Error('the document holds')
    const { items, faults } = shareItems(read.value.notebook)
    expect(faults.length).toBeGreaterThan(0)
    const ofB = items.reduce((sum, item) => sum + item.b, 0n)
    const said = 'Mower gate: nobody has counted its passages a week yet'
    const meanwhile = `and ${moneyWords(ofB, 'USD')} of no. 14 so far, before caps.`
    for (const page of ['welcome/page.tsx', 'shares/page.tsx']) {
      const html = await pageOf('b', page)
      expect(html).toContain(said)
      expect(html).toContain(meanwhile)
    }
    expect(await pageOf('b', 'welcome/page.tsx')).toContain('Not worked out yet')
    expect(await pageOf('b', 'terms/page.tsx')).toContain(
      `href="/notebook/${world().notebook.id}/item/g3#passages">Shares can’t be worked out yet. ${said}`,
    )
  })

  test('can be looked at by the household that asks, and answers nothing there', async () => {
    const html = await pageOf('a', 'welcome/page.tsx')
    expect(html).toContain('What no. 14 sees first')
    expect(html).not.toContain('>Answer: ')
    // Where the other household is addressed, this one is told about it instead.
    expect(html).toContain('where it speaks of no. 14 here, no. 14 reads “you”')
    expect(html).toContain('No. 14 answers by one of five presses: “Fine”, “Fine, but without money”,')
    const told = html.slice(html.lastIndexOf('Asked of no. 14'), html.lastIndexOf('What no. 14 can say'))
    expect(told).toContain('Nothing binds until all have signed.')
    expect(told).not.toMatch(/\byou(r|rselves)?\b/i)
  })

  test('is offered on The line until it is answered, to the invited household alone', async () => {
    const way = `href="/notebook/${world().notebook.id}/welcome"`
    expect(await pageOf('b', 'page.tsx')).toContain(way)
    expect(await pageOf('a', 'page.tsx')).not.toContain(way)
    await answer({ answer: 'no' })
    expect(await pageOf('b', 'page.tsx')).not.toContain(way)
  })
})

describe('fine', () => {
  test('is said in words, leads on to the items to mark, and stands on The line for both', async () => {
    expect(await answer({ answer: 'fine', text: ' We like it. ' })).toEqual(led('/answer'))
    const html = await pageOf('b', 'answer/page.tsx')
    expect(html).toMatch(/No\. 14 answered on .*: fine – “We like it\.”/)
    expect(html).toContain(`href="/notebook/${world().notebook.id}/sign"`)
    for (const household of ['a', 'b'] as const)
      expect(await pageOf(household, 'page.tsx')).toMatch(/No\. 14 answered on .*: fine – “We like it\.”</)
  })
})

describe('fine, but without money', () => {
  test('shows what can stand in its place, and is open for the other while money is asked', async () => {
    await changeDocument(withoutCaps)
    expect(await answer({ answer: 'fine without money' })).toEqual(led('/answer'))
    const html = await pageOf('b', 'answer/page.tsx')
    for (const way of ['/work', '/materials', '/side-by-side', '/shares?limit=nothing#caps'])
      expect(html).toContain(`href="/notebook/${world().notebook.id}${way}"`)
    expect(html).toContain(`${(await figuresOfB()).inMoney} of your part is money`)
    const open = /No\. 14 answered on [^<]*: fine, but without money<\/a>/
    expect(await pageOf('a', 'terms/page.tsx')).toMatch(open)
    expect(await pageOf('b', 'terms/page.tsx')).not.toMatch(open)
    await changeDocument((document) => ({ ...document, caps: { b: '0' } }))
    // A limit holds once the household that it moves money to has marked it.
    expect(await pageOf('a', 'terms/page.tsx')).toMatch(open)
    await markEverything(world().notebook.id, ['a'])
    expect(await pageOf('a', 'terms/page.tsx')).not.toMatch(open)
  })

  test('leads to a proposal that the other bears all of it, and is settled by what all sign afterwards', async () => {
    const { id } = world().notebook
    await settledBooks(id, { contributions: [], books: {} }, new Date('2020-03-01T10:00:00Z'))
    await answer({ answer: 'fine without money' })
    const html = await pageOf('b', 'answer/page.tsx')
    expect(html).toContain(`href="/notebook/${id}/proposals/new?way=one-a">Propose that No. 12 bears all`)
    const open = /No\. 14 answered on [^<]*: fine, but without money<\/a>/
    expect(await pageOf('a', 'terms/page.tsx')).toMatch(open)
    await changeDocument((document) => ({ ...document, title: 'The line once more' }))
    await markEverything(id)
    await signedByAll(id, new Date(Date.now() + 60_000))
    expect(await pageOf('a', 'terms/page.tsx')).not.toMatch(open)
  })

  test('with a limit of nothing, marked by both, is asked for no hours either', async () => {
    await changeDocument(withoutCaps)
    expect(await pageOf('b', 'welcome/page.tsx')).toContain('h are your share; you do')
    await changeDocument((document) => ({ ...document, caps: { b: '0' } }))
    await markEverything(world().notebook.id)
    const html = await pageOf('b', 'welcome/page.tsx')
    expect(html).toContain('at most <span class="figure">$0.00</span>')
    expect(html).not.toMatch(/[1-9][0-9.]* h are your share/)
    expect(await pageOf('b', 'shares/page.tsx')).toContain('; 0.00 h are the share of no. 14')
  })

  test('says how many hours the money would be at the agreed rate', async () => {
    const arrangements = { rates: { plain: { rate: '25.00' } } }
    await changeDocument((document) => ({ ...document, caps: {}, arrangements }))
    await answer({ answer: 'fine without money' })
    const { inMoney } = await figuresOfB()
    const cents = Number(inMoney.replace(/[^0-9]/g, ''))
    const hours = (Math.ceil(cents / 25) / 100).toFixed(2)
    expect(await pageOf('b', 'answer/page.tsx')).toContain(`25.00 USD an hour that is ${hours} hours.`)
  })
})

describe('a question', () => {
  test('is asked beside its item, and is open for the other until it answers it', async () => {
    const { id } = world().notebook
    expect(await answer({ answer: 'a question', text: 'Who mends it?', about: 'item:s1' })).toEqual(
      led('/answer'),
    )
    const [question, ...more] = await messagesOf(id)
    expect([question, more]).toMatchObject([
      { itemKey: 'item:s1', household: 'b', text: 'Who mends it?' },
      [],
    ])
    const open = `href="/notebook/${id}/item/s1#conversation">No. 14 answered on `
    expect(await pageOf('a', 'terms/page.tsx')).toContain(open)
    expect(await pageOf('a', 'page.tsx')).toMatch(/: a question – “Who mends it\?”/)
    browseAs(world(), 'a')
    await sayAboutItem(id, 'item:s1', 'new', { kind: 'remark', text: 'Wait.' })
    expect(await pageOf('a', 'terms/page.tsx')).toContain(open)
    await sayAboutItem(id, 'item:s1', 'new', { kind: 'answer', text: 'Both.', answers: String(question?.id) })
    expect(await pageOf('a', 'terms/page.tsx')).not.toContain(open)
  })

  test('about the whole fence is read and answered on the page of the answer', async () => {
    const { id } = world().notebook
    await answer({ answer: 'a question', text: 'Why now?', about: 'notebook' })
    expect(await pageOf('a', 'answer/page.tsx')).toContain('<p class="message-text">Why now?</p>')
    expect(await pageOf('a', 'terms/page.tsx')).toContain(`href="/notebook/${id}/answer">No. 14 answered on `)
    const [question] = await messagesOf(id, 'notebook')
    browseAs(world(), 'a')
    await sayAboutItem(id, 'notebook', 'new', {
      kind: 'answer',
      text: 'It leans.',
      answers: String(question?.id),
    })
    expect(await pageOf('b', 'answer/page.tsx')).toContain('It leans.')
    expect(await pageOf('a', 'terms/page.tsx')).not.toContain('No. 14 answered on ')
  })

  test('stays open for the other although another answer takes its place', async () => {
    await answer({ answer: 'a question', text: 'Why now?', about: 'notebook' })
    await answer({ answer: 'fine' })
    expect(await pageOf('a', 'terms/page.tsx')).toContain(': a question – “Why now?”</a>')
    expect(await pageOf('a', 'page.tsx')).toMatch(/No\. 14 answered on [^<]*: fine\./)
  })

  test('takes no earlier answer back: both stand for the other until the question is answered', async () => {
    const { id } = world().notebook
    await changeDocument(withoutCaps)
    await answer({ answer: 'fine without money' })
    await answer({ answer: 'a question', text: 'Who mends it?', about: 'notebook' })
    const withoutMoney = /No\. 14 answered on [^<]*: fine, but without money/
    for (const [household, file] of [
      ['a', 'page.tsx'],
      ['b', 'page.tsx'],
      ['a', 'answer/page.tsx'],
      ['a', 'terms/page.tsx'],
    ] as const) {
      const html = await pageOf(household, file)
      expect(html).toMatch(withoutMoney)
      expect(html).toContain(': a question – “Who mends it?”')
    }
    expect(await pageOf('b', 'answer/page.tsx')).toContain('What can stand in the place of money')
    const [question] = await messagesOf(id, 'notebook')
    browseAs(world(), 'a')
    await sayAboutItem(id, 'notebook', 'new', {
      kind: 'answer',
      text: 'We do.',
      answers: String(question?.id),
    })
    const html = await pageOf('a', 'page.tsx')
    expect(html).toMatch(withoutMoney)
    // What changed since the last look quotes it still.
    expect(html).not.toMatch(/answered on [^<]*: a question/)
  })

  test('needs words, and an item that is there', async () => {
    const before = await everyTable()
    for (const [fields, says] of [
      [{ text: '', about: 'notebook' }, 'Your question: needed'],
      [{ text: ' \u0000 ', about: 'notebook' }, 'Your question: needed'],
      [{ text: 'x'.repeat(4_001), about: 'notebook' }, 'at most 4000 characters; this has 4001'],
      [{ text: 'Why?', about: 'item:gone' }, 'What it is about: this item was removed'],
    ] as const)
      expect(refusalOf(await answer({ answer: 'a question', ...fields }))).toContain(says)
    expect(await everyTable()).toEqual(before)
  })
})

describe('not now', () => {
  test('puts the day among the dates of both, moves it when it is said anew, and ends it with another answer', async () => {
    expect(await answer({ answer: 'not now', until: tomorrow() })).toEqual(led('/answer'))
    expect(await datesOf()).toEqual([
      { what: 'Ask no. 14 again about the fence', on: tomorrow(), household: 'a' },
    ])
    expect(await pageOf('a', 'dates/page.tsx')).toContain('Ask no. 14 again about the fence')
    // The day has not come: nothing is open for the other.
    expect(await pageOf('a', 'terms/page.tsx')).not.toContain('No. 14 answered on ')
    const today = new Date().toISOString().slice(0, 10)
    await answer({ answer: 'not now', until: today })
    expect((await datesOf()).map(({ on }) => on)).toEqual([today])
    expect(await pageOf('a', 'terms/page.tsx')).toContain('No. 14 answered on ')
    await answer({ answer: 'fine' })
    expect(await datesOf()).toMatchObject([{ on: today, done: true }])
    await answer({ answer: 'not now', until: tomorrow() })
    expect((await datesOf()).map(({ done }) => done === true)).toEqual([true, false])
  })

  test.each([
    ['', 'The day: needed'],
    ['2027-02-30', 'no day of the calendar'],
    ['2020-01-01', 'it is past'],
    ['2199-01-01', 'at most two years'],
  ])('is refused with the day %j, and nothing is written', async (until, says) => {
    const before = await everyTable()
    expect(refusalOf(await answer({ answer: 'not now', until }))).toContain(says)
    expect(await everyTable()).toEqual(before)
  })
})

describe('no', () => {
  test('means that nothing binds and nothing is asked, and can be changed', async () => {
    expect(await answer({ answer: 'no', text: 'Not with us.' })).toEqual(led('/answer'))
    const html = await pageOf('b', 'answer/page.tsx')
    expect(html).toContain('Nothing binds you, and this notebook asks nothing of you any more.')
    expect(html).toContain('ask locally')
    expect(html).toContain(`href="/notebook/${world().notebook.id}/welcome"`)
    expect(await pageOf('a', 'terms/page.tsx')).not.toContain('No. 14 answered on ')
    expect(await answer({ answer: 'fine' })).toEqual(led('/answer'))
    expect((await newestFirstAnswer(world().notebook.id))?.answer).toBe('fine')
  })
})

test('every answer stays in the history, in words', async () => {
  await answer({ answer: 'no', text: 'Not with us.' })
  await answer({ answer: 'not now', until: tomorrow() })
  await answer({ answer: 'fine' })
  const html = await pageOf('a', 'changes/page.tsx')
  expect(html).toContain(`Answered the invitation: not now, ask again on ${dayWords(tomorrow())}.`)
  expect(html).toContain('Answered the invitation: no. “Not with us.”')
  expect(html).toContain('Answered the invitation: fine.')
})

test('only the invited household answers', async () => {
  const before = await everyTable()
  expect(refusalOf(await answer({ answer: 'fine' }, 'a'))).toContain('Only the invited household answers')
  expect(await everyTable()).toEqual(before)
})
