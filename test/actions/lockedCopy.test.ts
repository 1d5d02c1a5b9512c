import { execFileSync } from 'node:child_process'
import { chmodSync, existsSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test, vi } from 'vitest'
import { GET as summary } from '../../app/notebook/[notebookId]/summary.pdf/route.ts'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { enterContribution } from '../../app/notebook/server/bookActions.ts'
import { openAgain } from '../../app/notebook/server/closingActions.ts'
import { replaceOwnLink } from '../../app/notebook/server/linkActions.ts'
import { sendProposal } from '../../app/notebook/server/proposalActions.ts'
import { acceptTheirs } from '../../app/notebook/server/proposalReplyActions.ts'
import { putUpForSigning, signForParty } from '../../app/notebook/server/signActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { checkRecord } from '../../lib/seal/checkRecord.ts'
import { database } from '../../lib/store/database.ts'
import { dataFolder } from '../../lib/store/dataFolder.ts'
import { historyOf, leadsThrough } from '../../lib/store/historyChain.ts'
import { newestRevision, revisionsOf, signaturesOf } from '../../lib/store/revisions.ts'
import { sealedPaperOf, sealsOf } from '../../lib/store/sealedPapers.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { keptCookies, openBrowser } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { anEntry } from './givenBooks.ts'
import { aProposal, openedPart, proposalForm, proposingForm, signingPlace } from './givenForms.ts'
import { faultsOf, outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

const signers = [
  ['a', 0, 'Marnie Oakshott'],
  ['a', 1, 'Tobias Oakshott'],
  ['b', 0, 'Ines Vandermolen'],
] as const

async function putUp(): Promise<void> {
  const { id } = world().notebook
  await markEverything(id)
  browseAs(world(), 'a')
  expect(await outcomeOf(() => putUpForSigning(id, {}, new FormData()))).toMatchObject({ kind: 'redirect' })
}

async function sign(household: Household, partyIndex: number, typedName: string): Promise<void> {
  const { id } = world().notebook
  browseAs(world(), household)
  const place = await signingPlace(id, partyIndex)
  const draft = { typedName, intent: true, drawing: '' }
  expect(await outcomeOf(() => signForParty(id, place, '', draft))).toMatchObject({ kind: 'redirect' })
}

/** Puts it up and has all three parties sign. */
async function signByAll(): Promise<void> {
  await putUp()
  for (const [household, index, name] of signers) await sign(household, index, name)
}

async function download(revision: number, household: Household = 'b'): Promise<Response> {
  browseAs(world(), household)
  const request = new Request(`http://localhost/notebook/x/summary.pdf?revision=${revision}`)
  return summary(request, { params: Promise.resolve({ notebookId: world().notebook.id }) })
}

async function bytesOf(answer: Response): Promise<Buffer> {
  return Buffer.from(await answer.arrayBuffer())
}

/** What an outside program says of these bytes. */
function toolSays(tool: string, bytes: Uint8Array, ...options: string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'mearing-locked-'))
  try {
    const file = join(folder, 'copy.pdf')
    writeFileSync(file, bytes)
    return execFileSync(tool, [...options, file, ...(tool === 'pdftotext' ? ['-'] : [])], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    })
  } finally {
    rmSync(folder, { recursive: true })
  }
}

async function changeTheStart(start: string): Promise<void> {
  const { id } = world().notebook
  browseAs(world(), 'a')
  const { draft, base } = await openedPart<{ line: object }>(id, { part: 'line' })
  const answer = await saveNotebookPart(id, { part: 'line' }, base, { line: { ...draft.line, start } })
  expect(answer).toMatchObject({ saved: true })
}

