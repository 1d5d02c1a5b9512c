import { describe, expect, test, vi } from 'vitest'
import { GET, POST } from '../../app/notebook/[notebookId]/letter.pdf/route.ts'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { inviteByLetter } from '../../app/notebook/server/letterActions.ts'
import { letterOpenPoints } from '../../app/notebook/server/letterOf.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { claimInvitation } from '../../lib/store/entryKeys.ts'
import { notebookWith, sectionOf } from '../core/madeNotebook.ts'
import { readPdf, wordsOf } from '../pdf/readPdf.ts'
import { writtenLetter } from '../words/letter/writtenLetter.ts'
import { openBrowser } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { ownHost } from './givenFiles.ts'
import { aLetterIn, openedPart } from './givenForms.ts'
import { faultsOf, outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, documentOf, sessionCookie, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

/** Goes on as household a of the notebook into which nobody else has come yet. */
function asStarter(): string {
  const { id, session } = world().waiting
  openBrowser({ [sessionCookie(id)]: session })
  return id
}

const part = { part: 'letter' } as const
async function save(letter: object) {
  const id = asStarter()
  const { base } = await openedPart(id, part)
  return outcomeOf(() => saveNotebookPart(id, part, base, { letter }))
}

function paperFor(
  id: string,
  token: string,
  headers: Record<string, string> = { origin: `http://${ownHost}` },
) {
  const request = new Request(`http://${ownHost}/notebook/${id}/letter.pdf`, {
    method: 'POST',
    body: new URLSearchParams({ token }),
    headers: { host: ownHost, ...headers },
  })
  return outcomeOf(() => POST(request, { params: Promise.resolve({ notebookId: id }) }))
}
const responseOf = (end: Awaited<ReturnType<typeof paperFor>>) => {
  if (end.kind !== 'answer') throw new Error(end.kind)
  return end.answer as Response
}
const wordsIn = async (response: Response) =>
  wordsOf(...(await readPdf(new Uint8Array(await response.arrayBuffer()))).pages)

async function handedOut(id: string) {
  const made = await inviteByLetter(id)
  if ('refused' in made) throw new Error(made.refused)
  return made
}

describe('the form of the letter', () => {
  test('keeps what was written', async () => {
    expect(await save(writtenLetter)).toMatchObject({ kind: 'answer', answer: { saved: true } })
    expect((await documentOf(world().waiting.id)).letter).toEqual(writtenLetter)
  })

  test('refuses a day to answer by that comes before the notice is over, and names the first that does not', async () => {
    const before = await everyTable()
    expect(faultsOf(await save({ ...writtenLetter, answerBy: '2027-03-30' }))).toEqual({
      'letter.answerBy': expect.stringContaining('31 March 2027 or a later day'),
    })
    expect(
      faultsOf(await save({ ...writtenLetter, saidBy: '', noticeDays: '1.5', workTo: '2027-05-01' })),
    ).toEqual({
      'letter.noticeDays': expect.stringContaining('Whole days'),
      'letter.saidBy': expect.stringContaining('who said'),
      'letter.workTo': expect.stringContaining('before the first day'),
    })
    expect(faultsOf(await save({ ...writtenLetter, on: '2027-02-30' }))).toHaveProperty(['letter.on'])
    expect(
      faultsOf(await save({ ...writtenLetter, on: '2027-02-30', noticeDays: '1.5', workTo: '2027-05-01' })),
    ).toEqual({
      'letter.on': expect.stringContaining('not a day of the calendar'),
      'letter.noticeDays': expect.stringContaining('Whole days'),
      'letter.workTo': expect.stringContaining('before the first day'),
    })
    expect(await everyTable()).toEqual(before)
  })

  test('tells a notice that is no number once, as it would be right', async () => {
    const sent = await save({ ...writtenLetter, noticeDays: '30 days', saidBy: '' })
    expect(sent).toEqual({
      kind: 'answer',
      answer: {
        faults: [
          { path: 'letter.noticeDays', message: '"30 days" can\'t be read as a number: write "30".' },
          { path: 'letter.saidBy', message: expect.stringContaining('who said') },
        ],
      },
    })
  })
})

describe('the letter with an invitation', () => {
  test('carries a new invitation as text, which lets the other household in, and ends the one before', async () => {
    const id = asStarter()
    await aLetterIn(id)
    const made = await handedOut(id)
    expect(made.address.endsWith(`/open/${made.token}`)).toBe(true)
    expect(made.text).toContain(`\n${made.address}\n`)
    expect(made.text).toContain('Please answer by 31 March 2027.')
    const at = new Date()
    expect(await claimInvitation({ token: world().waiting.invitation, at })).toEqual({ refused: 'unknown' })
    expect(await claimInvitation({ token: made.token, at })).toMatchObject({ notebookId: id, household: 'b' })
  })

  test('is a PDF for whoever sends the token, kept by no cache, and the token is stored nowhere', async () => {
    const id = asStarter()
    await aLetterIn(id)
    const made = await handedOut(id)
    const stored = JSON.stringify(await everyTable({ withDoor: true }))
    expect(stored).not.toContain(made.token)
    const response = responseOf(await paperFor(id, made.token))
    expect(response.status).toBe(200)
    expect(response.headers.get('content-type')).toBe('application/pdf')
    expect(response.headers.get('cache-control')).toBe('private, no-store')
    expect(await wordsIn(response)).toContain(made.address)
    expect(JSON.stringify(await everyTable({ withDoor: true }))).toBe(stored)
  })

  test('is refused where nothing is written yet, and the waiting invitation stays good', async () => {
    const id = asStarter()
    const before = await everyTable({ withDoor: true })
    expect(refusalOf(await outcomeOf(() => inviteByLetter(id)))).toContain('Write and save the letter first.')
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })

  test('that is too long for a page is refused, says by how much, and ends no invitation', async () => {
    const id = asStarter()
    await aLetterIn(id, { wrong: 'rot '.repeat(5_000) })
    const before = await everyTable({ withDoor: true })
    const refused = refusalOf(await outcomeOf(() => inviteByLetter(id)))
    expect(refused).toMatch(
      /^The letter is [0-9]+ lines too long for one page.* by about [0-9]+ characters\.$/,
    )
    expect(await everyTable({ withDoor: true })).toEqual(before)
    const response = responseOf(await paperFor(id, world().waiting.invitation))
    expect([response.status, await response.text()]).toEqual([422, `${refused}\n`])
  })

  test.each<[string, () => string]>([
    ['an invitation to another notebook', () => world().other.usedInvitation],
    ['a private link', () => world().waiting.link],
    ['a session', () => world().waiting.session],
    ['a made-up token', () => 'x'.repeat(43)],
    ['nothing', () => ''],
    ['far too much', () => 'x'.repeat(100_000)],
  ])('is not made for %s', async (_what, tokenOf) => {
    const id = asStarter()
    await aLetterIn(id)
    expect((await paperFor(id, tokenOf())).kind).toBe('not found')
  })

  test('is not made for an invitation that was claimed or ended, and says so', async () => {
    const { notebook } = world()
    browseAs(world(), 'a')
    for (const token of [notebook.usedInvitation, notebook.revokedInvitation]) {
      const response = responseOf(await paperFor(notebook.id, token))
      expect([response.status, await response.text()]).toEqual([
        410,
        expect.stringContaining('works no more'),
      ])
    }
  })

  test('is made for no page of another site', async () => {
    const id = asStarter()
    await aLetterIn(id)
    for (const headers of [{ origin: 'https://elsewhere.example' }, { origin: 'null' }, {}]) {
      const end = await paperFor(id, world().waiting.invitation, headers as Record<string, string>)
      expect(responseOf(end).status).toBe(403)
    }
  })
})

describe('the letter without an invitation', () => {
  const without = async (id: string) =>
    wordsIn(
      (await GET(new Request('http://x/'), { params: Promise.resolve({ notebookId: id }) })) as Response,
    )

  test('has a line for its address while the other household is not in', async () => {
    const id = asStarter()
    await aLetterIn(id)
    expect(await without(id)).toContain('Address of the invitation:')
  })

  test('is for the record once it is in, for both', async () => {
    await aLetterIn(world().notebook.id)
    for (const household of ['a', 'b'] as const) {
      browseAs(world(), household)
      const words = await without(world().notebook.id)
      expect(words).toContain('Three posts are rotten.')
      expect(words).not.toMatch(/Address of|\/open\//)
    }
  })
})

describe('what is proposed', () => {
  const sections = [sectionOf('900', { principle: 'equal' })]
  const openPoints = (parts: Record<string, unknown>) => {
    const notebook = notebookWith(parts)
    return letterOpenPoints({ notebook, statement: statementOf(notebook) }, '2027-04-01').join('\n')
  }

  test('is told to be a suggestion that waits to be saved, while the form alone has it', () => {
    expect(openPoints({ sections })).toContain('filled in above as a suggestion only')
    expect(openPoints({ sections })).not.toContain('Not said yet: What we propose')
  })

  test('is told to be missing where the notebook has nothing to suggest, or the letter was saved without it', () => {
    expect(openPoints({})).toContain('Not said yet: What we propose.')
    expect(openPoints({ sections, letter: { ...writtenLetter, proposed: '' } })).toContain(
      'Not said yet: What we propose.',
    )
  })

  test('is not spoken of once the letter has it', () => {
    expect(openPoints({ sections, letter: writtenLetter })).not.toMatch(/propose\b|suggestion/)
  })
})
