import { describe, expect, test } from 'vitest'
import { changesOf, latestChanges } from '../../lib/store/changes.ts'
import { createNotebook, editNotebook, type ItemChange } from '../../lib/store/notebooks.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2025-06-01T18:00:00Z')

async function notebookWith(...edits: readonly (readonly ItemChange[])[]): Promise<string> {
  const { id } = await createNotebook({ document: '0', example: false, at })
  for (const changed of edits) {
    await editNotebook({
      id,
      household: 'b',
      at,
      change: (document) => ({ document: String(Number(document) + 1), changed, kept: undefined }),
    })
  }
  return id
}

function change(itemKey: string, after: unknown, previousKey?: string): ItemChange {
  return { itemKey, before: null, after, ...(previousKey === undefined ? {} : { previousKey }) }
}

async function history(id: string, itemKey: string): Promise<unknown[]> {
  return (await changesOf(id, { itemKey })).map((entry) => entry.after)
}

describe('the changes on record', () => {
  test('come newest first, with what was and what is', async () => {
    const id = await notebookWith(
      [{ itemKey: 'line', before: undefined, after: { start: '0' } }],
      [{ itemKey: 'line', before: { start: '0' }, after: null }],
    )
    const [newest, oldest] = await changesOf(id)
    expect(newest).toEqual({
      id: newest?.id,
      edit: 2,
      kind: 'edit',
      at,
      household: 'b',
      itemKey: 'line',
      before: { start: '0' },
      after: null,
    })
    expect(oldest).toMatchObject({ edit: 1, before: null, after: { start: '0' } })
  })

  test('are only those of the notebook asked for', async () => {
    const id = await notebookWith([change('line', 1)])
    await notebookWith([change('line', 2)])
    expect((await changesOf(id)).map((entry) => entry.after)).toEqual([1])
  })

  test('stop at the limit asked for, for all items and for one', async () => {
    const id = await notebookWith([change('line', 1)], [change('terms', 2)], [change('line', 3)])
    expect((await changesOf(id, { limit: 2 })).map((entry) => entry.after)).toEqual([3, 2])
    expect((await changesOf(id, { itemKey: 'line', limit: 1 })).map((entry) => entry.after)).toEqual([3])
  })
})

describe('the history of one item', () => {
  test('leaves other items out', async () => {
    const id = await notebookWith([change('line', 1), change('terms', 2)], [change('line', 3)])
    expect(await history(id, 'line')).toEqual([3, 1])
  })

  test('follows its former keys, one after another', async () => {
    const id = await notebookWith(
      [change('section:north', 1)],
      [change('section:creek', 2, 'section:north')],
      [change('section:barn', 3, 'section:creek')],
      [change('section:barn', 4)],
    )
    expect(await history(id, 'section:barn')).toEqual([4, 3, 2, 1])
  })

  test('leaves out what its former key named afterwards', async () => {
    const id = await notebookWith(
      [change('section:1', 'old')],
      [change('section:2', 'renamed', 'section:1')],
      [change('section:1', 'another section')],
    )
    expect(await history(id, 'section:2')).toEqual(['renamed', 'old'])
    expect(await history(id, 'section:1')).toEqual(['another section', 'old'])
  })

  test('leaves out what its key named before it got it', async () => {
    const id = await notebookWith(
      [change('section:2', 'another section')],
      [change('section:1', 'old')],
      [change('section:2', null)],
      [change('section:2', 'renamed', 'section:1')],
    )
    expect(await history(id, 'section:2')).toEqual(['renamed', 'old'])
  })

  test('does not jump from one item to the other where an edit exchanged their keys', async () => {
    const id = await notebookWith(
      [change('section:1', 'first'), change('section:2', 'second')],
      [change('section:1', 'second moved', 'section:2'), change('section:2', 'first moved', 'section:1')],
    )
    expect(await history(id, 'section:1')).toEqual(['second moved', 'second'])
    expect(await history(id, 'section:2')).toEqual(['first moved', 'first'])
  })
})

describe('the newest change of each item', () => {
  test('is the last one of every key, and of no other notebook', async () => {
    const id = await notebookWith(
      [change('line', 'first'), change('caps', 'only')],
      [change('line', 'second')],
      [change('line', 'third')],
    )
    await notebookWith([change('terms', 'of somebody else')])
    const newest = await latestChanges(id)
    expect(newest.map(({ itemKey, after }) => [itemKey, after]).sort()).toEqual([
      ['caps', 'only'],
      ['line', 'third'],
    ])
  })
})