describe('the locked copy', () => {
  test('is made with the last signature, not before, and by a key that nobody else can read', async () => {
    const { id } = world().notebook
    await putUp()
    await sign('a', 0, 'Marnie Oakshott')
    await sign('a', 1, 'Tobias Oakshott')
    expect((await sealsOf(id)).size).toBe(0)
    await sign('b', 0, 'Ines Vandermolen')
    expect((await sealsOf(id)).size).toBe(1)
    expect(statSync(join(dataFolder(), 'seal-key.pem')).mode & 0o777).toBe(0o600)
  })

  test('is served byte for byte the same to both, whatever the books say since', async () => {
    const { id } = world().notebook
    await signByAll()
    const first = await bytesOf(await download(1, 'a'))
    browseAs(world(), 'b')
    const gift = anEntry({ amount: '12.00' })
    await outcomeOf(() => enterContribution(id, '', gift))
    expect((await documentOf(id)).contributions).toContainEqual(expect.objectContaining({ amount: '12.00' }))
    const second = await bytesOf(await download(1, 'b'))
    expect(sha256Hex(second)).toBe(sha256Hex(first))
  })

  test('is whole and sealed for outside readers, and for our own check', async () => {
    await signByAll()
    const bytes = await bytesOf(await download(1))
    const seen = toolSays('pdfsig', bytes)
    expect(seen).toContain('Signature Validation: Signature is Valid.')
    expect(seen).toContain('Total document signed')
    expect(toolSays('qpdf', bytes, '--check')).toContain('No syntax or stream encoding errors found')
    expect(await checkRecord(bytes)).toMatchObject({ holds: true, problems: [] })
    const changed = Buffer.from(bytes)
    changed[5000] = (changed[5000] ?? 0) ^ 1
    expect(toolSays('pdfsig', changed)).not.toContain('Signature is Valid')
    expect((await checkRecord(changed)).holds).toBe(false)
  })

  test('prints the newest entry of the history, and the history goes on to lead through it', async () => {
    const { id } = world().notebook
    await signByAll()
    const revision = await newestRevision(id)
    const paper = await sealedPaperOf(revision?.id ?? '')
    const history = await historyOf(id)
    const printed = toolSays('pdftotext', paper?.bytes ?? new Uint8Array()).replace(/\s+/g, ' ')
    expect(paper?.history.entry).toBeGreaterThan(5)
    expect(history[(paper?.history.entry ?? 0) - 1]?.kind).toBe('sign')
    expect(printed).toContain(`number ${paper?.history.entry}.`)
    expect(printed.replaceAll(' ', '')).toContain(paper?.history.hash)
    await changeTheStart('the lane, at the old oak')
    expect(leadsThrough(await historyOf(id), paper?.history ?? { entry: -1, hash: '' })).toBe(true)
  })

  test('goes on to be had when the draft is changed and another revision is put up', async () => {
    await signByAll()
    const first = await bytesOf(await download(1))
    await changeTheStart('the lane, at the old oak')
    await signByAll()
    expect(sha256Hex(await bytesOf(await download(1)))).toBe(sha256Hex(first))
    expect((await checkRecord(await bytesOf(await download(2)))).holds).toBe(true)
  })
})

