import { beforeEach, describe, expect, test } from 'vitest'
import { lookAtToken } from '../../lib/access/openKey.ts'
import { database } from '../../lib/store/database.ts'
import {
  claimInvitation,
  hasLink,
  issueFirstLink,
  issueInvitation,
  openInvitation,
  replaceLink,
} from '../../lib/store/entryKeys.ts'
import { createNotebook } from '../../lib/store/notebooks.ts'
import { newToken } from '../../lib/store/randomToken.ts'
import { endSession, findSession, startSession } from '../../lib/store/sessions.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { temporaryDatabaseForEachTest } from '../store/temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2025-06-01T18:00:00Z')
const later = new Date('2025-06-02T18:00:00Z')
let notebookId: string
let linkOfA: string

beforeEach(async () => {
  notebookId = (await createNotebook({ document: '{}', example: false, at })).id
  linkOfA = (await issueFirstLink({ notebookId, household: 'a', at })).token
})

async function invite(): Promise<string> {
  const invitation = await issueInvitation({ notebookId, at })
  if ('refused' in invitation) {
    throw new Error('not refused here')
  }
  return invitation.token
}

async function claim(token: string): Promise<string> {
  const claimed = await claimInvitation({ token, at: later })
  if ('refused' in claimed) {
    throw new Error('not refused here')
  }
  return claimed.token
}

async function enter(linkToken: string): Promise<string> {
  const session = await startSession({ linkToken, at })
  if (session === undefined) {
    throw new Error('not refused here')
  }
  return session.token
}

describe('what is stored', () => {
  test('are hashes: no token is anywhere in the database', async () => {
    const invitation = await invite()
    const linkOfB = await claim(invitation)
    const session = await enter(linkOfB)
    const everything = JSON.stringify(
      await database().read(async (tables) => [
        await tables.entryKey.findMany(),
        await tables.session.findMany(),
      ]),
    )
    for (const token of [linkOfA, invitation, linkOfB, session]) {
      expect(everything).not.toContain(token)
      expect(everything).toContain(sha256Hex(token))
    }
  })
})

describe('a token', () => {
  test('of a link says whom it lets in, however often it is looked at', async () => {
    const expected = { kind: 'link', notebookId, household: 'a' }
    expect(await lookAtToken(linkOfA)).toEqual(expected)
    expect(await lookAtToken(linkOfA)).toEqual(expected)
  })

  test('of an invitation is not used up by looking at it', async () => {
    const invitation = await invite()
    const expected = { kind: 'invitation', notebookId, household: 'b' }
    expect(await lookAtToken(invitation)).toEqual(expected)
    expect(await lookAtToken(invitation)).toEqual(expected)
    await claim(invitation)
  })

  test('of a claimed invitation says when it was claimed', async () => {
    const invitation = await invite()
    await claim(invitation)
    expect(await lookAtToken(invitation)).toEqual({ kind: 'used-invitation', notebookId, usedAt: later })
  })

  test('that is unknown, malformed or revoked gets one and the same answer', async () => {
    const revokedInvitation = await invite()
    await invite()
    await replaceLink({ notebookId, household: 'a', at: later })
    const malformed = ['', 'x', `${linkOfA}A`, linkOfA.slice(1), sha256Hex(linkOfA), "' OR 1=1 --"]
    for (const token of [newToken(), revokedInvitation, linkOfA, ...malformed]) {
      expect(await lookAtToken(token), token).toBeUndefined()
      expect(await startSession({ linkToken: token, at }), token).toBeUndefined()
      expect(await claimInvitation({ token, at }), token).toEqual({ refused: 'unknown' })
      expect(await findSession(token), token).toBeUndefined()
    }
  })
})

describe('an invitation', () => {
  test('becomes the second household’s own link', async () => {
    const claimed = await claimInvitation({ token: await invite(), at: later })
    expect(claimed).toMatchObject({ notebookId, household: 'b' })
    const token = 'token' in claimed ? claimed.token : ''
    expect(await lookAtToken(token)).toEqual({ kind: 'link', notebookId, household: 'b' })
  })

  test('lets nobody in by itself', async () => {
    expect(await startSession({ linkToken: await invite(), at })).toBeUndefined()
  })

  test('is claimed once', async () => {
    const invitation = await invite()
    await claim(invitation)
    expect(await claimInvitation({ token: invitation, at: later })).toEqual({ refused: 'used' })
  })

  test('claimed by ten at once goes to one of them', async () => {
    const token = await invite()
    const claims = await Promise.all(Array.from({ length: 10 }, () => claimInvitation({ token, at: later })))
    expect(claims.filter((outcome) => 'token' in outcome)).toHaveLength(1)
    const linksOfB = await database().read((tables) =>
      tables.entryKey.count({ where: { notebookId, household: 'b', kind: 'link' } }),
    )
    expect(linksOfB).toBe(1)
  })

  test('revokes the ones before it that nobody claimed', async () => {
    const first = await invite()
    const second = await invite()
    expect(await claimInvitation({ token: first, at: later })).toEqual({ refused: 'unknown' })
    expect(await openInvitation(notebookId)).toEqual({ createdAt: at })
    await claim(second)
    expect(await openInvitation(notebookId)).toBeUndefined()
  })

  test('leaves the invitations of other notebooks alone', async () => {
    const other = (await createNotebook({ document: '{}', example: false, at })).id
    const elsewhere = await issueInvitation({ notebookId: other, at })
    await invite()
    expect(await lookAtToken('token' in elsewhere ? elsewhere.token : '')).toMatchObject({
      notebookId: other,
    })
  })

  test('still open when the second household has come in by another way cannot be claimed any more', async () => {
    const { id } = await createNotebook({ document: '{}', example: true, at })
    const invitation = await issueInvitation({ notebookId: id, at })
    await issueFirstLink({ notebookId: id, household: 'b', at })
    const token = 'token' in invitation ? invitation.token : ''
    expect(await claimInvitation({ token, at: later })).toEqual({ refused: 'used' })
  })

  test('a link cannot be claimed as if it were one', async () => {
    expect(await claimInvitation({ token: linkOfA, at })).toEqual({ refused: 'unknown' })
  })
})

