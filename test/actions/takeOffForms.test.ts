import { describe, expect, test, vi } from 'vitest'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { keepBuildUp } from '../../app/notebook/server/buildUpActions.ts'
import type { SaveAnswer } from '../../app/ui/draft/saveAnswer.ts'
import type { Household } from '../../lib/core/people/household.ts'
import type { Part } from '../../lib/forms/parts.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { differences, differenceWords } from '../../lib/words/differences.ts'
import { everyTable } from './everyTable.ts'
import { openedPart } from './givenForms.ts'
import { faultsOf } from './outcome.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

type Entry = Record<string, unknown>

async function save(household: Household, part: Part, edit: (draft: Entry) => Entry): Promise<SaveAnswer> {
  const { id } = world().notebook
  const { draft, base } = await openedPart(id, part)
  browseAs(world(), household)
  return saveNotebookPart(id, part, base, edit(structuredClone(draft)))
}

const ofLine = (edit: (line: Entry) => Entry) => (draft: Entry) => ({ line: edit(draft.line as Entry) })
const faults = (answer: SaveAnswer) => faultsOf({ kind: 'answer', answer })
const keep = (name: unknown, id = 's1') => keepBuildUp(world().notebook.id, id, 'new', { name })

const limit = { limit: '6 ft', from: '24 ft', to: '56 ft', saidBy: 'the permit counter', on: '2027-02-03' }
const piece = {
  what: 'reclaimed pipe',
  shape: 'round',
  outside: '2 3/8 in',
  wall: '0.154 in',
  length: '14 ft',
}

describe('what the line, a section and the pieces say anew', () => {
  test.each<[string, Part, (draft: Entry) => Entry, string]>([
    ['the error of the line', { part: 'line' }, ofLine((line) => ({ ...line, error: '3 in' })), 'line'],
    ['a limit on height', { part: 'line' }, ofLine((line) => ({ ...line, limits: [limit] })), 'line'],
    [
      'wind',
      { part: 'line' },
      ofLine((line) => ({ ...line, site: { wind: { speed: '115', unit: 'mph', exposure: 'B' } } })),
      'line',
    ],
    [
      'a turn at a station',
      { part: 'line' },
      ofLine((line) => {
        const stations = (line.stations as Entry[]).map((station, index) =>
          index === 2 ? { ...station, angle: { degrees: '12', toward: 'a' } } : station,
        )
        return { ...line, stations }
      }),
      'line',
    ],
    [
      'a measured post',
      { part: 'item', id: 's1' },
      (draft) => ({ ...draft, measured: [{ post: '2', at: '8 ft 3 in', why: 'rock' }] }),
      'item:s1',
    ],
  ])('%s is stored as typed, and takes the marks off what it belongs to', async (_what, part, edit, key) => {
    const { id } = world().notebook
    await markEverything(id)
    const { draft } = await openedPart(id, part)
    expect(await save('b', part, edit)).toMatchObject({ saved: true })
    expect((await openedPart(id, part)).draft).toEqual(edit(draft))
    expect((await marksOf(id)).some(({ itemKey }) => itemKey === key)).toBe(false)
    expect((await marksOf(id)).length).toBeGreaterThan(0)
  })

  test('pieces at hand are stored, take no mark off, and stand on the record', async () => {
    const { id } = world().notebook
    await markEverything(id)
    const marks = await marksOf(id)
    expect(
      await save('a', { part: 'inventory' }, () => ({ inventory: [piece, { ...piece, length: '9 ft' }] })),
    ).toMatchObject({ saved: true })
    expect((await documentOf(id)).inventory).toEqual([piece, { ...piece, length: '9 ft' }])
    expect(await marksOf(id)).toEqual(marks)
    const [change] = await changesOf(id, { limit: 1 })
    expect(change).toMatchObject({ itemKey: 'inventory', household: 'a' })
    expect(differences(change?.before, change?.after).map(differenceWords)).toContainEqual(
      expect.stringMatching(/^Row 2, length: .*9 ft now$/),
    )
  })

  test('groups that were unfolded and left empty leave the file as it was', async () => {
    await save(
      'a',
      { part: 'line' },
      ofLine(({ error: _error, limits: _limits, site: _site, ...line }) => line),
    )
    const before = await documentOf(world().notebook.id)
    const answer = await save(
      'a',
      { part: 'line' },
      ofLine((line) => ({
        ...line,
        error: '',
        limits: [],
        site: { wind: { speed: '', unit: '' }, soil: { what: '', doubled: false }, frost: { depth: '' } },
      })),
    )
    expect(answer).toMatchObject({ saved: true, note: 'Nothing had changed.' })
    expect(await documentOf(world().notebook.id)).toEqual(before)
  })

  test.each<[string, Part, (draft: Entry) => Entry, string, string]>([
    [
      'an error without a unit',
      { part: 'line' },
      ofLine((line) => ({ ...line, error: '5' })),
      'line.error',
      'has no unit: write',
    ],
    [
      'a limit in words',
      { part: 'line' },
      ofLine((line) => ({ ...line, limits: [{ ...limit, limit: 'six feet' }] })),
      'line.limits[0].limit',
      '"six feet" can\'t be read as a length',
    ],
    [
      'a day that is none',
      { part: 'line' },
      ofLine((line) => ({ ...line, limits: [{ ...limit, on: '2027-02-30' }] })),
      'line.limits[0].on',
      '"2027-02-30"',
    ],
    [
      'a wind in words',
      { part: 'line' },
      ofLine((line) => ({ ...line, site: { wind: { speed: 'strong' } } })),
      'line.site.wind.speed',
      '"strong" can\'t be read as a number',
    ],
    [
      'a turn below zero',
      { part: 'line' },
      ofLine((line) => ({ ...line, stations: [{ at: '0 ft', angle: { degrees: '-5' } }] })),
      'line.stations[0].angle.degrees',
      '"-5" can\'t be read as a number',
    ],
    [
      'a piece without a unit',
      { part: 'inventory' },
      () => ({ inventory: [piece, { ...piece, length: '12' }] }),
      'inventory[1].length',
      'has no unit: write',
    ],
    [
      'a measured place below zero',
      { part: 'item', id: 's1' },
      (draft) => ({ ...draft, measured: [{ post: '1', at: '-2 ft' }] }),
      'measured[0].at',
      '"-2 ft" is negative',
    ],
  ])('%s is refused at its field, and nothing is changed', async (_what, part, edit, path, message) => {
    const before = await everyTable()
    expect(faults(await save('a', part, edit))).toEqual({ [path]: expect.stringContaining(message) })
    expect(await everyTable()).toEqual(before)
  })
})