describe('when something goes wrong with the locked copy', () => {
  test('killed between the last signature and the seal: it is made when it is next asked for', async () => {
    const { id } = world().notebook
    await signByAll()
    // As if the program had died right after the signature was on disk.
    await database().write(async (tables) => {
      await tables.$executeRawUnsafe('DROP TRIGGER "SealedPaper_never_deleted"')
      await tables.sealedPaper.deleteMany()
    })
    const answer = await download(1)
    expect(answer.headers.get('Content-Type')).toBe('application/pdf')
    expect((await checkRecord(await bytesOf(answer))).holds).toBe(true)
    expect((await sealsOf(id)).size).toBe(1)
  })

  test('two ask for it at once: both get the same bytes', async () => {
    await signByAll()
    await database().write(async (tables) => {
      await tables.$executeRawUnsafe('DROP TRIGGER "SealedPaper_never_deleted"')
      await tables.sealedPaper.deleteMany()
    })
    const [one, other] = await Promise.all([download(1), download(1)])
    expect(sha256Hex(await bytesOf(one))).toBe(sha256Hex(await bytesOf(other)))
  })

  test('the key is missing although there was one: the signatures stay, and the answer says what to do', async () => {
    const { id } = world().notebook
    await signByAll()
    await changeTheStart('the lane, at the old oak')
    rmSync(join(dataFolder(), 'seal-key.pem'))
    await signByAll()
    const revision = await newestRevision(id)
    expect(await signaturesOf(revision?.id ?? '')).toHaveLength(3)
    const answer = await download(2)
    expect(answer.status).toBe(503)
    const said = await answer.text()
    expect(said).toContain('All signatures are kept.')
    expect(said).toContain('backup of the data folder')
    expect(existsSync(join(dataFolder(), 'seal-key.pem'))).toBe(false)
    // The first one is still to be had, and the second once a new seal was begun knowingly.
    expect((await download(1)).status).toBe(200)
    writeFileSync(join(dataFolder(), 'seal-key.known'), 'new')
    expect((await checkRecord(await bytesOf(await download(2)))).holds).toBe(true)
  })

  test('the key can be read by others: it is not used', async () => {
    await putUp()
    await sign('a', 0, 'Marnie Oakshott')
    await sign('a', 1, 'Tobias Oakshott')
    await sign('b', 0, 'Ines Vandermolen')
    await changeTheStart('the lane, at the old oak')
    chmodSync(join(dataFolder(), 'seal-key.pem'), 0o644)
    await signByAll()
    const answer = await download(2)
    expect(answer.status).toBe(503)
    expect(await answer.text()).toContain('chmod 600')
    chmodSync(join(dataFolder(), 'seal-key.pem'), 0o600)
    expect((await download(2)).status).toBe(200)
  })

  test('one household’s link is replaced between the two signatures: what is signed stays, and the rest can sign', async () => {
    const { id } = world().notebook
    await putUp()
    await sign('a', 0, 'Marnie Oakshott')
    await sign('a', 1, 'Tobias Oakshott')
    const place = await signingPlace(id, 0)
    const draft = { typedName: 'Ines Vandermolen', intent: true, drawing: '' }
    const signIt = () => outcomeOf(() => signForParty(id, place, '', draft))
    browseAs(world(), 'b')
    await outcomeOf(() => replaceOwnLink(id, {}, new FormData()))
    // This browser came in by the new link; the old session lets nobody sign any more.
    const newSession = keptCookies()
    browseAs(world(), 'b')
    expect(await signIt()).toMatchObject({ kind: 'not found' })
    expect(await signaturesOf(place.revisionId)).toHaveLength(2)
    openBrowser(newSession)
    expect(await signIt()).toMatchObject({ kind: 'redirect' })
    expect((await sealsOf(id)).size).toBe(1)
  })
})

describe('an amendment', () => {
  test('says in words on its paper what differs from the revision before, and which one that is', async () => {
    await signByAll()
    await changeTheStart('the lane, at the old oak')
    await signByAll()
    const text = toolSays('pdftotext', await bytesOf(await download(2)), '-layout').replace(/\s+/g, ' ')
    expect(text).toContain('What changed since revision 1')
    expect(text).toContain('iron pin at the lane before, the lane, at the old oak now')
    const first = toolSays('pdftotext', await bytesOf(await download(1)), '-layout')
    expect(first).not.toContain('What changed since')
  })

  test('is held against the newest that all have signed, not against one that was only put up', async () => {
    const { id } = world().notebook
    await signByAll()
    await changeTheStart('the first try')
    await putUp()
    await changeTheStart('the second try')
    await signByAll()
    const text = toolSays('pdftotext', await bytesOf(await download(3)), '-layout').replace(/\s+/g, ' ')
    expect(text).toContain('What changed since revision 1')
    expect(text).not.toContain('the first try')
    expect(await revisionsOf(id)).toHaveLength(3)
  })
})