describe('once the second household has come in', () => {
  let invitation: string
  let linkOfB: string

  beforeEach(async () => {
    invitation = await invite()
    expect(await hasLink(notebookId, 'b')).toBe(false)
    linkOfB = await claim(invitation)
  })

  test('no further invitation is issued, also after it has replaced its link', async () => {
    expect(await hasLink(notebookId, 'b')).toBe(true)
    expect(await issueInvitation({ notebookId, at: later })).toEqual({ refused: 'already-claimed' })
    await replaceLink({ notebookId, household: 'b', at: later })
    expect(await issueInvitation({ notebookId, at: later })).toEqual({ refused: 'already-claimed' })
  })

  test('nothing that the first household holds lets anyone in as the second', async () => {
    const newLinkOfA = (await replaceLink({ notebookId, household: 'a', at: later })).token
    const letIn: unknown[] = []
    for (const linkToken of [linkOfA, newLinkOfA, invitation]) {
      letIn.push((await startSession({ linkToken, at: later }))?.household)
      expect(await claimInvitation({ token: linkToken, at: later })).toHaveProperty('refused')
    }
    expect(letIn).toEqual([undefined, 'a', undefined])
    await expect(issueFirstLink({ notebookId, household: 'b', at: later })).rejects.toThrow()
  })

  test('replacing one household’s link leaves the other’s link and sessions alone', async () => {
    const sessionOfB = await enter(linkOfB)
    await replaceLink({ notebookId, household: 'a', at: later })
    expect(await lookAtToken(linkOfB)).toMatchObject({ household: 'b' })
    expect(await findSession(sessionOfB)).toEqual({ notebookId, household: 'b' })
  })
})

describe('a first link', () => {
  test('is issued once for each household', async () => {
    await expect(issueFirstLink({ notebookId, household: 'a', at })).rejects.toThrow('has a link already')
  })

  test('is not issued to the second household, which has to be invited', async () => {
    await expect(issueFirstLink({ notebookId, household: 'b', at })).rejects.toThrow('claiming an invitation')
  })

  test('is issued to both households of the example', async () => {
    const { id } = await createNotebook({ document: '{}', example: true, at })
    const a = await issueFirstLink({ notebookId: id, household: 'a', at })
    const b = await issueFirstLink({ notebookId: id, household: 'b', at })
    expect(await lookAtToken(a.token)).toEqual({ kind: 'link', notebookId: id, household: 'a' })
    expect(await lookAtToken(b.token)).toEqual({ kind: 'link', notebookId: id, household: 'b' })
  })
})

describe('a replaced link', () => {
  test('is revoked, ends every session of its household, and the new one lets in', async () => {
    const phone = await enter(linkOfA)
    const laptop = await enter(linkOfA)
    const { token } = await replaceLink({ notebookId, household: 'a', at: later })
    expect(await findSession(phone)).toBeUndefined()
    expect(await findSession(laptop)).toBeUndefined()
    const sessions = await database().read((tables) => tables.session.findMany())
    expect(sessions.map((session) => session.endedAt)).toEqual([later, later])
    expect(await startSession({ linkToken: linkOfA, at: later })).toBeUndefined()
    expect(await findSession(await enter(token))).toEqual({ notebookId, household: 'a' })
  })

  test('replaced by two at once leaves one link that lets in', async () => {
    const both = await Promise.all([1, 2].map(() => replaceLink({ notebookId, household: 'a', at: later })))
    const opened = await Promise.all(both.map(({ token }) => lookAtToken(token)))
    expect(opened.filter((key) => key !== undefined)).toHaveLength(1)
  })

  test('can only be replaced where there is one', async () => {
    await expect(replaceLink({ notebookId, household: 'b', at })).rejects.toThrow('no link to replace')
  })
})

describe('a session', () => {
  test('says whom the browser was let in as, until it is ended, and another goes on', async () => {
    const phone = await enter(linkOfA)
    const laptop = await enter(linkOfA)
    expect(phone).not.toBe(laptop)
    await endSession({ token: phone, at: later })
    expect(await findSession(phone)).toBeUndefined()
    expect(await findSession(laptop)).toEqual({ notebookId, household: 'a' })
  })

  test('ended twice, or never started, is no trouble', async () => {
    const phone = await enter(linkOfA)
    await endSession({ token: phone, at })
    await endSession({ token: phone, at: later })
    await endSession({ token: newToken(), at: later })
    await endSession({ token: 'x', at: later })
    const [row] = await database().read((tables) => tables.session.findMany())
    expect(row?.endedAt).toEqual(at)
  })

  test('does not outlive its link, even where it was not ended itself', async () => {
    const phone = await enter(linkOfA)
    await database().write((tables) => tables.entryKey.updateMany({ data: { revokedAt: later } }))
    expect(await findSession(phone)).toBeUndefined()
  })
})
