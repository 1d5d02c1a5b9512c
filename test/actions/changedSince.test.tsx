import { renderToStaticMarkup } from 'react-dom/server'
import { beforeEach, expect, test, vi } from 'vitest'
import { ChangedSince } from '../../app/notebook/server/ChangedSince.tsx'
import { haveSeenChanges } from '../../app/notebook/server/lookActions.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { sayBesideItem } from '../../lib/store/messages.ts'
import { seenForm } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, worldForEachTest } from './world.ts'

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
  return part === null ? '' : renderToStaticMarkup(part)
}

beforeEach(async () => {
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

test('nothing stands there where the other household did nothing', async () => {
  expect(await shownTo('a')).toBe('')
})
