import { beforeEach, describe, expect, test } from 'vitest'
import type { Household } from '../../lib/core/people/household.ts'
import { acceptProposal, type Taken } from '../../lib/store/acceptance.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { marksOf, setMark } from '../../lib/store/marks.ts'
import { createNotebook, editNotebook, findNotebook } from '../../lib/store/notebooks.ts'
import { endProposal, makeProposal, proposalsOf, proposalsWaitingFor } from '../../lib/store/proposals.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2027-03-01T18:00:00Z')
let notebookId: string
let otherNotebook: string

beforeEach(async () => {
  notebookId = (await createNotebook({ document: '{"s1":"old"}', example: false, at })).id
  otherNotebook = (await createNotebook({ document: '{}', example: false, at })).id
})

function propose(
  household: Household,
  ids: readonly string[],
  more: { answers?: number; refusal?: () => string | undefined; in?: string } = {},
) {
  return makeProposal({
    notebookId: more.in ?? notebookId,
    household,
    items: ids.map((id) => ({ id, fingerprint: 'f', item: { name: 'new' } })),
    text: 'why',
    at,
    refusal: more.refusal ?? (() => undefined),
    ...(more.answers === undefined ? {} : { answers: more.answers }),
  })
}

/** The id of a proposal that is made. */
async function made(household: Household, ids: readonly string[], answers?: number): Promise<number> {
  const outcome = await propose(household, ids, answers === undefined ? {} : { answers })
  if (typeof outcome === 'string' || 'refused' in outcome) throw new Error('This proposal was refused.')
  return outcome.id
}

const ends = async () => (await proposalsOf(notebookId)).map(({ reply }) => reply?.kind)
const record = async () =>
  (await changesOf(notebookId, { happenings: true })).map(({ kind, household, detail }) => [
    kind,
    household,
    detail?.reply ?? detail?.proposal,
  ])

describe('a proposal', () => {
  test('is kept whole, stands until it has a reply, and goes on record', async () => {
    await made('a', ['s1', 's2'])
    expect(await proposalsOf(notebookId)).toMatchObject([
      {
        number: 1,
        household: 'a',
        text: 'why',
        at,
        items: [
          { id: 's1', fingerprint: 'f', item: { name: 'new' } },
          { id: 's2', fingerprint: 'f', item: { name: 'new' } },
        ],
      },
    ])
    expect(await ends()).toEqual([undefined])
    expect([await proposalsWaitingFor(notebookId, 'a'), await proposalsWaitingFor(notebookId, 'b')]).toEqual([
      0, 1,
    ])
    expect(await record()).toEqual([['proposal', 'a', 1]])
  })

  test('is counted within its own notebook', async () => {
    await propose('a', ['s1'], { in: otherNotebook })
    expect(await propose('b', ['s1'])).toMatchObject({ made: 1 })
  })

  test('takes the place of the same household’s that has an item with it in common, and of no other', async () => {
    await made('a', ['s1', 's2'])
    await made('a', ['s3'])
    await made('b', ['s2'])
    expect(await propose('a', ['s2'])).toMatchObject({ made: 4, withdrew: [1] })
    expect(await ends()).toEqual(['withdrawn', undefined, undefined, undefined])
  })

  test('that answers one ends it as answered', async () => {
    const first = await made('a', ['s1'])
    expect(await propose('b', ['s1'], { answers: first })).toMatchObject({ made: 2 })
    expect(await ends()).toEqual(['answered', undefined])
    expect(await record()).toEqual([
      ['reply', 'b', 'answered'],
      ['proposal', 'b', 2],
      ['proposal', 'a', 1],
    ])
  })

  test('answers neither its own household’s, nor another notebook’s, nor one that has ended', async () => {
    const own = await made('a', ['s1'])
    const elsewhere = await propose('a', ['s1'], { in: otherNotebook })
    if (typeof elsewhere === 'string' || 'refused' in elsewhere) throw new Error('it is made')
    expect(await propose('a', ['s2'], { answers: own })).toBe('no-such-proposal')
    expect(await propose('b', ['s2'], { answers: elsewhere.id })).toBe('no-such-proposal')
    await endProposal({ notebookId, household: 'b', id: own, kind: 'declined', text: 'no', at })
    expect(await propose('b', ['s2'], { answers: own })).toBe('ended')
    expect(await proposalsOf(notebookId)).toHaveLength(1)
  })

  test('that is refused leaves everything as it was, the one that it would have answered too', async () => {
    const first = await made('a', ['s1'])
    expect(await propose('b', ['s1'], { answers: first, refusal: () => 'not now' })).toEqual({
      refused: 'not now',
    })
    expect(await ends()).toEqual([undefined])
    expect(await record()).toHaveLength(1)
  })
})

test('a proposal that did not keep what its item was has it from the record, once the item was changed', async () => {
  const was = { id: 's1', name: 'By the lane' }
  await makeProposal({
    notebookId,
    household: 'a',
    items: [{ id: 's1', fingerprint: fingerprintOf(was), item: { ...was, name: 'new' } }],
    text: '',
    at,
    refusal: () => undefined,
  })
  const [before] = await proposalsOf(notebookId)
  expect(before?.items[0]).not.toHaveProperty('was')
  await editNotebook({
    id: notebookId,
    household: 'b',
    at,
    change: () => ({
      document: '{"s1":"newer"}',
      changed: [{ itemKey: 'item:s1', before: { currency: 'USD', item: was }, after: { item: {} } }],
      kept: undefined,
    }),
  })
  const [after] = await proposalsOf(notebookId)
  expect(after?.items[0]?.was).toEqual(was)
})

