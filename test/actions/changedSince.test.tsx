import { beforeEach, describe, expect, test, vi } from 'vitest'
import { enterContribution, takeEntryBack } from '../../app/notebook/server/bookActions.ts'
import { ChangedSince } from '../../app/notebook/server/ChangedSince.tsx'
import { haveSeenChanges } from '../../app/notebook/server/lookActions.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { declineTheirs } from '../../app/notebook/server/proposalReplyActions.ts'
import { saveThing } from '../../app/notebook/server/thingActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { answerFirst } from '../../lib/store/firstAnswers.ts'
import { sayNeedsApart } from '../../lib/store/heldBack.ts'
import { sayBesideItem } from '../../lib/store/messages.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { anEntry, leftover, withBooks } from './givenBooks.ts'
import { aProposal, proposalForm, seenForm, takeBackForm } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, documentOf, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

const say = (household: Household, text: string) =>
  sayBesideItem({
    notebookId: world().notebook.id,
    itemKey: 'line',
    household,
    kind: 'remark',
    text,
    at: new Date('2027-03-01T19:00:00Z'),
  })

async function shownTo(household: Household): Promise<string> {
  browseAs(world(), household)
  const part = await ChangedSince({ opened: await openNotebook(world().notebook.id) })
  return part === null ? '' : shownMarkup(part)
}

beforeEach(async () => {
  // A cap that is reached pauses buying, which is tested with the caps.
  await withBooks(world().notebook.id, ({ caps: _none, ...document }) => document)
  for (const household of ['a', 'b'] as const) {
    browseAs(world(), household)
    const form = await seenForm(world().notebook.id)
    await outcomeOf(() => haveSeenChanges(world().notebook.id, {}, form))
  }
})

test('each household is told what the other did since it last looked, and nothing of its own', async () => {
  await say('b', 'The pin is under the hedge.')
  await say('a', 'We found it.')
  const told = await shownTo('a')
  expect(told).toContain('The pin is under the hedge.')
  expect(told).not.toContain('We found it.')
  expect(await shownTo('b')).toContain('We found it.')
})

test('what was seen is told no more, and what came meanwhile still is', async () => {
  await say('b', 'First.')
  browseAs(world(), 'a')
  const form = await seenForm(world().notebook.id)
  await say('b', 'Second.')
  await outcomeOf(() => haveSeenChanges(world().notebook.id, {}, form))
  const told = await shownTo('a')
  expect(told).toContain('Second.')
  expect(told).not.toContain('First.')
})

describe('what was entered in the book', () => {
  const enter = (household: Household, draft: Record<string, unknown>) => {
    browseAs(world(), household)
    return outcomeOf(() => enterContribution(world().notebook.id, 'new', anEntry({ household, ...draft })))
  }
  const indexOfNewest = async () =>
    ((await documentOf(world().notebook.id)).contributions as readonly unknown[]).length - 1

  test('is told with its words and its amount, and leads to the entry and from it to its item', async () => {
    await enter('b', { amount: '12.50', for: 's2', note: 'ties' })
    const told = await shownTo('a')
    expect(told).toContain('Entered a receipt: ties, $12.50.')
    expect(told).toContain('Along the gardens')
    expect(told).toContain(`/money#book-entry-${await indexOfNewest()}"`)
    expect(await shownTo('b')).toBe('')
  })

  test('is told of hours with the hours, and of a payment that it waits to be confirmed', async () => {
    await enter('b', { kind: 'hours', amount: '', hours: '3', rate: '25', note: 'dug' })
    expect(await shownTo('a')).toContain('Entered hours worked: dug, 3 h, $75.00.')
    await enter('b', { kind: 'transfer', amount: '152.00', means: 'by bank' })
    expect(await shownTo('a')).toContain(
      'Entered a payment to the other household: $152.00, by bank. It counts once it is confirmed.',
    )
  })

  test('is told when it is taken back, with the reason', async () => {
    await enter('b', { amount: '12.50', note: 'ties' })
    const form = await takeBackForm(world().notebook.id, await indexOfNewest())
    await outcomeOf(() => takeEntryBack(world().notebook.id, {}, form))
    expect(await shownTo('a')).toContain('Took back a receipt: ties, $12.50. “entered twice”')
  })

  test('is told in one line where much was entered, and leads to the whole of it', async () => {
    for (const note of ['one', 'two', 'three', 'four']) await enter('b', { note })
    const told = await shownTo('a')
    expect(told).toContain('Entered a receipt: four, $12.50.')
    expect(told).not.toContain('Entered a receipt: three')
    expect(told).toMatch(/changes\?kind=books"[^>]*>And 3 more in the books</)
  })

  test('that was refused is not told', async () => {
    await enter('b', { amount: 'a lot' })
    expect(await shownTo('a')).toBe('')
  })
})

test('a proposal and its answer are told with their items, and lead to the proposal', async () => {
  await aProposal(world().notebook.id, 'b', 's2')
  const told = await shownTo('a')
  expect(told).toContain('Made proposal 1 for Along the gardens.')
  expect(told).toContain(`/notebook/${world().notebook.id}/proposals#proposal-1"`)
  browseAs(world(), 'a')
  const form = await proposalForm(world().notebook.id, 'b', { text: 'Too dear.' })
  await outcomeOf(() => declineTheirs(world().notebook.id, {}, form))
  expect(await shownTo('b')).toContain('Declined proposal 1. “Too dear.”')
})

test('needs, a first answer and a thing are told, each with a way to it', async () => {
  const { id } = world().notebook
  const at = new Date('2027-03-02T19:00:00Z')
  await sayNeedsApart({ notebookId: id, household: 'b', content: '[]', at })
  expect(await shownTo('a')).toMatch(/\/needs"[^>]*>Needs<.*Wrote down its own needs\./)
  await answerFirst({
    notebookId: id,
    answer: { household: 'b', answer: 'fine', text: 'Good.', at },
    change: (document) => ({ document, changed: [], kept: 'written' }),
  })
  expect(await shownTo('a')).toContain('Answered the invitation: fine. “Good.”')
  browseAs(world(), 'b')
  await outcomeOf(() => saveThing(id, undefined, 'new', leftover))
  const told = await shownTo('a')
  expect(told).toMatch(/\/books#things"[^>]*>Along the gardens</)
  expect(told).toContain('Wrote down a tool, a leftover or salvage: mesh, 12 ft, $20.00.')
})

test('nothing stands there where the other household did nothing', async () => {
  expect(await shownTo('a')).toBe('')
})
