import { beforeEach, describe, expect, test } from 'vitest'
import { marksOf, setMark } from '../../lib/store/marks.ts'
import { createNotebook } from '../../lib/store/notebooks.ts'
import {
  freezeRevision,
  newestRevision,
  type Revision,
  revisionsOf,
  signaturesOf,
  signRevision,
} from '../../lib/store/revisions.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2025-06-01T18:00:00Z')
const later = new Date('2025-06-03T18:00:00Z')
let id: string

beforeEach(async () => {
  id = (await createNotebook({ document: '{"title":"Fence"}', example: false, at })).id
})

async function freeze(canonicalText: string, notebookId = id) {
  const frozen = await freezeRevision({
    id: notebookId,
    household: 'a',
    at,
    build: () => ({ canonicalText, sha256: sha256Hex(canonicalText) }),
  })
  if ('refused' in frozen) {
    throw new Error('not refused here')
  }
  return frozen
}

function sign(revision: Revision, household: 'a' | 'b' = 'a', partyIndex = 0, drawing?: string) {
  return signRevision({
    notebookId: id,
    revisionId: revision.id,
    sha256: revision.sha256,
    household,
    partyIndex,
    partyName: 'Ida Marrow',
    capacity: 'owner',
    typedName: 'Ida Marrow',
    intent: 'I sign this agreement.',
    at: later,
    ...(drawing === undefined ? {} : { drawing }),
  })
}

describe('a revision', () => {
  test('is frozen from the document and the marks as they stand', async () => {
    await setMark({
      id,
      household: 'b',
      itemKey: 'line',
      fingerprint: 'f',
      at,
      currentFingerprint: () => 'f',
    })
    let seen: unknown
    await freezeRevision({
      id,
      household: 'a',
      at,
      build: (document, marks) => {
        seen = { document, marks }
        return { refused: 'only looking' }
      },
    })
    expect(seen).toEqual({ document: '{"title":"Fence"}', marks: await marksOf(id) })
    expect(await marksOf(id)).toHaveLength(1)
  })

  test('carries its text, its hash, and who froze it when', async () => {
    const { revision, isNew } = await freeze('text Ł')
    expect(isNew).toBe(true)
    expect(revision).toEqual({
      id: revision.id,
      notebookId: id,
      number: 1,
      canonicalText: 'text Ł',
      sha256: sha256Hex('text Ł'),
      frozenAt: at,
      frozenBy: 'a',
    })
    expect(await newestRevision(id)).toEqual(revision)
  })

  test('gets the next number of its own notebook, and the newest stands', async () => {
    const { id: elsewhere } = await createNotebook({ document: '{}', example: false, at })
    await freeze('one')
    await freeze('one', elsewhere)
    await freeze('two')
    expect((await revisionsOf(id)).map((revision) => [revision.number, revision.canonicalText])).toEqual([
      [2, 'two'],
      [1, 'one'],
    ])
    expect((await newestRevision(id))?.number).toBe(2)
    expect((await newestRevision(elsewhere))?.number).toBe(1)
  })

  test('frozen twice at once is one revision', async () => {
    const both = await Promise.all([freeze('one'), freeze('one')])
    expect(both.map((frozen) => frozen.isNew).sort()).toEqual([false, true])
    expect(await revisionsOf(id)).toHaveLength(1)
  })

  test('of an earlier text is a new revision when another stands', async () => {
    await freeze('one')
    await freeze('two')
    expect((await freeze('one')).revision.number).toBe(3)
  })

  test('that is refused is not frozen, and the reason comes back', async () => {
    const frozen = await freezeRevision({
      id,
      household: 'a',
      at,
      build: () => ({ refused: ['no parties'] }),
    })
    expect(frozen).toEqual({ refused: ['no parties'] })
    expect(await newestRevision(id)).toBeUndefined()
  })

  test('is not frozen under the hash of another text', async () => {
    const freezing = freezeRevision({
      id,
      household: 'a',
      at,
      build: () => ({ canonicalText: 'one', sha256: sha256Hex('two') }),
    })
    await expect(freezing).rejects.toThrow('SHA-256 of its own text')
    expect(await revisionsOf(id)).toEqual([])
  })
})

describe('a signature', () => {
  test('is kept as it was given, drawn or not', async () => {
    const { revision } = await freeze('one')
    expect(await sign(revision, 'b', 0, 'M 1 2 L 3 4')).toBe('signed')
    expect(await sign(revision, 'a', 1)).toBe('signed')
    const [first, second] = await signaturesOf(revision.id)
    expect(first).toEqual({
      id: first?.id,
      revisionId: revision.id,
      household: 'a',
      partyIndex: 1,
      partyName: 'Ida Marrow',
      capacity: 'owner',
      typedName: 'Ida Marrow',
      intent: 'I sign this agreement.',
      sha256: revision.sha256,
      signedAt: later,
    })
    expect(second).toMatchObject({ household: 'b', partyIndex: 0, drawing: 'M 1 2 L 3 4' })
  })

  test('is given once, also when the button is pressed twice at once', async () => {
    const { revision } = await freeze('one')
    expect((await Promise.all([sign(revision), sign(revision)])).sort()).toEqual(['already-signed', 'signed'])
    expect(await signaturesOf(revision.id)).toHaveLength(1)
  })

  test('is not put under a revision that a newer one has replaced, whose signatures stay', async () => {
    const { revision } = await freeze('one')
    await sign(revision, 'a')
    await freeze('two')
    expect(await sign(revision, 'b')).toBe('outdated')
    expect(await signaturesOf(revision.id)).toHaveLength(1)
  })

  test('is not put under another text than the one that was shown', async () => {
    const { revision } = await freeze('one')
    expect(await sign({ ...revision, sha256: sha256Hex('what was shown') })).toBe('other-hash')
    expect(await signaturesOf(revision.id)).toEqual([])
  })

  test('is not put under a revision of another notebook, or under none', async () => {
    const { id: elsewhere } = await createNotebook({ document: '{}', example: false, at })
    const { revision } = await freeze('one', elsewhere)
    expect(await sign(revision)).toBe('no-such-revision')
    expect(await sign({ ...revision, id: 'no such id' })).toBe('no-such-revision')
    expect(await signaturesOf(revision.id)).toEqual([])
  })
})
