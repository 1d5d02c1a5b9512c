import { shownPrint } from '../../../app/notebook/server/proposalSeen.ts'
import { proposalsOf } from '../../../lib/store/proposals.ts'
import { aProposal } from '../../actions/givenForms.ts'
import { documentOf } from '../../actions/world.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { button, pressed, sends } from './pressing.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { accept, bank, bankWith, percent, standing, withdrawn } from './standingProposal.ts'
import { notebookOf, rewritten, withKeys } from './storeBeside.ts'

let own = 0
let elsewhereChanged = { id: '', shown: '' }

/** Answers to a proposal of the other household. */
export const proposalRefusals: RefusalGroup = {
  about: 'a proposal that is answered',
  notebook: shortNotebook,
  rows: [
    standing(
      { share: percent('60', '40') },
      {
        what: 'it is accepted after its section was changed meanwhile',
        refuses: 'proposalRefusal.shown otherwise',
        meanwhile: (table) => rewritten(table, bankWith({ notes: 'Painted green.' })),
        press: accept,
        says: 'What this proposal is about was changed since you opened the page. Nothing was changed by your press. Load the page again, read what changed, then choose.',
      },
    ),
    standing(
      { share: percent('60', '40') },
      {
        what: 'it is accepted after it was withdrawn meanwhile',
        refuses: 'proposalRefusal.ended',
        meanwhile: withdrawn,
        press: accept,
        says: 'This proposal has ended in the meantime. Load the page again to see how.',
      },
    ),
    standing(
      { share: percent('60', '40') },
      {
        what: 'one is accepted that there is none of',
        refuses: 'proposalRefusal.no such proposal',
        typed: (page) => sends(button(page, /^Accept proposal/), { id: '999999' }),
        press: accept,
        says: 'There is no such proposal in this notebook. Nothing was changed.',
      },
    ),
    standing(
      { share: percent('60', '40') },
      {
        what: 'a household accepts its own',
        refuses: 'proposalRefusal.own',
        given: async (table) => {
          own = await aProposal(notebookOf(table), 'a', 'g1')
        },
        typed: (page) => sends(button(page, /^Accept proposal/), { id: String(own) }),
        press: accept,
        says: 'This is your own household’s proposal. Only the other household can accept or answer it; you can withdraw it.',
      },
    ),
    standing(
      { share: percent('60', '40') },
      {
        what: 'one is accepted whose share was itself changed since',
        refuses: 'proposalRefusal.items changed',
        since: { share: percent('55', '45') },
        given: async (table) => {
          const notebookId = notebookOf(table)
          const changed = (await proposalsOf(notebookId)).findLast(({ reply }) => reply === undefined)
          await aProposal(notebookId, 'b', 'g1')
          const shown = shownPrint(await documentOf(notebookId), changed?.items ?? [])
          elsewhereChanged = { id: String(changed?.id), shown }
        },
        typed: (page) => sends(button(page, /^Accept proposal/), elsewhereChanged),
        press: accept,
        says: [
          'What this proposes was itself changed since: Along the bank (share).',
          '“Propose it anew” proposes the same way to share for the items as they are now.',
        ],
      },
    ),
    standing(
      {
        share: {
          together: {
            principle: 'saving',
            aloneA: '300.00',
            aloneB: '300.00',
            sourceA: 'an offer',
            sourceB: 'an offer',
          },
        },
      },
      {
        what: 'one is accepted with which the shares can’t be worked out at the prices of now',
        refuses: 'proposalRefusal.does not hold',
        since: {
          materials: [{ ...bank.materials[0], unitPrice: '15.00' }],
        },
        press: accept,
        says: [
          'With this the shares could not be worked out. Building together',
          'correct the figures for building alone',
        ],
      },
    ),
    standing(
      { share: percent('60', '40') },
      {
        what: 'one is accepted that stands in the notebook already',
        refuses: 'proposalRefusal.nothing proposed',
        since: { share: percent('60', '40') },
        press: accept,
        says: 'Nothing in this differs from what stands in the notebook now. To agree to an item as it stands, mark it on its page.',
      },
    ),
    standing(
      { share: { together: { principle: 'saving', aloneA: '300.00', aloneB: '300.00' } } },
      {
        what: 'one is accepted whose figures for building alone have no source',
        refuses: 'proposalRefusal.sources missing',
        press: accept,
        says: 'Missing for Along the bank.',
      },
    ),
    standing(
      { share: percent('60', '40') },
      {
        what: 'one is proposed anew whose section was removed',
        refuses: 'proposalRefusal.items gone',
        given: (table) => rewritten(table, withKeys({ sections: [], contributions: [] })),
        press: pressed('Propose it anew'),
        says: 'No longer in the notebook: Along the bank. Nothing was changed.',
      },
    ),
  ],
}
