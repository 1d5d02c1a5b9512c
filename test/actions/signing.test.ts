import { createHash } from 'node:crypto'
import { describe, expect, test, vi } from 'vitest'
import { GET as agreementFile } from '../../app/notebook/[notebookId]/agreement.json/route.ts'
import { saveNotebookPart, takeAgreementBack } from '../../app/notebook/server/actions.ts'
import { enterContribution } from '../../app/notebook/server/bookActions.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { putUpForSigning, type SigningPlace, signForParty } from '../../app/notebook/server/signActions.ts'
import type { Obstacle } from '../../lib/core/agreement/readiness.ts'
import { assert } from '../../lib/core/assert.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { newestRevision, type Revision, revisionsOf, signaturesOf } from '../../lib/store/revisions.ts'
import { openBrowser } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { anEntry } from './givenBooks.ts'
import { formWithFile, markForm, openedPart, signingPlace } from './givenForms.ts'
import { faultsOf, type Outcome, outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, documentOf, markEverything, sessionCookie, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

// biome-ignore lint/suspicious/noExplicitAny: documents are spoilt on purpose, at places that no type knows.
type Spoilt = any

/** Puts the notebook up for signing as a household. */
async function putUp(household: Household): Promise<Outcome> {
  browseAs(world(), household)
  return outcomeOf(() => putUpForSigning(world().notebook.id, {}, new FormData()))
}

async function standing(): Promise<Revision> {
  const revision = await newestRevision(world().notebook.id)
  assert(revision !== undefined, 'a revision has been put up')
  return revision
}

/** Marks everything and puts it up. */
async function putUpReady(household: Household = 'a'): Promise<Revision> {
  await markEverything(world().notebook.id)
  expect(await putUp(household)).toEqual({ kind: 'redirect', to: `/notebook/${world().notebook.id}/sign` })
  return standing()
}

const wellSigned = { typedName: 'Marnie Oakshott', intent: true, drawing: '' }

async function sign(household: Household, place: Partial<SigningPlace>, draft: unknown): Promise<Outcome> {
  browseAs(world(), household)
  const { id } = world().notebook
  const whole = { ...(await signingPlace(id)), ...place }
  return outcomeOf(() => signForParty(id, whole, '', draft))
}

async function changeTheLine(start: string): Promise<void> {
  const { id } = world().notebook
  const { draft, base } = await openedPart<{ line: object }>(id, { part: 'line' })
  expect(
    await saveNotebookPart(id, { part: 'line' }, base, { line: { ...draft.line, start } }),
  ).toMatchObject({ saved: true })
}

describe('putting it up for signing is refused where', () => {
  const obstacles: Readonly<
    Record<Obstacle['kind'], { readonly spoil: (document: Spoilt) => void; readonly said: string }>
  > = {
    'not agreed': { spoil: () => {}, said: 'The line: not marked as agreed by no. 14.' },
    'no party': {
      spoil: (document) => (document.households.b.parties = []),
      said: 'No. 14 has no party yet who could sign: name a person who does.',
    },
    'party unnamed': {
      spoil: (document) => (document.households.a.parties[1].name = '  '),
      said: 'Party 2 of no. 12 has no name.',
    },
    'party without capacity': {
      spoil: (document) => delete document.households.b.parties[0].capacity,
      said: 'Party 1 of no. 14 has not said yet as what it signs, such as “owner”.',
    },
    'nothing to build': {
      spoil: (document) => {
        document.sections = []
        document.gates = []
        document.contributions = []
      },
      said: 'There is no section and no gate yet.',
    },
    'unknown key': {
      spoil: (document) => (document.sections[1].surface = 'oiled'),
      said: 'sections[1].surface',
    },
    fault: {
      spoil: (document) => (document.caps = { a: '1.00', b: '1.00' }),
      said: 'The shares can’t be worked out yet. The caps: ',
    },
  }

  test.each(Object.entries(obstacles))('%s', async (kind, { spoil, said }) => {
    const { id } = world().notebook
    const document = structuredClone(exampleDocument())
    spoil(document)
    browseAs(world(), 'a')
    await outcomeOf(() => replaceByFile(id, {}, formWithFile(documentText(document))))
    await markEverything(id)
    if (kind === 'not agreed') {
      browseAs(world(), 'b')
      await outcomeOf(async () => takeAgreementBack(id, {}, await markForm(id, 'line')))
    }
    const before = await everyTable()
    for (const household of ['a', 'b'] as const) {
      const refusal = refusalOf(await putUp(household))
      expect(refusal).toContain(said)
      // This one alone: everything else is as it has to be.
      expect(refusal.replace(said, '').length).toBeLessThan(
        kind === 'fault' || kind === 'unknown key' ? 250 : 45,
      )
    }
    expect(await everyTable()).toEqual(before)
  })

  test('a mark was set on what has been changed since', async () => {
    await markEverything(world().notebook.id)
    browseAs(world(), 'b')
    await changeTheLine('elsewhere')
    expect(refusalOf(await putUp('a'))).toContain('The line: not marked as agreed by no. 12 and no. 14.')
    expect(await revisionsOf(world().notebook.id)).toEqual([])
  })
})

describe('what is frozen', () => {
  test('is the notebook without its books, in canonical form, under the SHA-256 of its bytes', async () => {
    const { id } = world().notebook
    const { contributions, ...agreement } = await documentOf(id)
    expect(contributions).toHaveLength(10)
    const { canonicalText, sha256, number, frozenBy } = await putUpReady('b')
    expect(JSON.parse(canonicalText)).toEqual(agreement)
    expect(canonicalText).not.toContain('contributions')
    // RFC 8785: no white space, and keys in the order of their code units.
    expect(canonicalText.startsWith('{"arrangements":{"instalments":{"from":"b","parts":[{"amount":')).toBe(
      true,
    )
    expect(sha256).toBe(createHash('sha256').update(canonicalText, 'utf8').digest('hex'))
    expect([number, frozenBy]).toEqual([1, 'b'])

    const file = await agreementFile(new Request('http://localhost/?revision=1'), {
      params: Promise.resolve({ notebookId: id }),
    })
    expect(
      createHash('sha256')
        .update(new Uint8Array(await file.arrayBuffer()))
        .digest('hex'),
    ).toBe(sha256)
  })

  test('is frozen once: with nothing changed but the books, the same revision stands, with its signatures', async () => {
    const { id } = world().notebook
    const first = await putUpReady('a')
    await sign('a', {}, wellSigned)
    const given = anEntry({ household: 'a' })
    await outcomeOf(() => enterContribution(id, 'new', given))
    expect(await putUp('b')).toMatchObject({ kind: 'redirect' })
    expect(await revisionsOf(id)).toEqual([first])
    expect(await signaturesOf(first.id)).toHaveLength(1)
  })

  test('is frozen once by two who press at the same moment', async () => {
    const { id } = world().notebook
    await markEverything(id)
    browseAs(world(), 'a')
    const ends = await Promise.all(
      [1, 2, 3].map(() => outcomeOf(() => putUpForSigning(id, {}, new FormData()))),
    )
    expect(ends.map((end) => end.kind)).toEqual(['redirect', 'redirect', 'redirect'])
    expect(await revisionsOf(id)).toHaveLength(1)
  })

  test('stays word for word, with its signatures, when the draft changes and a newer one is put up', async () => {
    const { id } = world().notebook
    const first = await putUpReady('a')
    await sign('a', {}, wellSigned)
    const signed = await signaturesOf(first.id)
    await changeTheLine('elsewhere')
    expect(await revisionsOf(id)).toEqual([first])
    const second = await putUpReady('b')
    expect(second.number).toBe(2)
    expect(await revisionsOf(id)).toEqual([second, first])
    expect(await signaturesOf(first.id)).toEqual(signed)
    expect(await signaturesOf(second.id)).toEqual([])
  })
})

describe('a signature', () => {
  test('is kept with the party, the capacity, the sentence that was ticked, the drawing and the hash', async () => {
    const revision = await putUpReady()
    const drawing = 'M10 20L30 40L599 200M5 6L5 6'
    await sign('a', { partyIndex: 1 }, { typedName: '  tobias   OAKSHOTT ', intent: true, drawing })
    expect(await sign('b', {}, { typedName: 'Ines Vandermolen', intent: true })).toMatchObject({
      kind: 'redirect',
    })
    const intent = (name: string, as: string, household: string) =>
      expect.stringMatching(new RegExp(`^I, ${name}, sign this agreement as ${as} for ${household}\\.`))
    expect(await signaturesOf(revision.id)).toMatchObject([
      {
        household: 'a',
        partyIndex: 1,
        partyName: 'Tobias Oakshott',
        capacity: 'co-owner',
        typedName: 'tobias   OAKSHOTT',
        intent: intent('Tobias Oakshott', 'co-owner', 'no. 12'),
        drawing,
        sha256: revision.sha256,
      },
      {
        household: 'b',
        partyIndex: 0,
        partyName: 'Ines Vandermolen',
        intent: intent('Ines Vandermolen', 'owner', 'no. 14'),
      },
    ])
    expect((await signaturesOf(revision.id))[1]).not.toHaveProperty('drawing')
  })

  test('is refused on a revision that a newer one has replaced', async () => {
    const first = await putUpReady()
    await changeTheLine('elsewhere')
    await putUpReady()
    const before = await everyTable()
    const end = await sign('a', { revisionId: first.id, sha256: first.sha256 }, wellSigned)
    expect(faultsOf(end)).toEqual({ '': expect.stringContaining('A newer revision has been put up') })
    expect(await everyTable()).toEqual(before)
  })

  test('is refused on another hash than the revision’s, also on the hash of an earlier one', async () => {
    const first = await putUpReady()
    await changeTheLine('elsewhere')
    const second = await putUpReady()
    const before = await everyTable()
    for (const sha256 of [first.sha256, '0'.repeat(64)]) {
      const end = await sign('a', { revisionId: second.id, sha256 }, wellSigned)
      expect(faultsOf(end)).toEqual({ '': expect.stringContaining('the check numbers differ') })
    }
    for (const sha256 of [second.sha256.toUpperCase(), `${second.sha256}0`, '', ' ']) {
      expect(faultsOf(await sign('a', { sha256 }, wellSigned))).toEqual({
        '': expect.stringContaining('could not be read'),
      })
    }
    expect(await everyTable()).toEqual(before)
  })

  test('is refused for a revision of another notebook, by households of either', async () => {
    const { other } = world()
    await putUpReady()
    await markEverything(other.id)
    openBrowser({ [sessionCookie(other.id)]: other.sessions.a })
    await outcomeOf(() => putUpForSigning(other.id, {}, new FormData()))
    const foreign = await signingPlace(other.id)
    const before = await everyTable()
    expect(faultsOf(await sign('a', foreign, wellSigned))).toEqual({
      '': expect.stringContaining('no such party'),
    })
    openBrowser({ [sessionCookie(other.id)]: other.sessions.a })
    const own = await signingPlace(world().notebook.id)
    const end = await outcomeOf(() => signForParty(other.id, own, '', wellSigned))
    expect(faultsOf(end)).toEqual({ '': expect.stringContaining('no such party') })
    expect(await everyTable()).toEqual(before)
  })

  test.each([2, 99, -1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])(
    'is refused for party %s, which there is not',
    async (partyIndex) => {
      await putUpReady()
      const before = await everyTable()
      expect(Object.keys(faultsOf(await sign('a', { partyIndex }, wellSigned)))).toEqual([''])
      expect(await everyTable()).toEqual(before)
    },
  )

  test.each([
    '',
    ' ',
    'Marnie',
    'Tobias Oakshott',
    'Ines Vandermolen',
    'Marnie Oakshott, owner',
    'x'.repeat(401),
    7,
    null,
    ['Marnie Oakshott'],
  ])('is refused with the name typed as %j', async (typedName) => {
    await putUpReady()
    const before = await everyTable()
    expect(faultsOf(await sign('a', {}, { ...wellSigned, typedName }))).toEqual({
      typedName: 'Type the full name as it stands in the agreement: Marnie Oakshott.',
    })
    expect(await everyTable()).toEqual(before)
  })

  test.each([false, undefined, null, 'true', 'on', 1, [true], {}])(
    'is refused with the sentence ticked as %j',
    async (intent) => {
      await putUpReady()
      const before = await everyTable()
      expect(Object.keys(faultsOf(await sign('a', {}, { ...wellSigned, intent })))).toEqual(['intent'])
      expect(await everyTable()).toEqual(before)
    },
  )

  test.each<[string, unknown]>([
    ['markup', 'M1 2L3 4<script>alert(1)</script>'],
    ['a way out of an attribute', 'M1 2L3 4" onload="alert(1)'],
    ['a line break', 'M1 2L3 4\n'],
    ['other commands', 'M1 2C3 4 5 6 7 8'],
    ['a stroke beside the box', 'M601 0L0 0'],
    ['a stroke below the box', 'M0 0L0 201'],
    ['fractions', 'M1.5 2L3 4'],
    ['less than nothing', 'M-1 2L3 4'],
    ['too much of it', 'M1 2'.padEnd(20_001, 'L3 4')],
    ['far too much of it', `M1 2${'L3 4'.repeat(400_000)}`],
    ['a number', 7],
    ['nothing at all', null],
    ['a list', ['M1 2L3 4']],
    ['an object', { toString: 'M1 2L3 4' }],
  ])('is refused, not made without its drawing, where that is %s', async (_what, drawing) => {
    await putUpReady()
    const before = await everyTable()
    expect(faultsOf(await sign('a', {}, { ...wellSigned, drawing }))).toEqual({
      drawing: expect.stringContaining('could not be read'),
    })
    expect(await everyTable()).toEqual(before)
  })

  test('is refused with all that is wrong in it at once', async () => {
    await putUpReady()
    expect(
      Object.keys(faultsOf(await sign('a', {}, { typedName: 'x', intent: false, drawing: 'x' }))),
    ).toEqual(['typedName', 'intent', 'drawing'])
  })

  test('is made once for each party, also where two are sent at the same moment', async () => {
    const revision = await putUpReady()
    const ends = await Promise.all([1, 2].map(() => sign('a', {}, wellSigned)))
    expect(ends.map((end) => end.kind).sort()).toEqual(['answer', 'redirect'])
    const before = await everyTable()
    expect(faultsOf(await sign('a', {}, wellSigned))).toEqual({
      '': expect.stringContaining('has signed this revision already'),
    })
    expect(await everyTable()).toEqual(before)
    expect(await signaturesOf(revision.id)).toHaveLength(1)
  })
})
