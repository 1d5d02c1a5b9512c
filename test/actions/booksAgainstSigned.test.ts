import { describe, expect, test, vi } from 'vitest'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { booksFigures } from '../../app/notebook/server/booksFigures.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { putUpForSigning, signForParty } from '../../app/notebook/server/signActions.ts'
import { readPart } from '../../lib/forms/parts.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { signingPlace } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))

const world = worldForEachTest()

describe('what the books are held against', () => {
  test('is the signed revision: one household moves no balance by editing the draft', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    expect(booksFigures(await openNotebook(id)).signed).toBeUndefined()

    await markEverything(id)
    browseAs(world(), 'a')
    await outcomeOf(() => putUpForSigning(id, {}, new FormData()))
    const place = await signingPlace(id)
    const parties = { a: ['Marnie Oakshott', 'Tobias Oakshott'], b: ['Ines Vandermolen'] }
    for (const household of ['a', 'b'] as const) {
      browseAs(world(), household)
      for (const [partyIndex, typedName] of parties[household].entries()) {
        const draft = { typedName, intent: true, drawing: '' }
        await outcomeOf(() => signForParty(id, { ...place, partyIndex }, '', draft))
      }
    }
    const before = booksFigures(await openNotebook(id))
    expect(before.signed).toBe(1)
    expect(before.draft).toBeUndefined()

    browseAs(world(), 'b')
    const { document } = await openNotebook(id)
    const caps = { part: 'caps' } as const
    const base = fingerprintOf(readPart(document, caps) ?? {})
    await saveNotebookPart(id, caps, base, { caps: { b: '0' } })
    const after = booksFigures(await openNotebook(id))
    expect(after.statement).toEqual(before.statement)
    // The cap moves nothing yet in the draft either: household a has not marked it.
    expect(after.draft?.ok && after.draft.value.asked.b).toBe(387370n)
    await markEverything(id)
    const agreed = booksFigures(await openNotebook(id))
    expect(agreed.statement).toEqual(before.statement)
    expect(agreed.draft?.ok && agreed.draft.value.asked.b).toBe(0n)
  })
})
