import { describe, expect, test, vi } from 'vitest'
import { followLink } from '../../app/open/actions.ts'
import { longestPasted, pastedAddress } from '../../lib/access/pastedAddress.ts'
import { openBrowser } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { formOf, readersLink } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

const follow = (link: string) => outcomeOf(() => followLink({}, formOf({ link })))
const refused = (words: RegExp) => ({ kind: 'answer', answer: { refused: expect.stringMatching(words) } })

describe('what is put in on the start page', () => {
  test('leads to whom it lets in, whether a link, an invitation or a reader’s link, and lets nobody in by itself', async () => {
    const { notebook, waiting } = world()
    const reader = await readersLink(notebook.id)
    openBrowser()
    const before = await everyTable({ withDoor: true })
    for (const path of [`/open/${notebook.links.a}`, `/open/${waiting.invitation}`, `/read/${reader}`])
      for (const written of [
        `http://192.168.0.7:3000${path}`,
        `  https://fence.example${path}  `,
        `Come in here: http://localhost:3000${path}, yours, M.`,
      ])
        expect([written, await follow(written)]).toEqual([written, { kind: 'redirect', to: path }])
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })

  test('may be the last part of a link alone, and says of a used invitation what its own page says', async () => {
    const { links, usedInvitation } = world().notebook
    expect(await follow(links.b)).toEqual({ kind: 'redirect', to: `/open/${links.b}` })
    expect(await follow(`/open/${usedInvitation}`)).toEqual({
      kind: 'redirect',
      to: `/open/${usedInvitation}`,
    })
  })

  test('may be the address of a page, for a browser that has come in there, and for no other', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    expect(await follow(`http://localhost:3000/notebook/${id}/shares`)).toEqual({
      kind: 'redirect',
      to: `/notebook/${id}`,
    })
    openBrowser()
    expect(await follow(`http://localhost:3000/notebook/${id}/shares`)).toEqual(
      refused(/address of a page within a notebook.*private link/),
    )
  })

  test('is refused with what would be right where it opens nothing', async () => {
    const { notebook, replaced } = world()
    expect(await follow('   ')).toEqual(refused(/^Needed: the link or the invitation/))
    expect(await follow('the fence')).toEqual(refused(/ends in \/open\/ and 43 letters/))
    const unknown = await follow(`/open/${'x'.repeat(43)}`)
    expect(unknown).toEqual(refused(/ask whoever gave it to you/))
    // What was replaced or ended says no more than what never was.
    for (const token of [replaced.link, notebook.revokedInvitation, notebook.sessions.a])
      expect(await follow(`http://localhost:3000/open/${token}`)).toEqual(unknown)
    expect(await follow(`/read/${'x'.repeat(43)}`)).toEqual(unknown)
  })
})

test('an address is not looked for in a text that is longer than any letter, nor in a longer word', () => {
  const token = 'Ab_-'.repeat(11).slice(0, 43)
  expect(pastedAddress(`/open/${token}`)).toEqual({ kind: 'open', token })
  expect(pastedAddress(`/open/${token}x`)).toBeUndefined()
  expect(pastedAddress(`${' '.repeat(longestPasted)}/open/${token}`)).toBeUndefined()
})
