import { shortNotebook } from '../shortNotebook.ts'
import { button, opened, pressed, sends } from './pressing.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { putUpNow, signedNow } from './signedByStore.ts'
import { accept, asBefore, percent, standing, withdrawn } from './standingProposal.ts'
import { rewritten, withKeys } from './storeBeside.ts'

/** Proposals that are not accepted, that are sent, and one that comes too late. */
export const replyRefusals: RefusalGroup = {
  about: 'a proposal that is replied to or sent',
  notebook: shortNotebook,
  rows: [
    standing(
      { share: percent('60', '40') },
      {
        what: 'it is not accepted, without a word why',
        refuses: 'answerRefusals.why',
        typed: opened('Say why not'),
        press: pressed(/^Do not accept proposal/),
        says: 'Needed: say why not, in a few words. The other household can then propose something better.',
      },
    ),
    standing(
      { share: percent('60', '40') },
      {
        what: 'it is not accepted, with more words than are taken',
        refuses: 'proposalRefusal.too long',
        typed: async (page) => {
          await opened('Say why not')(page)
          await sends(button(page, /^Do not accept proposal/), { text: 'why '.repeat(1001).trim() })
        },
        press: pressed(/^Do not accept proposal/),
        says: 'At most 4000 characters; this has 4003.',
        keeps: [[(page) => page.locator('textarea[name=text]'), 'why '.repeat(1001).trim()]],
      },
    ),
    standing(
      { share: percent('60', '40') },
      {
        what: 'it is not accepted after it was withdrawn meanwhile',
        refuses: 'proposalRefusal.ended',
        meanwhile: withdrawn,
        typed: async (page) => {
          await opened('Say why not')(page)
          await page.locator('textarea[name=text]').fill('The slope is ours alone.')
        },
        press: pressed(/^Do not accept proposal/),
        says: 'This proposal has ended in the meantime. Load the page again to see how.',
        keeps: [[(page) => page.locator('textarea[name=text]'), 'The slope is ours alone.']],
      },
    ),
    {
      what: 'one is sent with no item in it',
      refuses: 'proposalRefusal.no items',
      at: '/proposals/new',
      given: (table) => rewritten(table, asBefore),
      press: pressed('Send this proposal'),
      says: 'Needed: tick at least one item that you propose something for.',
    },
    {
      what: 'one is sent for an item that was removed meanwhile',
      refuses: 'answerRefusals.itemGone',
      at: '/proposals/new?items=s1',
      meanwhile: (table) => rewritten(table, withKeys({ sections: [], contributions: [] })),
      typed: async (page) => {
        await page.getByLabel('Along the bank').first().check()
      },
      press: pressed('Send this proposal'),
      says: 'This item was removed in the meantime. Leave it out.',
      after: (table) => rewritten(table, asBefore),
    },
    standing(
      { share: percent('60', '40') },
      {
        what: 'one is accepted after the notebook was closed meanwhile',
        refuses: 'proposalRefusal.closed',
        meanwhile: async (table) => {
          await rewritten(
            table,
            withKeys({ closing: { on: '2026-11-20', asBuilt: [], upkeep: [], notes: '' } }),
          )
          await putUpNow(table)
          await signedNow(table, 'a', 'b')
        },
        press: accept,
        says: 'Nothing was changed: the notebook was closed by revision 1, which all have signed. Either household can open it again on the page “Closing”.',
      },
    ),
  ],
}