describe('a proposal ends once', () => {
  const end = (household: Household, id: number, kind: 'declined' | 'withdrawn') =>
    endProposal({ notebookId, household, id, kind, text: 'because', at })

  test('declined by the other household, withdrawn by its own, and never the other way round', async () => {
    const [first, second] = [await made('a', ['s1']), await made('a', ['s2'])]
    expect(await end('a', first, 'declined')).toBe('no-such-proposal')
    expect(await end('b', first, 'withdrawn')).toBe('no-such-proposal')
    expect(await end('b', first, 'declined')).toBe('done')
    expect(await end('a', second, 'withdrawn')).toBe('done')
    expect(await end('a', first, 'withdrawn')).toBe('ended')
    expect(await end('b', second, 'declined')).toBe('ended')
    expect(await ends()).toEqual(['declined', 'withdrawn'])
    const [declined] = await proposalsOf(notebookId)
    expect(declined?.reply).toEqual({ kind: 'declined', household: 'b', text: 'because', at })
  })
})

describe('accepting', () => {
  const take = (): Taken => ({
    document: '{"s1":"new"}',
    changed: [{ itemKey: 'item:s1', before: 'old', after: 'new' }],
    marks: [{ itemKey: 'item:s1', fingerprint: 'new', households: ['a', 'b'] }],
  })
  const accept = (household: Household, id: number, how: () => Taken | { refused: string } = take) =>
    acceptProposal<string>({ notebookId, household, id, at, take: how })
  const currentFingerprint = () => 'old'

  test('puts it into the document with both marks on it, in place of those that stood before', async () => {
    const id = await made('a', ['s1'])
    await setMark({
      id: notebookId,
      household: 'b',
      itemKey: 'item:s1',
      fingerprint: 'old',
      at,
      currentFingerprint,
    })
    expect(await accept('b', id)).toEqual({ accepted: 1 })
    expect((await findNotebook(notebookId))?.document).toBe('{"s1":"new"}')
    expect(await marksOf(notebookId)).toEqual(
      (['a', 'b'] as const).map((household) => ({ itemKey: 'item:s1', household, fingerprint: 'new', at })),
    )
    expect((await record()).slice(0, 4)).toEqual([
      ['reply', 'b', 'accepted'],
      ['mark', 'b', 1],
      ['mark', 'a', 1],
      ['edit', 'b', undefined],
    ])
  })

  test('sets the marks of only those households that it names, and knows the marks that stood before', async () => {
    const id = await made('a', ['s1'])
    const mark = { id: notebookId, household: 'a', itemKey: 'item:s1', fingerprint: 'old', at } as const
    await setMark({ ...mark, currentFingerprint })
    const [edited] = take().marks
    if (edited === undefined) throw new Error('one item is marked')
    let known: readonly unknown[] = []
    const outcome = await acceptProposal<string>({
      notebookId,
      household: 'b',
      id,
      at,
      take: (_document, _items, marks) => {
        known = marks.map(({ household, fingerprint }) => [household, fingerprint])
        return { ...take(), marks: [{ ...edited, households: ['b'] }] }
      },
    })
    expect(outcome).toEqual({ accepted: 1 })
    expect(known).toEqual([['a', 'old']])
    expect((await marksOf(notebookId)).map(({ household }) => household)).toEqual(['b'])
  })

  test('ends what the accepting household had proposed for the same items', async () => {
    const id = await made('a', ['s1'])
    await made('b', ['s1', 's2'])
    await made('b', ['s3'])
    await accept('b', id)
    expect(await ends()).toEqual(['accepted', 'withdrawn', undefined])
  })

  test('is not for its own household, nor for another notebook’s, and works once', async () => {
    const id = await made('a', ['s1'])
    expect(await accept('a', id)).toBe('own')
    expect(await acceptProposal({ notebookId: otherNotebook, household: 'b', id, at, take })).toBe(
      'no-such-proposal',
    )
    expect(await marksOf(notebookId)).toEqual([])
    expect(await accept('b', id)).toEqual({ accepted: 1 })
    const before = await record()
    expect(await accept('b', id)).toBe('ended')
    expect(await record()).toEqual(before)
  })

  test('of two at the same time one is told that it has ended', async () => {
    const id = await made('a', ['s1'])
    const outcomes = await Promise.all([accept('b', id), accept('b', id)])
    expect(outcomes).toEqual([{ accepted: 1 }, 'ended'])
  })

  test('that is refused changes nothing, and the proposal stands', async () => {
    const id = await made('a', ['s1'])
    expect(await accept('b', id, () => ({ refused: 'changed since' }))).toEqual({ refused: 'changed since' })
    expect(await ends()).toEqual([undefined])
    expect((await findNotebook(notebookId))?.document).toBe('{"s1":"old"}')
    expect(await record()).toHaveLength(1)
  })
})