describe('closing the notebook', () => {
  const closing = {
    on: '2027-09-30',
    asBuilt: [{ what: 'Height at the lane', measured: '6 ft 1 in' }],
    upkeep: [{ what: 'Oil the hinges', household: 'b', every: 'year' }],
  }

  async function close(): Promise<void> {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const { base } = await openedPart(id, { part: 'closing' })
    expect(await saveNotebookPart(id, { part: 'closing' }, base, { closing })).toMatchObject({ saved: true })
    await signByAll()
  }

  test('is an item that both mark, and its paper says how the fence came out', async () => {
    await signByAll()
    await close()
    const text = toolSays('pdftotext', await bytesOf(await download(2)), '-layout').replace(/\s+/g, ' ')
    expect(text).toContain('How the fence came out')
    expect(text).toContain('30 September 2027')
    expect(text).toContain('Height at the lane 6 ft 1 in')
    expect(text).toContain('Oil the hinges no. 14 every year')
    expect(text).toMatch(/It was planned at \$[0-9,.]+ in all/)
  })

  test('refuses a day that is none, and changes nothing', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const { base } = await openedPart(id, { part: 'closing' })
    const before = await everyTable()
    const answer = await outcomeOf(() =>
      saveNotebookPart(id, { part: 'closing' }, base, { closing: { ...closing, on: '2027-02-30' } }),
    )
    expect(Object.keys(faultsOf(answer))).toEqual(['closing.on'])
    expect(await everyTable()).toEqual(before)
  })

  test('leaves only the books open, until it is opened again', async () => {
    const { id } = world().notebook
    await close()
    browseAs(world(), 'b')
    const terms = await openedPart(id, { part: 'terms' })
    const edit = () =>
      outcomeOf(() =>
        saveNotebookPart(id, { part: 'terms' }, terms.base, {
          terms: [{ topic: 'Snow', text: 'Let it lie.' }],
        }),
      )
    const before = await everyTable()
    expect(faultsOf(await edit())['']).toContain('closed by revision 1')
    expect(await everyTable()).toEqual(before)
    const cash = anEntry({ amount: '5.00' })
    expect(await outcomeOf(() => enterContribution(id, '', cash))).toMatchObject({ kind: 'redirect' })
    expect(await outcomeOf(() => openAgain(id, {}, new FormData()))).toMatchObject({ kind: 'redirect' })
    expect(await edit()).toMatchObject({ kind: 'answer', answer: { saved: true } })
    expect((await revisionsOf(id))[0]?.canonicalText).toContain('"closing"')
  })

  test('takes no proposal while it is closed, and none that was made before goes into it', async () => {
    const { id } = world().notebook
    await aProposal(id, 'a', 's1')
    await close()
    browseAs(world(), 'b')
    const before = await everyTable()
    const { base, draft } = await proposingForm(id, ['s2'])
    expect(faultsOf(await outcomeOf(() => sendProposal(id, 0, base, draft)))['']).toContain(
      'closed by revision 1',
    )
    const form = await proposalForm(id, 'a')
    expect(refusalOf(await outcomeOf(() => acceptTheirs(id, {}, form)))).toContain('closed by revision 1')
    expect(await everyTable()).toEqual(before)
  })

  test('can be amended and closed again once it was opened again', async () => {
    const { id } = world().notebook
    await close()
    browseAs(world(), 'b')
    await outcomeOf(() => openAgain(id, {}, new FormData()))
    await changeTheStart('the lane, at the old oak')
    const { base } = await openedPart(id, { part: 'closing' })
    const later = { ...closing, on: '2028-01-15' }
    expect(await saveNotebookPart(id, { part: 'closing' }, base, { closing: later })).toMatchObject({
      saved: true,
    })
    // Not closed by the old revision, since the draft says something else: it can still be edited, marked and signed.
    await changeTheStart('the lane, at the young oak')
    await signByAll()
    browseAs(world(), 'a')
    const start = await openedPart<{ line: object }>(id, { part: 'line' })
    const answer = await outcomeOf(() =>
      saveNotebookPart(id, { part: 'line' }, start.base, {
        line: { ...start.draft.line, start: 'elsewhere' },
      }),
    )
    expect(faultsOf(answer)['']).toContain('closed by revision 2')
  })
})
