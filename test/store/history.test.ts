import { createHash } from 'node:crypto'
import { beforeEach, describe, expect, test } from 'vitest'
import { changesOf, itemKeysOnRecord, latestChanges } from '../../lib/store/changes.ts'
import { database } from '../../lib/store/database.ts'
import { claimInvitation, issueFirstLink, issueInvitation, replaceLink } from '../../lib/store/entryKeys.ts'
import { beforeTheFirst, headOf, historyOf, leadsThrough } from '../../lib/store/historyChain.ts'
import { setMark, takeMark } from '../../lib/store/marks.ts'
import { messagesOf, sayBesideItem } from '../../lib/store/messages.ts'
import { createNotebook, editNotebook } from '../../lib/store/notebooks.ts'
import { freezeRevision, signRevision } from '../../lib/store/revisions.ts'
import { keepSealedPaper, revisionSealedAs, sealedPaperOf, sealsOf } from '../../lib/store/sealedPapers.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2025-06-01T18:00:00Z')
let id: string

beforeEach(async () => {
  id = (await createNotebook({ document: '{"line":"one"}', example: false, at })).id
})

async function edit(after: string, when = at): Promise<void> {
  await editNotebook({
    id,
    household: 'a',
    at: when,
    change: (document) => ({
      document: JSON.stringify({ line: after }),
      changed: [{ itemKey: 'line', before: JSON.parse(document).line, after }],
      kept: undefined,
    }),
  })
}

async function freeze(text = 'what was agreed'): Promise<{ id: string; number: number; sha256: string }> {
  const frozen = await freezeRevision({
    id,
    household: 'b',
    at,
    build: () => ({ canonicalText: text, sha256: sha256Hex(text) }),
  })
  if ('refused' in frozen) throw new Error('never refuses')
  return frozen.revision
}

describe('the history', () => {
  test('of a new notebook is empty, and its head is the one before the first entry', async () => {
    const history = await historyOf(id)
    expect(history).toEqual([])
    expect(headOf(history)).toEqual({ entry: 0, hash: beforeTheFirst })
    expect(leadsThrough(history, headOf(history))).toBe(true)
  })

  test('tells edits, marks, revisions, signatures, links and what was said, in order', async () => {
    await issueFirstLink({ notebookId: id, household: 'a', at })
    const { token } = (await issueInvitation({ notebookId: id, at })) as { token: string }
    await claimInvitation({ token, at })
    await edit('two')
    const currentFingerprint = (document: string) => JSON.parse(document).line as string
    await setMark({ id, household: 'b', itemKey: 'line', fingerprint: 'two', at, currentFingerprint })
    await takeMark({ id, household: 'b', itemKey: 'line', at })
    await sayBesideItem({
      notebookId: id,
      itemKey: 'line',
      household: 'b',
      kind: 'objection',
      text: 'No.',
      at,
    })
    const revision = await freeze()
    await signRevision({
      notebookId: id,
      revisionId: revision.id,
      sha256: revision.sha256,
      household: 'a',
      partyIndex: 0,
      partyName: 'Ida Marrow',
      capacity: 'owner',
      typedName: 'Ida Marrow',
      intent: 'I sign.',
      drawing: 'M0 0',
      at,
    })
    await replaceLink({ notebookId: id, household: 'a', at })
    const history = await historyOf(id)
    expect(history.map(({ kind, household }) => `${kind} ${household}`)).toEqual([
      'link a',
      'link a',
      'link b',
      'edit a',
      'mark b',
      'unmark b',
      'message b',
      'freeze b',
      'sign a',
      'link a',
    ])
    // Neither a token nor a drawing gets into the log, which is exported.
    expect(JSON.stringify(history)).not.toContain(token)
    expect(JSON.stringify(history)).not.toContain('M0 0')
  })

  test('a mark set again on the same content, and one that was not there, leave no entry', async () => {
    const currentFingerprint = () => 'one'
    const mark = { id, household: 'a', itemKey: 'line', fingerprint: 'one', at, currentFingerprint } as const
    await setMark(mark)
    await setMark(mark)
    await takeMark({ id, household: 'b', itemKey: 'line', at })
    expect(await historyOf(id)).toHaveLength(1)
  })

  test('what only happened is no change of an item', async () => {
    await edit('two')
    await setMark({
      id,
      household: 'b',
      itemKey: 'line',
      fingerprint: 'two',
      at,
      currentFingerprint: () => 'two',
    })
    await freeze()
    expect(await changesOf(id)).toHaveLength(1)
    expect((await latestChanges(id)).map(({ kind }) => kind)).toEqual(['edit'])
    expect(await itemKeysOnRecord(id)).toEqual(['line'])
    expect(await changesOf(id, { itemKey: 'line', happenings: true })).toHaveLength(2)
  })

  test('is chained: each hash can be worked out from its entry and the hash before', async () => {
    await edit('two')
    await edit('three', new Date('2025-06-01T19:00:00Z'))
    const [first, second] = await historyOf(id)
    const sha256 = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex')
    // RFC 8785: keys in order, no blanks. Written out by hand.
    expect(first?.hash).toBe(
      sha256(
        `{"after":"two","at":"2025-06-01T18:00:00.000Z","before":"one","household":"a","itemKey":"line","kind":"edit","number":1,"previous":"${'0'.repeat(64)}"}`,
      ),
    )
    expect(second?.hash).toBe(
      sha256(
        `{"after":"three","at":"2025-06-01T19:00:00.000Z","before":"two","household":"a","itemKey":"line","kind":"edit","number":2,"previous":"${first?.hash}"}`,
      ),
    )
  })

  test('an entry altered behind the program’s back no longer leads through a head that was printed', async () => {
    await edit('two')
    await edit('three')
    const head = headOf(await historyOf(id))
    await edit('four')
    expect(leadsThrough(await historyOf(id), head)).toBe(true)
    await database().write(async (tables) => {
      await tables.$executeRawUnsafe('DROP TRIGGER "Change_never_altered"')
      await tables.$executeRawUnsafe(`UPDATE "Change" SET "after" = '"2"' WHERE "after" = '"two"'`)
    })
    expect(leadsThrough(await historyOf(id), head)).toBe(false)
  })

  test('goes on in order when the clock is set back', async () => {
    await edit('two', new Date('2025-06-02T08:00:00Z'))
    await edit('three', new Date('2025-06-01T08:00:00Z'))
    const history = await historyOf(id)
    expect(history.map(({ after }) => after)).toEqual(['two', 'three'])
    expect(history.map(({ number }) => number)).toEqual([1, 2])
  })
})

