import { shortNotebook } from '../shortNotebook.ts'
import { chooseFile } from '../twoHouseholds.ts'
import { fromElsewhere, pressedTwice } from './pressing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'

type Page = Parameters<RefusalRow['press']>[0]

const [section] = shortNotebook.sections
const [gate] = shortNotebook.gates
const halves = { principle: 'equal' }
const amended = (more: object) => JSON.stringify({ ...shortNotebook, ...more })
const megabytes = (count: number) => amended({ title: 'x'.repeat(count * 1_000_000) })
const shared = (id: string, share: object, more: object = {}) => ({ ...section, id, share, ...more })

/** A section whose share can't be worked out, each for a reason of its own, and what else a file can get wrong at once. */
const wrongInMany = amended({
  units: 7,
  sections: [
    shared('s1', { materials: { principle: 'percent', a: '60', b: '50' }, labour: halves }, { from: '40' }),
    shared('s2', { materials: { principle: 'use' }, labour: halves }),
    shared('s3', { materials: halves, labour: halves, together: halves }),
    shared('s4', {
      together: {
        principle: 'difference',
        basic: '100.00',
        basicShare: { principle: 'difference' },
        upgradeShare: halves,
      },
    }),
    shared('s4', { together: halves }),
    shared('s6', { together: { principle: 'saving', aloneA: '200.00', aloneB: '199.00' } }),
    shared('s7', { together: { principle: 'saving', aloneA: '900.00', aloneB: '100.00' } }),
    shared('s8', { together: { principle: 'benefit', a: '0', b: '0' } }),
    shared(
      's9',
      { together: halves },
      {
        materials: [
          { what: 'old rails', quantity: '1', unitPrice: '9.00', suppliedBy: 'bought', credit: true },
        ],
        labour: [],
      },
    ),
  ],
  gates: [{ ...gate, owner: 'both', materials: [{ what: 'gate', quantity: '1', suppliedBy: 'found' }] }],
  contributions: [
    { household: 'a', kind: 'cash', amount: '12.345', date: '2027-02-30', for: 's99', note: 'mesh' },
  ],
})

