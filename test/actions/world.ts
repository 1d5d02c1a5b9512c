import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeEach } from 'vitest'
import { agreedItems } from '../../lib/core/agreement/agreedItems.ts'
import { assert } from '../../lib/core/assert.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { documentText } from '../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../lib/forms/readNotebook.ts'
import { closeDatabase, database } from '../../lib/store/database.ts'
import { databasePath } from '../../lib/store/dataFolder.ts'
import { claimInvitation, issueFirstLink, issueInvitation, replaceLink } from '../../lib/store/entryKeys.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { createNotebook, findNotebook } from '../../lib/store/notebooks.ts'
import { newToken } from '../../lib/store/randomToken.ts'
import { startSession } from '../../lib/store/sessions.ts'
import { makeDatabaseFile } from '../store/temporaryDatabase.ts'
import { openBrowser } from './browser.ts'

const at = new Date('2027-03-01T18:00:00Z')

/** A notebook with its keys, as they were handed out. */
export type MadeNotebook = {
  readonly id: string
  readonly links: Readonly<Record<Household, string>>
  readonly sessions: Readonly<Record<Household, string>>
  /** The invitation that household b claimed. */
  readonly usedInvitation: string
  /** An earlier one that was never claimed and that the later one ended. */
  readonly revokedInvitation: string
}

/** Who is in the world of these tests. */
export type World = {
  /** Both households are in. */
  readonly notebook: MadeNotebook
  /** Of two other households, with the same document. */
  readonly other: MadeNotebook
  /** Household a is in; household b holds an invitation that it has not claimed. */
  readonly waiting: {
    readonly id: string
    readonly link: string
    readonly session: string
    readonly invitation: string
  }
  /** Household a's former link to `notebook`, and the session of a browser that it had let in. */
  readonly replaced: { readonly link: string; readonly session: string }
  /** The example, opened as household a. */
  readonly example: { readonly id: string; readonly session: string }
}

let made: { readonly folder: string; readonly world: World } | undefined

/** Every test of the file starts from a database file of its own, in which this world has been made. */
export function worldForEachTest(): () => World {
  let folder = ''
  let world: World | undefined
  const setBefore = process.env.MEARING_DATA

  beforeEach(async () => {
    made ??= await makeOnce()
    world = made.world
    folder = mkdtempSync(join(tmpdir(), 'mearing-actions-'))
    process.env.MEARING_DATA = folder
    copyFileSync(join(made.folder, 'mearing.db'), databasePath())
    openBrowser()
  })

  afterEach(async () => {
    await closeDatabase()
    rmSync(folder, { recursive: true })
  })

  afterAll(() => {
    if (made) rmSync(made.folder, { recursive: true })
    made = undefined
    if (setBefore === undefined) delete process.env.MEARING_DATA
    else process.env.MEARING_DATA = setBefore
  })

  return () => {
    assert(world !== undefined, 'the world is there while a test runs')
    return world
  }
}

async function makeOnce(): Promise<{ folder: string; world: World }> {
  const folder = mkdtempSync(join(tmpdir(), 'mearing-world-'))
  process.env.MEARING_DATA = folder
  await makeDatabaseFile(databasePath())
  const world = await makeWorld()
  await closeDatabase()
  assert(
    !existsSync(`${databasePath()}-wal`),
    'a database that was closed is one file, so that it can be copied',
  )
  return { folder, world }
}

async function makeWorld(): Promise<World> {
  const notebook = await makeNotebook()
  const former = await startedSession(notebook.links.a)
  const newLink = (await replaceLink({ notebookId: notebook.id, household: 'a', at })).token
  const kept = {
    ...notebook,
    links: { ...notebook.links, a: newLink },
    sessions: { ...notebook.sessions, a: await startedSession(newLink) },
  }
  const { id: waitingId } = await createNotebook({
    document: documentText(exampleDocument()),
    example: false,
    at,
  })
  const { token: waitingLink } = await issueFirstLink({ notebookId: waitingId, household: 'a', at })
  const invited = await issueInvitation({ notebookId: waitingId, at })
  assert('token' in invited, 'nobody has come in yet')
  const { id: exampleId } = await createNotebook({
    document: documentText(exampleDocument()),
    example: true,
    at,
  })
  const { token: exampleLink } = await issueFirstLink({ notebookId: exampleId, household: 'a', at })
  return {
    notebook: kept,
    other: await makeNotebook(),
    waiting: {
      id: waitingId,
      link: waitingLink,
      session: await startedSession(waitingLink),
      invitation: invited.token,
    },
    replaced: { link: notebook.links.a, session: former },
    example: { id: exampleId, session: await startedSession(exampleLink) },
  }
}