describe('a conversation beside an item', () => {
  test('keeps what was said in order, with what it answers', async () => {
    const line = { notebookId: id, itemKey: 'line', at }
    await sayBesideItem({ ...line, household: 'b', kind: 'objection', text: 'Too high.' })
    const [asked] = await messagesOf(id, 'line')
    if (!asked) throw new Error('it was said')
    await sayBesideItem({ ...line, household: 'a', kind: 'answer', text: '5 ft then?', answers: asked.id })
    expect((await messagesOf(id, 'line')).map(({ text, answers }) => [text, answers])).toEqual([
      ['Too high.', undefined],
      ['5 ft then?', asked.id],
    ])
  })

  test('answers only what was said beside the same item of the same notebook', async () => {
    await sayBesideItem({ notebookId: id, itemKey: 'line', household: 'b', kind: 'remark', text: 'Hm.', at })
    const [said] = await messagesOf(id)
    const answer = { household: 'a', kind: 'answer', text: 'Yes', answers: said?.id ?? 0, at } as const
    expect(await sayBesideItem({ ...answer, notebookId: id, itemKey: 'caps' })).toBe('no-such-message')
    const other = await createNotebook({ document: '{}', example: false, at })
    expect(await sayBesideItem({ ...answer, notebookId: other.id, itemKey: 'line' })).toBe('no-such-message')
    expect(await messagesOf(id)).toHaveLength(1)
    expect(await historyOf(other.id)).toEqual([])
  })
})

describe('a locked copy', () => {
  const certificate = sha256Hex('certificate')
  const bytes = Uint8Array.of(37, 80, 68, 70)

  async function keep(revisionId: string, kept = bytes): Promise<void> {
    const history = headOf(await historyOf(id))
    await keepSealedPaper({
      notebookId: id,
      revisionId,
      household: 'a',
      bytes: kept,
      certificate,
      history,
      at,
    })
  }

  test('comes back byte for byte, and the first one stays', async () => {
    const revision = await freeze()
    expect(await sealedPaperOf(revision.id)).toBeUndefined()
    const head = headOf(await historyOf(id))
    await keep(revision.id)
    await keep(revision.id, Uint8Array.of(1))
    const paper = await sealedPaperOf(revision.id)
    expect([...(paper?.bytes ?? [])]).toEqual([...bytes])
    expect(paper?.history).toEqual(head)
    expect((await historyOf(id)).filter(({ kind }) => kind === 'seal')).toHaveLength(1)
    expect((await sealsOf(id)).get(revision.id)?.sha256).toBe(sha256Hex(bytes))
  })

  test('is found by the hash of its bytes, and is the newest until a newer one is locked', async () => {
    const first = await freeze()
    await keep(first.id)
    expect(await revisionSealedAs(sha256Hex(bytes))).toEqual({ number: 1, newest: true, newestSealed: 1 })
    const second = await freeze('what was agreed later')
    expect((await revisionSealedAs(sha256Hex(bytes)))?.newest).toBe(true)
    await keep(second.id, Uint8Array.of(9))
    expect(await revisionSealedAs(sha256Hex(bytes))).toEqual({ number: 1, newest: false, newestSealed: 2 })
    expect(await revisionSealedAs(sha256Hex('no such paper'))).toBeUndefined()
  })

  test('is refused when the database file was altered', async () => {
    const revision = await freeze()
    await keep(revision.id)
    await database().write(async (tables) => {
      await tables.$executeRawUnsafe('DROP TRIGGER "SealedPaper_never_altered"')
      await tables.$executeRawUnsafe(`UPDATE "SealedPaper" SET "bytes" = x'25504446FF'`)
    })
    await expect(sealedPaperOf(revision.id)).rejects.toThrow('altered')
  })

  test('is not kept for a revision of another notebook', async () => {
    const revision = await freeze()
    const other = await createNotebook({ document: '{}', example: false, at })
    await expect(
      keepSealedPaper({
        notebookId: other.id,
        revisionId: revision.id,
        household: 'a',
        bytes,
        certificate,
        history: { entry: 0, hash: beforeTheFirst },
        at,
      }),
    ).rejects.toThrow()
    expect(await sealedPaperOf(revision.id)).toBeUndefined()
  })
})
