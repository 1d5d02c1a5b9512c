import { issueInvitation } from '../../../lib/store/entryKeys.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { put, trySaving } from '../typing.ts'
import { button, fromElsewhere, pressed } from './pressing.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { elsewhere, notebookOf, withKeys } from './storeBeside.ts'

const letter = { proposed: 'A new fence of mesh.', on: '2027-03-01' }
const made = pressed('Make a new invitation and the letter')

const pdf = pressed('Letter with this invitation (PDF)')

/** The first letter, its days, and how it is handed out. */
export const letterRefusals: RefusalGroup = {
  about: 'the first letter',
  notebook: { ...shortNotebook, letter },
  alone: true,
  rows: [
    {
      what: 'days of a letter that do not go together, and a notice that nobody named',
      refuses: [
        'letterFault.no whole days',
        'letterFault.who said so',
        'letterFault.too soon',
        'letterFault.ends before it begins',
      ],
      at: '/letter',
      typed: async (page) => {
        await put(page, 'letter.workFrom', '2027-05-03')
        await put(page, 'letter.workTo', '2027-04-30')
        await put(page, 'letter.noticeDays', '2.5')
        await put(page, 'letter.answerBy', '2027-02-01')
      },
      press: (page) => trySaving(page, 'Save the letter'),
      says: [
        'Whole days, at most 730, such as 30. Leave it empty where nobody named a notice.',
        'Needed: who said that this notice is to be given, and when, so that it can be asked again.',
        'The day to answer by is before the notice is over: 1 March 2027 or a later day. Empty: the end of the notice.',
        'The day to be done by is before the first day of the work: that day or a later one.',
      ],
      keeps: [
        ['letter.noticeDays', '2.5'],
        ['letter.answerBy', '2027-02-01'],
      ],
      names: {
        'letter.noticeDays': 'Whole days, at most 730, such as 30.',
        'letter.saidBy': 'who said that this notice is to be given, and when',
        'letter.answerBy': 'The day to answer by is before the notice is over: 1 March 2027 or a later day.',
        'letter.workTo':
          'The day to be done by is before the first day of the work: that day or a later one.',
      },
    },
    {
      what: 'a letter is handed out that was taken out meanwhile',
      refuses: 'letterRefusals.nothingWritten',
      at: '/letter',
      ...elsewhere({ meanwhile: ({ letter: _gone, ...rest }) => rest }),
      press: made,
      says: 'Write and save the letter first.',
    },
    {
      what: 'a letter is handed out that does not fit on its page',
      refuses: 'letterRefusals.tooLong',
      at: '/letter',
      ...elsewhere({
        given: withKeys({ letter: { ...letter, wrong: 'The posts are rotten. '.repeat(400) } }),
      }),
      press: made,
      says: [
        'too long for one page, even in small print. Shorten what is wrong, what is proposed or how to answer',
      ],
    },
    {
      what: 'the letter is asked for by a page of somebody else',
      refuses: 'pressRefusals.foreign',
      at: '/letter',
      typed: async (page) => {
        await fromElsewhere(page)
        await made(page)
        await button(page, 'Letter with this invitation (PDF)').waitFor()
      },
      press: pdf,
      answer: (page) => page.locator('.handed-out .press-answer'),
      says: 'Not sent from a page of this notebook.',
    },
    {
      what: 'the letter is asked for with an invitation that a later one has ended',
      refuses: 'letterRefusals.invitationPastUse',
      at: '/letter',
      typed: async (page) => {
        await page.getByRole('button', { name: 'Make a new invitation and the letter' }).click()
        await page.getByRole('button', { name: /^Yes: / }).click()
        await button(page, 'Letter with this invitation (PDF)').waitFor()
        const home = /^.*\/notebook\/[A-Za-z0-9_-]{22}/.exec(page.url())?.[0] ?? ''
        const at = { page, home }
        await issueInvitation({ notebookId: notebookOf({ a: at, b: at }), at: new Date() })
      },
      press: pdf,
      answer: (page) => page.locator('.handed-out .press-answer'),
      says: 'This invitation works no more: it was claimed, or a later one ended it. Load the page again, then make a new one.',
    },
  ],
}