async function makeNotebook(): Promise<MadeNotebook> {
  const { id } = await createNotebook({ document: documentText(exampleDocument()), example: false, at })
  const { token: a } = await issueFirstLink({ notebookId: id, household: 'a', at })
  const [first, second] = [
    await issueInvitation({ notebookId: id, at }),
    await issueInvitation({ notebookId: id, at }),
  ]
  assert('token' in first && 'token' in second, 'nobody has come in yet')
  const claimed = await claimInvitation({ token: second.token, at })
  assert('token' in claimed, 'the invitation has not been claimed')
  return {
    id,
    links: { a, b: claimed.token },
    sessions: { a: await startedSession(a), b: await startedSession(claimed.token) },
    usedInvitation: second.token,
    revokedInvitation: first.token,
  }
}

async function startedSession(linkToken: string): Promise<string> {
  const session = await startSession({ linkToken, at })
  assert(session !== undefined, 'the link lets its household in')
  return session.token
}

export function sessionCookie(notebookId: string): string {
  return `mearing-${notebookId}`
}

/** Goes on as a household of `notebook`. */
export function browseAs(world: World, household: Household): void {
  openBrowser({ [sessionCookie(world.notebook.id)]: world.notebook.sessions[household] })
}

/** Everyone who was not let in to the notebook that they ask for. `asks` opens their browser and names that notebook. */
export const strangers: readonly { readonly who: string; readonly asks: (world: World) => string }[] = [
  { who: 'nobody in particular', asks: (world) => visit(world.notebook.id, {}) },
  { who: 'the holder of an unclaimed invitation', asks: (world) => visit(world.waiting.id, {}) },
  {
    who: 'the holder of an unclaimed invitation, who gives it for a session',
    asks: (world) => visit(world.waiting.id, { [sessionCookie(world.waiting.id)]: world.waiting.invitation }),
  },
  {
    who: 'the holder of a used invitation, who gives it for a session',
    asks: (world) =>
      visit(world.notebook.id, { [sessionCookie(world.notebook.id)]: world.notebook.usedInvitation }),
  },
  {
    who: 'somebody who gives a link for a session',
    asks: (world) => visit(world.notebook.id, { [sessionCookie(world.notebook.id)]: world.notebook.links.b }),
  },
  {
    who: 'a household of another notebook',
    asks: (world) => visit(world.notebook.id, { [sessionCookie(world.other.id)]: world.other.sessions.a }),
  },
  {
    who: 'a household of another notebook, who gives its session for this one',
    asks: (world) => visit(world.notebook.id, { [sessionCookie(world.notebook.id)]: world.other.sessions.b }),
  },
  {
    who: 'a browser whose household has replaced the link it came in by',
    asks: (world) => visit(world.notebook.id, { [sessionCookie(world.notebook.id)]: world.replaced.session }),
  },
  {
    who: 'somebody with a made-up session',
    asks: (world) => visit(world.notebook.id, { [sessionCookie(world.notebook.id)]: newToken() }),
  },
  {
    who: 'somebody whose session is no token at all',
    asks: (world) => visit(world.notebook.id, { [sessionCookie(world.notebook.id)]: "' OR 1=1 --" }),
  },
  {
    who: 'a household that asks for a notebook that never was',
    asks: (world) => neverWas(world, 'AAAAAAAAAAAAAAAAAAAAAA'),
  },
  { who: 'a household that asks for what is no id', asks: (world) => neverWas(world, '../other') },
]

function visit(notebookId: string, sends: Record<string, string>): string {
  openBrowser(sends)
  return notebookId
}

function neverWas(world: World, id: string): string {
  const { notebook } = world
  return visit(id, {
    [sessionCookie(notebook.id)]: notebook.sessions.a,
    [sessionCookie(id)]: notebook.sessions.a,
  })
}

/** The document of a notebook as it is stored. */
export async function documentOf(notebookId: string): Promise<NotebookDocument> {
  const stored = await findNotebook(notebookId)
  assert(stored !== undefined, 'there is such a notebook')
  return JSON.parse(stored.document) as NotebookDocument
}

/** What a mark on this item has to say, as the item stands. */
export async function fingerprintOfItem(notebookId: string, itemKey: string): Promise<string> {
  const item = agreedItems(await documentOf(notebookId)).find((one) => one.key === itemKey)
  assert(item !== undefined, `there is an item ${itemKey}`)
  return fingerprintOf(item.inputs)
}

/** Marks every item for these households, as it stands. */
export async function markEverything(
  notebookId: string,
  households: readonly Household[] = ['a', 'b'],
): Promise<void> {
  const items = agreedItems(await documentOf(notebookId))
  const data = items.flatMap(({ key: itemKey, inputs }) =>
    households.map((household) => ({
      notebookId,
      itemKey,
      household,
      fingerprint: fingerprintOf(inputs),
      at,
    })),
  )
  await database().write(async (tables) => {
    await tables.mark.deleteMany({ where: { notebookId, household: { in: [...households] } } })
    await tables.mark.createMany({ data })
  })
}
