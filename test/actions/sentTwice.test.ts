import { describe, expect, test, vi } from 'vitest'
import { addNotebookItem } from '../../app/notebook/server/actions.ts'
import { enterContribution } from '../../app/notebook/server/bookActions.ts'
import { sayAboutItem } from '../../app/notebook/server/messageActions.ts'
import { sendProposal } from '../../app/notebook/server/proposalActions.ts'
import { saveThing } from '../../app/notebook/server/thingActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { messagesOf } from '../../lib/store/messages.ts'
import { proposalsOf } from '../../lib/store/proposals.ts'
import { everyTable } from './everyTable.ts'
import { anEntry, todaysDay } from './givenBooks.ts'
import { aNewSection, proposingForm } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, documentOf, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()
const id = () => world().notebook.id
const halves = { together: { principle: 'equal' } }
const borrowed = () => ({ kind: 'borrowed', what: 'post driver', from: 'a cousin', on: todaysDay() })
const listOf = (list: unknown) => (Array.isArray(list) ? list.length : 0)

/** What can be sent anew, and how many of it there are. */
const sendings = [
  {
    what: 'an entry in the book',
    send: async (again: boolean, base = 'new 0') =>
      enterContribution(id(), base, anEntry({ household: 'a' }), again),
    count: async () => listOf((await documentOf(id())).contributions),
  },
  {
    what: 'a section',
    send: async (again: boolean) => addNotebookItem(id(), 'section', 'new', aNewSection, again),
    count: async () => listOf((await documentOf(id())).sections),
  },
  {
    what: 'something said beside an item',
    send: async (again: boolean) =>
      sayAboutItem(id(), 'item:s1', 'new', { kind: 'remark', text: 'The hazel stays.' }, again),
    count: async () => (await messagesOf(id())).length,
  },
  {
    what: 'a borrowed tool',
    send: async (again: boolean) => saveThing(id(), undefined, 'new', borrowed(), again),
    count: async () => listOf(((await documentOf(id())).books as { things?: unknown } | undefined)?.things),
  },
  {
    what: 'a proposal',
    send: async (again: boolean) => {
      const { base, draft } = await proposingForm(id())
      return sendProposal(
        id(),
        0,
        base,
        { ...draft, manner: 'one', share: halves, text: 'By halves.' },
        again,
      )
    },
    count: async () => (await proposalsOf(id())).length,
  },
] as const

describe.each(sendings)('$what that is sent again because no answer came', ({ send, count }) => {
  test('is there once where it had arrived, and the answer is as if it had just come', async () => {
    browseAs(world(), 'a')
    const before = await count()
    const first = await outcomeOf(() => send(false))
    const stored = await everyTable()
    expect(await count()).toBe(before + 1)

    expect(await outcomeOf(() => send(true))).toEqual(first)

    expect(await everyTable()).toEqual(stored)
  })

  test('is put down where it had not arrived', async () => {
    browseAs(world(), 'a')
    const before = await count()
    await outcomeOf(() => send(true))
    expect(await count()).toBe(before + 1)
  })
})

describe('what is meant twice', () => {
  test('an equal entry from before the form was opened is no second sending', async () => {
    browseAs(world(), 'a')
    await outcomeOf(() => enterContribution(id(), 'new 0', anEntry({ household: 'a' })))
    const before = listOf((await documentOf(id())).contributions)
    await outcomeOf(() => enterContribution(id(), `new ${before}`, anEntry({ household: 'a' }), true))
    expect(listOf((await documentOf(id())).contributions)).toBe(before + 1)
  })

  test('the same words of the other household are their own', async () => {
    const say = (household: Household, again: boolean) => {
      browseAs(world(), household)
      return outcomeOf(() => sayAboutItem(id(), 'item:s1', 'new', { kind: 'remark', text: 'Agreed.' }, again))
    }
    await say('a', false)
    await say('b', true)
    expect((await messagesOf(id())).map(({ household }) => household)).toEqual(['a', 'b'])
  })
})
