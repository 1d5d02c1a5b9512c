import { describe, expect, test } from 'vitest'
import { changesOf } from '../../lib/store/changes.ts'
import { marksOf, setMark } from '../../lib/store/marks.ts'
import { createNotebook, editNotebook, findNotebook, type ItemChange } from '../../lib/store/notebooks.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const evening = new Date('2025-06-01T18:00:00.123Z')
const later = new Date('2025-06-01T19:30:00Z')

async function start(document = '{"title":"Fence"}'): Promise<string> {
  return (await createNotebook({ document, example: false, at: evening })).id
}

async function mark(id: string, household: 'a' | 'b', itemKey: string): Promise<void> {
  const fingerprint = `${itemKey} as it stood`
  await setMark({
    id,
    household,
    itemKey,
    fingerprint,
    at: evening,
    currentFingerprint: () => fingerprint,
  })
}

function changed(itemKey: string, previousKey?: string): ItemChange {
  return { itemKey, before: 1, after: 2, ...(previousKey === undefined ? {} : { previousKey }) }
}

describe('a notebook', () => {
  test('is found as it was started, under an address that cannot be guessed', async () => {
    const id = await start('{"title":"Zaun – Łąka ⅜"}')
    expect(id).toMatch(/^[A-Za-z0-9_-]{22}$/)
    expect(await findNotebook(id)).toEqual({
      id,
      document: '{"title":"Zaun – Łąka ⅜"}',
      edit: 0,
      example: false,
      createdAt: evening,
      updatedAt: evening,
    })
  })

  test('that was never started is not found', async () => {
    await start()
    expect(await findNotebook('AAAAAAAAAAAAAAAAAAAAAA')).toBeUndefined()
  })
})

describe('an edit', () => {
  test('saves the document, counts up and gives back what it kept', async () => {
    const id = await start()
    const kept = await editNotebook({
      id,
      household: 'a',
      at: later,
      change: (document) => ({ document: `${document} `, changed: [], kept: 'saved' }),
    })
    expect(kept).toBe('saved')
    expect(await findNotebook(id)).toMatchObject({
      document: '{"title":"Fence"} ',
      edit: 1,
      createdAt: evening,
      updatedAt: later,
    })
  })

  test('that is refused writes nothing', async () => {
    const id = await start()
    await mark(id, 'a', 'line')
    const before = await findNotebook(id)
    const kept = await editNotebook({
      id,
      household: 'a',
      at: later,
      change: () => ({ refused: 'problems' }),
    })
    expect(kept).toBe('problems')
    expect(await findNotebook(id)).toEqual(before)
    expect(await marksOf(id)).toHaveLength(1)
    expect(await changesOf(id)).toEqual([])
  })

  test('that leaves the document as it was writes nothing', async () => {
    const id = await start()
    const before = await findNotebook(id)
    await editNotebook({
      id,
      household: 'a',
      at: later,
      change: (document) => ({ document, changed: [], kept: 'same' }),
    })
    expect(await findNotebook(id)).toEqual(before)
  })

  test('that names a changed item but changes nothing is a mistake of the program, and writes nothing', async () => {
    const id = await start()
    await mark(id, 'b', 'line')
    const editing = editNotebook({
      id,
      household: 'a',
      at: later,
      change: (document) => ({ document, changed: [changed('line')], kept: '' }),
    })
    await expect(editing).rejects.toThrow('cannot have changed an item')
    expect(await marksOf(id)).toHaveLength(1)
    expect(await changesOf(id)).toEqual([])
  })

  test('takes the marks of both households off what it changed, under its old key too, and off nothing else', async () => {
    const id = await start()
    for (const itemKey of ['line', 'section:1', 'section:2', 'gate:1']) {
      await mark(id, 'a', itemKey)
      await mark(id, 'b', itemKey)
    }
    const elsewhere = await start()
    await mark(elsewhere, 'a', 'line')
    await editNotebook({
      id,
      household: 'a',
      at: later,
      change: () => ({
        document: '{"title":"New"}',
        changed: [changed('line'), changed('section:9', 'section:1')],
        kept: undefined,
      }),
    })
    expect((await marksOf(id)).map((kept) => `${kept.itemKey} ${kept.household}`)).toEqual([
      'gate:1 a',
      'gate:1 b',
      'section:2 a',
      'section:2 b',
    ])
    expect(await marksOf(elsewhere)).toHaveLength(1)
  })

  test('that fails halfway leaves document, marks and record as they were', async () => {
    const id = await start()
    await mark(id, 'a', 'line')
    const before = await findNotebook(id)
    const cyclic: { self?: unknown } = {}
    cyclic.self = cyclic
    const editing = editNotebook({
      id,
      household: 'a',
      at: later,
      change: () => ({
        document: '{"title":"New"}',
        changed: [changed('line'), { itemKey: 'terms', before: null, after: cyclic }],
        kept: undefined,
      }),
    })
    await expect(editing).rejects.toThrow(/circular/)
    expect(await findNotebook(id)).toEqual(before)
    expect(await marksOf(id)).toHaveLength(1)
    expect(await changesOf(id)).toEqual([])
  })

  test('of a notebook that is not there throws', async () => {
    const editing = editNotebook({
      id: 'AAAAAAAAAAAAAAAAAAAAAA',
      household: 'a',
      at: later,
      change: () => ({ document: '{}', changed: [], kept: undefined }),
    })
    await expect(editing).rejects.toThrow()
  })

  test('works on what the other household has just written: 20 edits at once, none lost', async () => {
    const id = await start('[]')
    await Promise.all(
      Array.from({ length: 20 }, (_, index) =>
        editNotebook({
          id,
          household: index % 2 === 0 ? 'a' : 'b',
          at: later,
          change: (document) => ({
            document: JSON.stringify([...(JSON.parse(document) as number[]), index]),
            changed: [changed('line')],
            kept: undefined,
          }),
        }),
      ),
    )
    const after = await findNotebook(id)
    const written = JSON.parse(after?.document ?? '[]') as number[]
    expect(written.sort((one, other) => one - other)).toEqual(Array.from({ length: 20 }, (_, index) => index))
    expect(after?.edit).toBe(20)
    expect((await changesOf(id)).map((change) => change.edit)).toEqual(
      Array.from({ length: 20 }, (_, index) => 20 - index),
    )
  })
})
