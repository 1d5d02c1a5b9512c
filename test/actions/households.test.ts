import { describe, expect, test, vi } from 'vitest'
import {
  addNotebookItem,
  agreeToItem,
  removeNotebookItem,
  saveNotebookPart,
  takeAgreementBack,
} from '../../app/notebook/server/actions.ts'
import { enterContribution, takeEntryBack } from '../../app/notebook/server/bookActions.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { invite, replaceOwnLink, seeAsOther } from '../../app/notebook/server/linkActions.ts'
import { putUpForSigning, signForParty } from '../../app/notebook/server/signActions.ts'
import { claim } from '../../app/open/[token]/actions.ts'
import { lookAtToken } from '../../lib/access/openKey.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { newestRevision, signaturesOf } from '../../lib/store/revisions.ts'
import { keptCookies, openBrowser } from './browser.ts'
import { everyTable, newRows } from './everyTable.ts'
import { anEntry, todaysDay } from './givenBooks.ts'
import {
  aNewSection,
  changedFile,
  formOf,
  formWithFile,
  markForm,
  openedPart,
  signingPlace,
  takeBackForm,
} from './givenForms.ts'
import { faultsOf, outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, documentOf, markEverything, sessionCookie, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

/** An action with more arguments, or others, than it says it takes: a browser may send them. */
function loosely(action: unknown): (...values: unknown[]) => Promise<unknown> {
  return action as (...values: unknown[]) => Promise<unknown>
}

/** What somebody would add to any form in the hope to act for the other household. */
const forTheOther = (household: string) => ({
  household,
  by: household,
  who: household,
  frozenBy: household,
  for: household,
})

function withFields(form: FormData, fields: Readonly<Record<string, string>>): FormData {
  for (const [name, value] of Object.entries(fields)) form.append(name, value)
  return form
}

describe.each([
  ['a', 'b'],
  ['b', 'a'],
] as const)('household %s, whatever it says of household %s,', (own, other) => {
  test('marks for itself', async () => {
    const { id } = world().notebook
    browseAs(world(), own)
    const form = withFields(await markForm(id, 'line'), forTheOther(other))
    await outcomeOf(() => loosely(agreeToItem)(id, { household: other }, form, other))
    expect(await marksOf(id)).toMatchObject([{ itemKey: 'line', household: own }])
  })

  test('takes off its own mark, and never the other’s', async () => {
    const { id } = world().notebook
    await markEverything(id)
    browseAs(world(), own)
    const form = withFields(await markForm(id, 'line'), forTheOther(other))
    await outcomeOf(() => loosely(takeAgreementBack)(id, {}, form, other))
    await outcomeOf(() => loosely(takeAgreementBack)(id, {}, form, other))
    expect(
      (await marksOf(id)).filter((mark) => mark.itemKey === 'line').map((mark) => mark.household),
    ).toEqual([other])
  })

  test('changes things in its own name', async () => {
    const { id } = world().notebook
    browseAs(world(), own)
    const { draft, base } = await openedPart<{ line: object }>(id, { part: 'line' })
    const line = { line: { ...draft.line, start: 'iron pin, found' }, ...forTheOther(other) }
    await outcomeOf(() =>
      loosely(saveNotebookPart)(id, { part: 'line', ...forTheOther(other) }, base, line, other),
    )
    await outcomeOf(() =>
      loosely(addNotebookItem)(id, 'section', 'new', { ...aNewSection, ...forTheOther(other) }, other),
    )
    const gate = await openedPart(id, { part: 'item', id: 'g4' })
    await outcomeOf(() => loosely(removeNotebookItem)(id, 'g4', gate.base, other))
    await outcomeOf(() =>
      loosely(replaceByFile)(id, {}, withFields(formWithFile(changedFile()), forTheOther(other)), other),
    )
    const changes = await changesOf(id)
    expect(new Set(changes.map((change) => change.household))).toEqual(new Set([own]))
    expect(new Set(changes.map((change) => change.edit)).size).toBe(4)
  })

  test('enters what it gave itself, and nothing in the other’s name but what it received', async () => {
    const { id } = world().notebook
    browseAs(world(), own)
    const before = await documentOf(id)
    for (const kind of ['cash', 'material', 'refund'])
      expect(
        await outcomeOf(() =>
          loosely(enterContribution)(id, 'new', anEntry({ household: other, kind }), other),
        ),
      ).toMatchObject({
        answer: { faults: [{ path: 'household', message: expect.stringMatching(/has to enter this/) }] },
      })
    expect(await documentOf(id)).toEqual(before)
    const received = anEntry({ household: other, kind: 'transfer', means: 'in cash' })
    expect(await outcomeOf(() => enterContribution(id, 'new', received))).toMatchObject({ kind: 'redirect' })
  })

  test('takes entries back in its own name', async () => {
    const { id } = world().notebook
    browseAs(world(), own)
    const struck = { on: '2027-04-01', by: other, why: 'no' }
    const given = anEntry({ household: own, struck })
    await outcomeOf(() => loosely(enterContribution)(id, 'new', given, other))
    const entered = (await documentOf(id)).contributions as Record<string, unknown>[]
    expect(entered.at(-1)).toEqual({
      household: own,
      kind: 'cash',
      amount: '12.50',
      date: todaysDay(),
      enteredBy: own,
    })

    const form = withFields(await takeBackForm(id, entered.length - 1), {
      ...forTheOther(other),
      struck: JSON.stringify(struck),
    })
    await outcomeOf(() => loosely(takeEntryBack)(id, struck, form, other))
    const book = (await documentOf(id)).contributions as Record<string, unknown>[]
    expect(book.at(-1)).toMatchObject({ household: own, struck: { by: own, why: 'entered twice' } })
    expect(book.slice(0, -1)).toEqual(entered.slice(0, -1))
  })

  test('puts up and signs for its own parties alone', async () => {
    const { id } = world().notebook
    await markEverything(id)
    browseAs(world(), own)
    await outcomeOf(() => loosely(putUpForSigning)(id, forTheOther(other), formOf(forTheOther(other)), other))
    const revision = await newestRevision(id)
    expect(revision?.frozenBy).toBe(own)

    const parties = { a: ['Marnie Oakshott', 'Tobias Oakshott'], b: ['Ines Vandermolen'] }
    const place = { ...(await signingPlace(id)), ...forTheOther(other) }
    const before = await everyTable()
    for (const [partyIndex, typedName] of parties[other].entries()) {
      const draft = { typedName, intent: true, drawing: '', ...forTheOther(other) }
      const faults = faultsOf(
        await outcomeOf(() => loosely(signForParty)(id, { ...place, partyIndex }, '', draft, other)),
      )
      // Either there is no such party of its own household, or the name typed is not that party's.
      expect(Object.keys(faults)).toEqual([partyIndex < parties[own].length ? 'typedName' : ''])
    }
    expect(await everyTable()).toEqual(before)

    const draft = { typedName: parties[own][0], intent: true, drawing: '', ...forTheOther(other) }
    await outcomeOf(() => loosely(signForParty)(id, place, '', draft, other))
    expect(await signaturesOf(revision?.id ?? '')).toMatchObject([
      { household: own, partyIndex: 0, partyName: parties[own][0], typedName: parties[own][0] },
    ])
  })

  test('replaces its own link, and leaves the other’s alone', async () => {
    const { notebook } = world()
    browseAs(world(), own)
    await outcomeOf(() =>
      loosely(replaceOwnLink)(notebook.id, forTheOther(other), formOf(forTheOther(other)), other),
    )
    expect(await lookAtToken(notebook.links[own])).toBeUndefined()
    expect(await lookAtToken(notebook.links[other])).toMatchObject({ kind: 'link', household: other })
    const link = keptCookies()[`mearing-new-link-${notebook.id}`] ?? ''
    expect(await lookAtToken(link)).toMatchObject({ kind: 'link', household: own })
  })
})

describe('the invitation', () => {
  test('is made by the first household, for the second, and ends the one before', async () => {
    const { waiting } = world()
    openBrowser({ [sessionCookie(waiting.id)]: waiting.session })
    const before = await everyTable()
    const end = await outcomeOf(() => loosely(invite)(waiting.id, 'a', { household: 'a' }))
    const { address } = (end as { answer: { address: string } }).answer
    const token = /\/open\/([A-Za-z0-9_-]{43})$/.exec(address)?.[1] ?? ''
    expect(await lookAtToken(token)).toEqual({ kind: 'invitation', notebookId: waiting.id, household: 'b' })
    expect(await lookAtToken(waiting.invitation)).toBeUndefined()
    expect(newRows(before, await everyTable(), 'EntryKey').map((row) => row.household)).toEqual(['b', 'b'])
    expect(Object.keys(keptCookies())).toEqual([sessionCookie(waiting.id)])
  })

  test('is not the second household’s to make, neither before nor after the first has made one', async () => {
    const { notebook } = world()
    browseAs(world(), 'b')
    const before = await everyTable({ withDoor: true })
    expect(refusalOf(await outcomeOf(() => invite(notebook.id)))).toContain(
      'Only the first household invites',
    )
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })

  test('cannot be claimed by the first household, or by anyone, once the second has', async () => {
    const { notebook, waiting } = world()
    browseAs(world(), 'a')
    const before = await everyTable()
    expect(refusalOf(await outcomeOf(() => claim(notebook.usedInvitation, {}, new FormData())))).toContain(
      'used already',
    )
    expect(refusalOf(await outcomeOf(() => invite(notebook.id)))).toContain('Nobody is left to invite')
    expect(await everyTable()).toEqual(before)

    openBrowser()
    expect(await outcomeOf(() => claim(waiting.invitation, {}, new FormData()))).toMatchObject({
      kind: 'redirect',
    })
    const claimed = await everyTable()
    openBrowser({ [sessionCookie(waiting.id)]: waiting.session })
    expect(refusalOf(await outcomeOf(() => claim(waiting.invitation, {}, new FormData())))).toContain(
      'used already',
    )
    expect(await everyTable()).toEqual(claimed)
  })

  test('of two who claim it at once lets one in', async () => {
    const { waiting } = world()
    const ends = await Promise.all(
      [1, 2].map(() => outcomeOf(() => claim(waiting.invitation, {}, new FormData()))),
    )
    expect(ends.map((end) => end.kind).sort()).toEqual(['answer', 'redirect'])
    const { EntryKey: keys = [] } = await everyTable()
    expect(
      keys.filter((key) => key.notebookId === waiting.id && key.household === 'b' && key.kind === 'link'),
    ).toHaveLength(1)
  })
})

describe('the example', () => {
  test('lets one browser change sides, there and back', async () => {
    const { example } = world()
    openBrowser({ [sessionCookie(example.id)]: example.session })
    for (const side of ['b', 'a', 'b'] as const) {
      const before = await everyTable()
      expect(await outcomeOf(() => seeAsOther(example.id, {}, new FormData()))).toEqual({
        kind: 'redirect',
        to: `/notebook/${example.id}`,
      })
      const after = await everyTable()
      expect(newRows(before, after, 'Session').at(-1)).toMatchObject({
        notebookId: example.id,
        household: side,
      })
    }
  })

  test('alone does: in a notebook of two households nobody changes sides', async () => {
    for (const household of ['a', 'b'] as const) {
      browseAs(world(), household)
      const before = await everyTable({ withDoor: true })
      expect(refusalOf(await outcomeOf(() => seeAsOther(world().notebook.id, {}, new FormData())))).toContain(
        'Only in the example',
      )
      expect(await everyTable({ withDoor: true })).toEqual(before)
    }
  })
})
