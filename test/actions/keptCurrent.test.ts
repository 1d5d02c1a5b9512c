import { beforeEach, describe, expect, test, vi } from 'vitest'
import { GET } from '../../app/notebook/[notebookId]/live/route.ts'
import { leave } from '../../app/notebook/server/linkActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { sayBesideItem } from '../../lib/store/messages.ts'
import { openBrowser } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, strangers, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

type Stands = { pulse: string; by?: Household; otherIsHere: boolean }

/** Opens a page's line to the server, as this browser's household. */
async function listen(at: string) {
  const page = new AbortController()
  const request = new Request(`http://localhost:3000/notebook/x/live?at=${encodeURIComponent(at)}`, {
    signal: page.signal,
  })
  const response = await GET(request, { params: Promise.resolve({ notebookId: world().notebook.id }) })
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader()
  if (reader === undefined) throw new Error('the line has no body')
  let heard = ''
  const next = async (): Promise<Stands | undefined> => {
    for (;;) {
      const end = heard.indexOf('\n\n')
      if (end >= 0) {
        const event = heard.slice(0, end)
        heard = heard.slice(end + 2)
        const data = /^data: (.*)$/m.exec(event)?.[1]
        if (data !== undefined) return JSON.parse(data) as Stands
        continue
      }
      const { value, done } = await reader.read()
      if (done) return undefined
      heard += value
    }
  }
  return { response, next, close: () => page.abort() }
}

const say = (household: Household) =>
  sayBesideItem({
    notebookId: world().notebook.id,
    itemKey: 'line',
    household,
    kind: 'remark',
    text: 'Seen.',
    at: new Date(),
  })

describe('a page that is open', () => {
  beforeEach(() => browseAs(world(), 'a'))

  test('is told what the other household did, and by whom', async () => {
    const line = await listen('line')
    expect(line.response.headers.get('content-type')).toContain('text/event-stream')
    expect(line.response.headers.get('cache-control')).toContain('no-transform')
    const before = await line.next()
    await say('b')
    const after = await line.next()
    expect(after?.pulse).not.toBe(before?.pulse)
    expect(after?.by).toBe('b')
    line.close()
  })

  test('is told while the other household has the same page open, and when it has not any more', async () => {
    const mine = await listen('item/s1')
    expect((await mine.next())?.otherIsHere).toBe(false)
    browseAs(world(), 'b')
    const elsewhere = await listen('item/s2')
    const here = await listen('item/s1')
    expect((await here.next())?.otherIsHere).toBe(true)
    expect((await elsewhere.next())?.otherIsHere).toBe(false)
    expect((await mine.next())?.otherIsHere).toBe(true)
    here.close()
    expect((await mine.next())?.otherIsHere).toBe(false)
    mine.close()
    elsewhere.close()
  })

  test('of one household in two browsers is not taken for the other household', async () => {
    const one = await listen('item/s1')
    const two = await listen('item/s1')
    expect((await one.next())?.otherIsHere).toBe(false)
    expect((await two.next())?.otherIsHere).toBe(false)
    one.close()
    two.close()
  })

  test('is told nothing any more once its browser has left the notebook', async () => {
    const line = await listen('')
    await line.next()
    await outcomeOf(() => leave(world().notebook.id, {}, new FormData()))
    await say('b')
    expect(await line.next()).toBeUndefined()
  })
})

test('nobody but its households hears anything of a notebook', async () => {
  const before = await everyTable({ withDoor: true })
  for (const { asks } of strangers) {
    const notebookId = asks(world())
    const request = new Request('http://localhost:3000/notebook/x/live')
    const end = await outcomeOf(() => GET(request, { params: Promise.resolve({ notebookId }) }))
    expect(end.kind).toBe('not found')
  }
  openBrowser()
  expect(await everyTable({ withDoor: true })).toEqual(before)
})
