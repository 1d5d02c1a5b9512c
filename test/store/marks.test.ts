import { beforeEach, describe, expect, test } from 'vitest'
import { marksOf, setMark, takeMark } from '../../lib/store/marks.ts'
import { createNotebook, editNotebook } from '../../lib/store/notebooks.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2025-06-01T18:00:00Z')
const later = new Date('2025-06-01T19:00:00Z')
let id: string

beforeEach(async () => {
  id = (await createNotebook({ document: '{"line":"one"}', example: false, at })).id
})

function currentFingerprint(document: string, itemKey: string): string | undefined {
  return (JSON.parse(document) as Record<string, string>)[itemKey]
}

function set(household: 'a' | 'b', itemKey: string, fingerprint: string, when = at) {
  return setMark({ id, household, itemKey, fingerprint, at: when, currentFingerprint })
}

describe('a mark', () => {
  test('is set on what the household saw, for itself alone', async () => {
    expect(await set('b', 'line', 'one')).toBe('set')
    expect(await marksOf(id)).toEqual([{ itemKey: 'line', household: 'b', fingerprint: 'one', at }])
  })

  test('is not set on what has changed since', async () => {
    expect(await set('a', 'line', 'zero')).toBe('changed-since')
    expect(await marksOf(id)).toEqual([])
  })

  test('is not set on what is not there', async () => {
    expect(await set('a', 'gate:1', 'one')).toBe('no-such-item')
    expect(await marksOf(id)).toEqual([])
  })

  test('set twice on the same content keeps its first date', async () => {
    await set('a', 'line', 'one')
    expect(await set('a', 'line', 'one', later)).toBe('set')
    expect(await marksOf(id)).toEqual([{ itemKey: 'line', household: 'a', fingerprint: 'one', at }])
  })

  test('set on new content takes the place of the old one', async () => {
    await set('a', 'line', 'one')
    // An edit whose list of changes leaves the item out, so that the old mark is still there.
    await editNotebook({
      id,
      household: 'a',
      at,
      change: () => ({ document: '{"line":"two"}', changed: [], kept: undefined }),
    })
    expect(await set('a', 'line', 'two', later)).toBe('set')
    expect(await marksOf(id)).toEqual([{ itemKey: 'line', household: 'a', fingerprint: 'two', at: later }])
  })

  test('racing with an edit of its item never stands on content that nobody saw', async () => {
    const editing = editNotebook({
      id,
      household: 'b',
      at,
      change: () => ({
        document: '{"line":"two"}',
        changed: [{ itemKey: 'line', before: 'one', after: 'two' }],
        kept: undefined,
      }),
    })
    const outcomes = await Promise.all([editing, set('a', 'line', 'one')])
    expect(outcomes[1]).toBe('changed-since')
    expect(await marksOf(id)).toEqual([])
  })

  test('is taken back by its household, and only its own', async () => {
    await set('a', 'line', 'one')
    await set('b', 'line', 'one')
    expect(await takeMark({ id, household: 'a', itemKey: 'line', at })).toBe(true)
    expect((await marksOf(id)).map((mark) => mark.household)).toEqual(['b'])
    expect(await takeMark({ id, household: 'a', itemKey: 'line', at })).toBe(false)
  })
})
