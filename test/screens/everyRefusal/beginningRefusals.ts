import { inject } from 'vitest'
import { claimInvitation, issueFirstLink, issueInvitation } from '../../../lib/store/entryKeys.ts'
import { createNotebook } from '../../../lib/store/notebooks.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { chooseFile } from '../twoHouseholds.ts'
import { put, trySaving } from '../typing.ts'
import { all, pressed, rewriting } from './pressing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'
import { openStore } from './storeBeside.ts'

type Page = Parameters<RefusalRow['press']>[0]

const start = () => `${inject('baseUrl')}/start`
const started = (page: Page) => trySaving(page, 'Start the notebook')
const record = { name: 'record.pdf', mimeType: 'application/pdf' }

/** An invitation to a notebook of its own that nobody has claimed yet. */
async function invitation(): Promise<string> {
  openStore()
  const at = new Date()
  const { id } = await createNotebook({ document: JSON.stringify(shortNotebook), example: false, at })
  await issueFirstLink({ notebookId: id, household: 'a', at })
  const issued = await issueInvitation({ notebookId: id, at })
  if (!('token' in issued)) throw new Error('Somebody has come in already.')
  return issued.token
}

let waiting = ''

/** What somebody puts in the place of a link, and what is said to it. */
const pastings = [
  ['nothing is put in', 'nothingPasted', '', 'Needed: the link or the invitation that you were given'],
  ['some words are put in', 'noLink', 'my neighbour’s fence', 'This is no link of a notebook.'],
  [
    'a link that opens nothing is put in',
    'unknownHere',
    `http://fence.example:3000/open/${'x'.repeat(43)}`,
    'Nothing here opens with this.',
  ],
  [
    'the address of a page is put in',
    'pageOfNotebook',
    `http://fence.example:3000/notebook/${'x'.repeat(22)}/shares`,
    'This is the address of a page within a notebook, and this browser has not come in there.',
  ],
] as const

/** What is refused before anybody is in a notebook. */
export const beginningRefusals: RefusalGroup = {
  about: 'before anybody is in a notebook',
  rows: [
    {
      what: 'a notebook is started without the names of its households',
      refuses: ['startRefusals.a', 'startRefusals.b'],
      at: start,
      typed: (page) => put(page, 'title', 'Nameless'),
      press: started,
      says: [
        'Your household needs a name: what it is called everywhere in the notebook, such as “No. 12”.',
        'Your neighbours’ household needs a name: what it is called everywhere in the notebook, such as “No. 14”.',
      ],
      keeps: [['title', 'Nameless']],
      names: {
        'households.a.name': 'Your household needs a name: what it is called everywhere in the notebook',
        'households.b.name':
          'Your neighbours’ household needs a name: what it is called everywhere in the notebook',
      },
    },
    {
      what: 'a notebook is started in a currency that is none, where a browser sends it all the same',
      refuses: 'fault.currency-unknown',
      at: start,
      typed: all(rewriting('"USD"', '"XTS"'), async (page) => {
        await put(page, 'title', 'Heron Bank')
        await put(page, 'households.a.name', 'Heron House')
        await put(page, 'households.b.name', 'Bank Cottage')
      }),
      press: started,
      says: '"XTS" is not a currency that ISO 4217 lists as money in use; write its three letters, such as "USD", "EUR" or "JPY".',
      keeps: [
        ['title', 'Heron Bank'],
        ['households.b.name', 'Bank Cottage'],
      ],
      names: 'currency',
    },
    {
      what: 'a notebook is started from a file that does not hold',
      refuses: 'fault.length-form',
      at: () => inject('baseUrl'),
      typed: (page) =>
        chooseFile(
          page,
          JSON.stringify({ ...shortNotebook, sections: [{ ...shortNotebook.sections[0], from: '40' }] }),
        ),
      press: pressed('Start from this file'),
      says: 'sections[0].from: "40" has no unit: write "40 ft"',
      keeps: [[(page) => page.locator('input[type=file]'), 'C:\\fakepath\\notebook.json']],
    },
    {
      what: 'a notebook is started from no file at all',
      refuses: 'importRefusals.none',
      at: () => inject('baseUrl'),
      press: pressed('Start from this file'),
      says: 'Choose a notebook file first.',
    },
    {
      what: 'somebody comes in by an invitation that was claimed while they looked at it',
      refuses: 'linkRefusals.usedAlready',
      given: async () => {
        waiting = await invitation()
      },
      at: () => `${inject('baseUrl')}/open/${waiting}`,
      meanwhile: () => claimInvitation({ token: waiting, at: new Date() }),
      press: pressed(/^Come in as /),
      says: 'This invitation has been used already. Load the page again to see when.',
    },
    ...pastings.map(
      ([what, key, pasted, says]): RefusalRow => ({
        what: `at the start page ${what} in the place of a link`,
        refuses: `linkRefusals.${key}`,
        at: () => inject('baseUrl'),
        typed: (page) => page.locator('#link').fill(pasted),
        press: pressed('Open it'),
        says,
        keeps: [[(page) => page.locator('#link'), pasted]],
      }),
    ),
    {
      what: 'no record is chosen to be checked',
      refuses: 'checkRefusals.none',
      at: () => `${inject('baseUrl')}/check`,
      press: pressed('Check it'),
      answer: (page) => page.locator('.record-findings'),
      says: 'Record: choose a PDF file first. Nothing was chosen, or the file is empty.',
    },
    {
      what: 'a record is checked that is larger than any locked copy',
      refuses: 'checkRefusals.tooLarge',
      at: () => `${inject('baseUrl')}/check`,
      typed: (page) =>
        page.locator('input[type=file]').setInputFiles({ ...record, buffer: Buffer.alloc(20_000_001) }),
      press: pressed('Check it'),
      answer: (page) => page.locator('.record-findings'),
      says: 'Nothing was looked at: the file has 20 MB, and at most 20 MB are looked through.',
      keeps: [[(page) => page.locator('input[type=file]'), 'C:\\fakepath\\record.pdf']],
    },
  ],
}