describe('a build-up', () => {
  test('is kept as it is saved, under its name and for whoever keeps it', async () => {
    const { id } = world().notebook
    browseAs(world(), 'b')
    expect(await keep('  Our pipe and mesh ')).toMatchObject({
      saved: true,
      note: expect.stringContaining('“Our pipe and mesh”'),
    })
    const { buildUps, sections } = await documentOf(id)
    const [section] = sections as Entry[]
    expect(buildUps).toEqual([
      {
        name: 'Our pipe and mesh',
        household: 'b',
        section: { ...(section?.buildUp as Entry), name: 'Our pipe and mesh' },
      },
    ])
  })

  test.each<[string, unknown, string]>([
    ['no name', ' ', 'Needed: a name'],
    ['something that is no text', 7, 'Needed: a name'],
    ['the name of one that is kept', 'OUR PIPE and mesh', 'is already the name of another build-up'],
    ['the name of a ready one', 'Farm wire', 'is already the name of a ready build-up'],
  ])('is refused with %s, and nothing is changed', async (_what, name, message) => {
    browseAs(world(), 'a')
    await keep('Our pipe and mesh')
    const before = await everyTable()
    expect(faults(await keep(name))).toEqual({ name: expect.stringContaining(message) })
    expect(await everyTable()).toEqual(before)
  })

  test('is refused where there is none to keep, or the item is gone', async () => {
    browseAs(world(), 'a')
    await save('a', { part: 'item', id: 's1' }, ({ buildUp: _none, ...draft }) => draft)
    const before = await everyTable()
    expect(faults(await keep('Nothing'))).toEqual({ '': expect.stringContaining('choose a build-up') })
    expect(await keep('Nothing', 's99')).toMatchObject({ gone: true })
    expect(await keep('Nothing', 'c1')).toMatchObject({ gone: true })
    expect(await everyTable()).toEqual(before)
  })

  test('that is kept can be renamed and removed by either household, but not to a name that is there', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    await keep('Our pipe and mesh')
    await keep('The other one', 's2')
    const renamed = (first: string) => (draft: Entry) => ({
      buildUps: (draft.buildUps as Entry[]).map((one, index) =>
        index === 0 ? { ...one, name: first } : one,
      ),
    })
    const before = await everyTable()
    expect(faults(await save('b', { part: 'buildUps' }, renamed('the other one')))).toEqual({
      'buildUps[1].name': expect.stringContaining('is already the name of another build-up'),
    })
    expect(faults(await save('b', { part: 'buildUps' }, renamed('')))).toEqual({
      'buildUps[0].name': expect.stringContaining('Needed: a name'),
    })
    expect(await everyTable()).toEqual(before)

    expect(await save('b', { part: 'buildUps' }, renamed('Pipe, low'))).toMatchObject({ saved: true })
    expect(
      await save('b', { part: 'buildUps' }, (draft) => ({ buildUps: [(draft.buildUps as Entry[])[0]] })),
    ).toMatchObject({ saved: true })
    expect(((await documentOf(id)).buildUps as Entry[]).map(({ name }) => name)).toEqual(['Pipe, low'])
  })
})
