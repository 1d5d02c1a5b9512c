import { shownPrint } from '../../../app/notebook/server/proposalSeen.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { endProposal, proposalsOf } from '../../../lib/store/proposals.ts'
import { aProposal } from '../../actions/givenForms.ts'
import { documentOf } from '../../actions/world.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { button, opened, pressed, pressedTwice, sends } from './pressing.ts'
import type { RefusalGroup, RefusalRow, Table } from './refusalRow.ts'
import { notebookOf, rewritten, withKeys } from './storeBeside.ts'

const accept = pressedTwice(/^Accept proposal/)
const [bank] = shortNotebook.sections
const percent = (a: string, b: string) => ({ together: { principle: 'percent', a, b } })

/** The section is another one. */
const bankWith = (change: object) => withKeys({ sections: [{ ...bank, ...change }] })

/** What b proposes for the section, and how it stands in the store. */
async function proposed(table: Table, change: object, by: 'a' | 'b' = 'b', id = 's1'): Promise<number> {
  await rewritten(table, asBefore)
  return aProposal(notebookOf(table), by, id, change)
}

const asBefore = (document: NotebookDocument) => ({ ...document, ...shortNotebook }) as NotebookDocument

async function withdrawn(table: Table): Promise<void> {
  const notebookId = notebookOf(table)
  for (const { id, household, reply } of await proposalsOf(notebookId))
    if (reply === undefined)
      await endProposal({ notebookId, household, id, kind: 'withdrawn', text: '', at: new Date() })
}

/** A proposal of b for the section stands, and after the row none does. */
function standing(
  change: object,
  row: Omit<RefusalRow, 'at' | 'after'> & { readonly since?: object },
): RefusalRow {
  const { since, ...rest } = row
  return {
    ...rest,
    at: '/proposals',
    given: async (table) => {
      await proposed(table, change)
      if (since !== undefined) await rewritten(table, bankWith(since))
      await row.given?.(table)
    },
    after: withdrawn,
  }
}

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
      says: 'was removed in the meantime. Leave it out.',
      after: (table) => rewritten(table, asBefore),
    },
  ],
}