/** What a notebook file is refused by, each with the words for it. */
const files: readonly {
  readonly what: string
  readonly refuses: string | readonly string[]
  readonly file: string | Buffer
  readonly says: readonly string[]
}[] = [
  {
    what: 'a file that ends too soon',
    refuses: 'fault.json-breaks',
    file: '{ "format": ',
    says: [
      'This is not a notebook file: it ends in line 1 before it is complete, as if it had been cut off. Bring the file just as it was saved.',
    ],
  },
  {
    what: 'a file that is no text',
    refuses: 'fault.not-json',
    file: Buffer.from([0xff, 0xd8, 0xff, 0xe0]),
    says: ['This is not a notebook file: it is not UTF-8 text.'],
  },
  {
    what: 'an empty file',
    refuses: 'fault.unreadable',
    file: '',
    says: ["The file can't be read: no file was chosen, or it is empty."],
  },
  {
    what: 'a file in the form of another version and of another program',
    refuses: ['fault.wrong-version', 'fault.wrong-format'],
    file: amended({ version: 2, format: 'ledger' }),
    says: [
      'format: The format is "ledger"; it has to be "mearing-notebook".',
      'version: The version is "2"; this program reads version 1, written as the number 1.',
    ],
  },
  {
    what: 'a file with a key twice',
    refuses: 'fault.key-twice',
    file: '{"format":"mearing-notebook","format":"mearing-notebook"}',
    says: ['format: The key "format" stands twice in the same object; keep one.'],
  },
  {
    what: 'a file of lists in lists in lists',
    refuses: 'fault.too-deep',
    file: amended({ notes: JSON.parse(`${'['.repeat(300)}${']'.repeat(300)}`) }),
    says: ['deep inside one another; a notebook file never does.'],
  },
  {
    what: 'a file a little over 2 MB',
    refuses: 'fault.too-large',
    file: megabytes(2),
    says: ['The file has 200', 'bytes; at most 2000000 are taken.'],
  },
  {
    what: 'a file with something wrong in every part',
    refuses: [
      'fault.not-one-of',
      'fault.length-form',
      'fault.percent-pair',
      'fault.use-off-gate',
      'fault.share-both-forms',
      'fault.difference-nested',
      'fault.id-twice',
      'fault.id-unknown',
      'fault.saving-dearer',
      'fault.saving-outside',
      'fault.weights-zero',
      'fault.pot-below-zero',
      'fault.money-digits',
      'fault.date-form',
    ],
    file: wrongInMany,
    says: [
      'sections[0].from: "40" has no unit: write "40 ft"',
      'sections[0].share.materials.b: 60 and 50 add to 110; the two percentages have to add to exactly 100.',
      'sections[1].share.materials.principle: Only a gate can be shared by use',
      'sections[2].share: Share either both pots together, or materials and work each; not both ways at once.',
      "A difference can't stand inside a difference; choose another principle for this part.",
      'sections[4].id: The id "s4" is taken already; sections, gates and common costs each need an id of their own.',
      'Building together (500.00) costs 101.00 more than building alone (399.00 in all), so there is no saving to share',
      'and nobody can be asked for less than nothing or more than the pot; correct the figures for building alone',
      'There is something to share by benefit, but both figures are zero; enter a figure above zero',
      'Credits take the pot 9.00 below zero; a pot may not be less than nothing. Lower the credits',
      'gates[0].materials[0].suppliedBy: "found" is not known here; use one of',
      'contributions[0].date: "2027-02-30" is not a day of the calendar: write year-month-day',
      'contributions[0].for: No section, gate or common cost has the id "s99"; use one of "s1", "s2"',
      'contributions[0].amount: "12.345" has too many digits after the point; USD takes at most 2.',
    ],
  },
  {
    what: 'a file that is a list',
    refuses: 'fault.not-a',
    file: '[]',
    says: ['it has to be an object.'],
  },
]

const chosen = (page: Page) => page.locator('input[type=file]')

function keepsFile(page: Page) {
  return chosen(page)
}

/** In place of the notebook, on the page of the record. */
const inPlace: readonly RefusalRow[] = files.map(({ what, refuses, file, says }) => ({
  what: `in place of the notebook: ${what}`,
  refuses,
  at: '/record',
  typed: (page) => chooseFile(page, file),
  press: pressedTwice('Put this file in its place'),
  says,
  keeps: [[keepsFile, 'C:\\fakepath\\notebook.json']],
}))

/** What a notebook file is refused by. */
export const fileTextRefusals: RefusalGroup = {
  about: 'a notebook file that is refused',
  notebook: shortNotebook,
  rows: [
    ...inPlace,
    {
      what: 'in place of the notebook: no file at all',
      refuses: 'importRefusals.none',
      at: '/record',
      press: pressedTwice('Put this file in its place'),
      says: 'Choose a notebook file first.',
    },
    {
      what: 'in place of the notebook: a file that a page of somebody else sends',
      refuses: 'importRefusals.foreign',
      at: '/record',
      typed: async (page) => {
        await fromElsewhere(page)
        await chooseFile(page, JSON.stringify(shortNotebook))
      },
      press: pressedTwice('Put this file in its place'),
      says: 'Not sent from a page of this program.',
    },
    {
      what: 'in place of the notebook: a file that was sent so long ago that it is not held any more',
      refuses: 'importRefusals.gone',
      at: '/record',
      typed: async (page) => {
        await page.route('**/start/import', async (route) => {
          const answer = await route.fetch()
          const told = (await answer.text()).replace(/"held":"[^"]+"/, '"held":"aaaaaaaaaaaaaaaaaaaaaa"')
          await route.fulfill({ response: answer, body: told })
        })
        await chooseFile(page, JSON.stringify(shortNotebook))
      },
      press: pressedTwice('Put this file in its place'),
      says: 'Nothing was stored: the file was read too long ago. Send it once more.',
    },
  ],
}
