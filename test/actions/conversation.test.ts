import type { ReactNode } from 'react'
import { describe, expect, test, vi } from 'vitest'
import { moveNotebookItem, removeNotebookItem } from '../../app/notebook/server/actions.ts'
import { sayAboutItem } from '../../app/notebook/server/messageActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { messagesOf } from '../../lib/store/messages.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { everyTable } from './everyTable.ts'
import { formOf, openedPart } from './givenForms.ts'
import { faultsOf, outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
// Forms ask the router where they are, which only Next can say; nothing here is pressed.
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()

function say(household: Household, draft: object, itemKey = 'item:s1') {
  browseAs(world(), household)
  return outcomeOf(() => sayAboutItem(world().notebook.id, itemKey, 'new', draft))
}

async function pageOf(file: string, params: object = {}): Promise<string> {
  const page = (await everyAddress()).get(`app/notebook/[notebookId]/${file}#default`) as AnyFunction
  const end = await outcomeOf(() =>
    page({ params: Promise.resolve({ notebookId: world().notebook.id, ...params }) }),
  )
  if (end.kind !== 'answer') throw new Error(end.kind)
  return shownMarkup(end.answer as ReactNode)
}

const item = { itemId: 's1' }
const saidOnce = { kind: 'answer', answer: { saved: true, base: 'new', note: 'Said.' } }
const waiting = '1 objection not answered'

describe('what is said beside an item', () => {
  test('is read by both, and an objection is counted until the other household answers', async () => {
    const { id } = world().notebook
    expect(await say('b', { kind: 'objection', text: ' Too near\r\nthe hazel. ' })).toEqual(saidOnce)
    browseAs(world(), 'a')
    expect(await pageOf('item/[itemId]/page.tsx', item)).toContain('Too near\nthe hazel.')
    expect(await pageOf('page.tsx')).toContain(waiting)
    // Every page says that it is open, and leads to it.
    expect(await pageOf('money/page.tsx')).toContain(`href="/notebook/${id}/item/s1#conversation">${waiting}`)
    const [objection] = await messagesOf(id)
    await say('a', { kind: 'answer', text: 'We move it.', answers: String(objection?.id) })
    expect((await messagesOf(id)).map(({ household, answers }) => [household, answers])).toEqual([
      ['b', undefined],
      ['a', objection?.id],
    ])
    browseAs(world(), 'b')
    expect(await pageOf('item/[itemId]/page.tsx', item)).toContain('We move it.')
    expect(await pageOf('page.tsx')).not.toContain(waiting)
  })

  test.each([
    ['line', 'line/page.tsx'],
    ['parties', 'parties/page.tsx'],
    ['caps', 'shares/page.tsx'],
    ['terms', 'terms/page.tsx'],
  ])('stands on the page of %s, and nowhere else', async (key, file) => {
    const end = await say('a', { kind: 'proposal', text: 'A word about it.' }, key)
    expect(end).toEqual(saidOnce)
    expect(await pageOf(file)).toContain('A word about it.')
    expect(await pageOf('item/[itemId]/page.tsx', item)).not.toContain('A word about it.')
  })

  test('is shown as it was typed, not as markup', async () => {
    await say('b', { kind: 'remark', text: '<img src=x onerror=alert(1)>' })
    const html = await pageOf('item/[itemId]/page.tsx', item)
    expect(html).toContain('&lt;img src=x')
    expect(html).not.toContain('<img src=x')
  })

  test.each<[string, object, string, string]>([
    ['with nothing said', { kind: 'remark', text: ' \n ' }, 'text', 'Needed: what you want to say.'],
    ['with no text', { kind: 'remark', text: ['x'] }, 'text', 'Needed'],
    [
      'too long',
      { kind: 'remark', text: 'x'.repeat(4001) },
      'text',
      'At most 4000 characters; this has 4001.',
    ],
    ['of no such kind', { kind: 'constructor', text: 'x' }, 'kind', 'Needed: choose one'],
    [
      'as an answer to nothing',
      { kind: 'answer', text: 'x', answers: '' },
      'answers',
      'choose which message',
    ],
    [
      'as an answer to what was never said',
      { kind: 'answer', text: 'x', answers: '99' },
      'answers',
      'choose which',
    ],
    ['as an answer to no number', { kind: 'answer', text: 'x', answers: '1e0' }, 'answers', 'choose which'],
  ])('is refused %s, at its field', async (_how, draft, path, message) => {
    await say('b', { kind: 'remark', text: 'First.' })
    const before = await everyTable()
    const faults = faultsOf(await say('a', draft))
    expect(Object.keys(faults)).toEqual([path])
    expect(faults[path]).toContain(message)
    expect(await everyTable()).toEqual(before)
  })

  test('takes 4000 characters', async () => {
    expect(await say('a', { kind: 'remark', text: 'x'.repeat(4000) })).toEqual(saidOnce)
  })

  test('is answered by the other household alone, and beside the same item', async () => {
    await say('b', { kind: 'objection', text: 'No.' })
    const [objection] = await messagesOf(world().notebook.id)
    const answer = { kind: 'answer', text: 'Yes.', answers: String(objection?.id) }
    expect(faultsOf(await say('b', answer))).toHaveProperty('answers')
    expect(faultsOf(await say('a', answer, 'line'))).toHaveProperty('answers')
    expect(await say('a', answer)).toEqual(saidOnce)
  })

  test('is refused beside an item that is not there, or is not there any more', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const { base } = await openedPart(id, { part: 'item', id: 'g4' })
    await outcomeOf(() => removeNotebookItem(id, 'g4', base))
    const before = await everyTable()
    for (const key of ['item:g4', 'item:nothing', 'checks', 'constructor']) {
      const end = await say('a', { kind: 'remark', text: 'x' }, key)
      expect([key, end]).toEqual([key, { kind: 'answer', answer: expect.objectContaining({ gone: true }) }])
    }
    expect(await everyTable()).toEqual(before)
  })

  test('stays with its item when that is moved', async () => {
    const { id } = world().notebook
    await say('b', { kind: 'remark', text: 'Stays here.' })
    await outcomeOf(() => moveNotebookItem(id, {}, formOf({ id: 's1', way: 'down' })))
    expect(await pageOf('item/[itemId]/page.tsx', item)).toContain('Stays here.')
  })
})
