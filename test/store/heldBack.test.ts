import { beforeEach, describe, expect, test } from 'vitest'
import type { Household } from '../../lib/core/people/household.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { database } from '../../lib/store/database.ts'
import { heldBackOf, sayNeedsApart } from '../../lib/store/heldBack.ts'
import { createNotebook, type Edit, findNotebook } from '../../lib/store/notebooks.ts'
import { countPassages, passageRounds } from '../../lib/store/passageRounds.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2027-03-01T18:00:00Z')
let notebookId = ''

beforeEach(async () => {
  notebookId = (await createNotebook({ document: '{}', example: false, at })).id
})

const needs = (household: Household) => heldBackOf({ notebookId, household, subject: 'needs' })
const say = (household: Household, content: string) => sayNeedsApart({ notebookId, household, content, at })

describe('needs that were said apart', () => {
  test('of the other household are not to be had before one has said its own', async () => {
    await say('a', 'the terrace of a')
    expect(await needs('b')).toEqual({ other: 'held back' })
    expect(JSON.stringify(await needs('b'))).not.toContain('terrace')
    expect(await needs('a')).toEqual({ own: { content: 'the terrace of a', at }, other: 'not said' })
  })

  test('are there for both once both have said theirs', async () => {
    await say('a', 'of a')
    await say('b', 'of b')
    expect(await needs('a')).toEqual({ own: { content: 'of a', at }, other: { content: 'of b', at } })
    expect(await needs('b')).toEqual({ own: { content: 'of b', at }, other: { content: 'of a', at } })
  })

  test('can be said again: the newest counts, before and after', async () => {
    await say('a', 'first')
    await say('a', 'second')
    await say('b', 'of b')
    await say('b', 'of b, again')
    expect(await needs('a')).toEqual({
      own: { content: 'second', at },
      other: { content: 'of b, again', at },
    })
  })

  test('go on record as said, without a word of what was said', async () => {
    await say('a', 'the terrace of a')
    const record = await changesOf(notebookId, { happenings: true })
    expect(record.map(({ kind, household, detail }) => [kind, household, detail])).toEqual([
      ['held back', 'a', { subject: 'needs' }],
    ])
    const rows = await database().read((tables) => tables.change.findMany())
    expect(JSON.stringify(rows)).not.toContain('terrace')
  })

  test('belong to one notebook and are known in no other', async () => {
    const other = (await createNotebook({ document: '{}', example: false, at })).id
    await say('a', 'of a')
    await say('b', 'of b')
    expect(await heldBackOf({ notebookId: other, household: 'a', subject: 'needs' })).toEqual({
      other: 'not said',
    })
  })
})

type Decide = (document: string, counted: { readonly a?: string; readonly b?: string }) => Edit<string>

const keepAsItIs: Decide = (document) => ({ document, changed: [], kept: 'kept' })
const count = (household: Household, content: string, decide: Decide = keepAsItIs, gateId = 'g1') =>
  countPassages({ notebookId, household, gateId, content, at, decide })
const rounds = (household: Household, gateId = 'g1') => passageRounds({ notebookId, household, gateId })

describe('passages that were counted apart', () => {
  test('are decided upon with one’s own count alone until both have counted', async () => {
    const given: unknown[] = []
    const decide: Decide = (document, counted) => {
      given.push(counted)
      return keepAsItIs(document, counted)
    }
    await count('b', 'secret of b', decide)
    await count('b', 'corrected by b', decide)
    await count('a', 'of a', decide)
    expect(given).toEqual([{ b: 'secret of b' }, { b: 'corrected by b' }, { a: 'of a', b: 'corrected by b' }])
  })

  test('of the other household are not to be had before one has counted', async () => {
    await count('b', 'secret of b')
    expect(await rounds('a')).toEqual({ open: { round: 1, other: 'held back' } })
    expect(await rounds('b')).toEqual({
      open: { round: 1, own: { content: 'secret of b', at }, other: 'not said' },
    })
  })

  test('are there for both once both have, and the next count begins a new round', async () => {
    await count('b', 'of b')
    await count('a', 'of a')
    const last = { a: { content: 'of a', at }, b: { content: 'of b', at } }
    for (const household of ['a', 'b'] as const)
      expect(await rounds(household)).toEqual({ open: { round: 2, other: 'not said' }, last })
    await count('a', 'again of a')
    expect(await rounds('b')).toEqual({ open: { round: 2, other: 'held back' }, last })
  })

  test('of one gate are none of another, also where the ids begin alike', async () => {
    await count('a', 'of g1')
    await count('b', 'of g1:1', keepAsItIs, 'g1:1')
    await count('b', 'of G1', keepAsItIs, 'G1')
    expect(await rounds('b')).toEqual({ open: { round: 1, other: 'held back' } })
    expect((await rounds('a', 'g1:1')).open.other).toBe('held back')
    expect((await rounds('a', 'g_')).open.other).toBe('not said')
  })

  test('are stored with what the document then says, or not at all', async () => {
    const saved = await count('a', 'of a', () => ({ document: '{"counted":true}', changed: [], kept: 'yes' }))
    expect(saved).toBe('yes')
    expect((await findNotebook(notebookId))?.document).toBe('{"counted":true}')
    const refused = await count('b', 'of b', () => ({ refused: 'no' }))
    expect(refused).toBe('no')
    expect((await rounds('a')).open.other).toBe('not said')
    await expect(
      count('b', 'of b', () => {
        throw new Error('broke')
      }),
    ).rejects.toThrow('broke')
    expect((await rounds('a')).open.other).toBe('not said')
  })

  test('go on record at the gate, without the count', async () => {
    await count('a', '47 of a')
    const record = await changesOf(notebookId, { happenings: true })
    expect(record.map(({ kind, itemKey, detail }) => [kind, itemKey, detail])).toEqual([
      ['held back', 'item:g1', { subject: 'passages', round: 1 }],
    ])
  })
})
