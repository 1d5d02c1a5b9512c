import { expect, test, vi } from 'vitest'
import { putFileBack, takeAwayFile } from '../../app/notebook/server/storedFileActions.ts'
import { filesOf } from '../../lib/store/storedFiles.ts'
import { everyTable } from './everyTable.ts'
import { aFileOnRecord, putFileBackForm, takeAwayForm } from './givenFiles.ts'
import { outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()
const id = () => world().notebook.id

/** Household a adds a file and takes it away; gives the form that puts it back. */
async function takenAwayByA(): Promise<FormData> {
  await aFileOnRecord(id(), 'a')
  browseAs(world(), 'a')
  const form = await takeAwayForm(id(), 'a')
  await outcomeOf(() => takeAwayFile(id(), {}, form))
  return putFileBackForm(id(), 'a')
}

test('a file that was taken away comes back with its bytes, its name and its caption, and both facts stay on record', async () => {
  const form = await takenAwayByA()
  expect(await filesOf(id())).toEqual([])
  await outcomeOf(() => putFileBack(id(), {}, form))
  const gone = (await filesOf(id(), true)).find(({ removedAt }) => removedAt !== undefined)
  const [back] = await filesOf(id())
  expect(gone).toMatchObject({ removedBy: 'a' })
  expect(back).toMatchObject({
    sha256: gone?.sha256,
    name: gone?.name,
    kind: gone?.kind,
    caption: gone?.caption,
  })
  expect(back?.removedAt).toBeUndefined()
})

test('only who took it away puts it back, and only once', async () => {
  const form = await takenAwayByA()
  browseAs(world(), 'b')
  const before = await everyTable()
  expect(refusalOf(await outcomeOf(() => putFileBack(id(), {}, form)))).toContain(
    'only the household that took',
  )
  expect(await everyTable()).toEqual(before)

  browseAs(world(), 'a')
  await outcomeOf(() => putFileBack(id(), {}, form))
  const after = await everyTable()
  expect(refusalOf(await outcomeOf(() => putFileBack(id(), {}, form)))).toContain('is here already')
  expect(await everyTable()).toEqual(after)
})
