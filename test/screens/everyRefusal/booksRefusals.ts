import { lineValue } from '../../../lib/forms/entryDraft.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { chooseFile } from '../twoHouseholds.ts'
import { both, keptBooks, meshEntry, on, places, spentOn } from './keptBooks.ts'
import { button, documentAt, entryFields, pressed, pressedTwice, sending, sends } from './pressing.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { elsewhere, meanwhile, withKeys, withList } from './storeBeside.ts'

const markMesh = /^Mark as bought, at \$60\.00/
const mesh = { item: 's1', pot: 'materials', what: 'mesh', place: '1' } as const
const unmarked = 'Take your mark off'
const bought = (marks: object) => ({ ...mesh, amount: '60.00', marks })
const [section, slope] = keptBooks.sections

/** Presses in the books, on their lines, goods and things. */
export const booksRefusals: RefusalGroup = {
  about: 'what is pressed in the books',
  notebook: keptBooks,
  rows: [
    {
      what: 'a line is marked by a press that names none',
      refuses: 'booksRefusals.unreadable',
      at: '/books',
      typed: sending(markMesh, { line: 'the mesh' }),
      press: pressed(markMesh),
      says: 'This press could not be read. Load the page again.',
    },
    {
      what: 'a line is marked that the plan has lost meanwhile',
      refuses: 'booksRefusals.gone',
      at: '/books',
      ...meanwhile(withKeys({ sections: [{ ...section, materials: [section.materials[1]] }, slope] })),
      press: pressed(markMesh),
      says: 'This line is no longer in the plan. Load the page again.',
    },
    {
      what: 'a line is marked for which more came back meanwhile than was spent',
      refuses: 'booksRefusals.belowZero',
      at: '/books',
      ...meanwhile(withList('contributions', (entries) => [...entries, meshEntry('refund', '61.00')])),
      press: pressed(markMesh),
      says: 'More came back for this line than was spent on it',
    },
    {
      what: 'a line is marked at what it came to before another receipt',
      refuses: 'booksRefusals.moved',
      at: '/books',
      ...meanwhile(withList('contributions', (entries) => [...entries, meshEntry('cash', '5.00')])),
      press: pressed(markMesh),
      says: 'The line has come to $65.00 in the meantime. Load the page again, look at its entries, then mark that.',
    },
    {
      what: 'a mark is taken off a line that the other household has marked meanwhile',
      refuses: 'booksRefusals.held',
      at: '/books',
      ...elsewhere({
        given: withKeys({ books: { ...keptBooks.books, bought: [bought({ a: { on } })] } }),
        meanwhile: withKeys({ books: { ...keptBooks.books, bought: [bought(both)] } }),
      }),
      press: pressed(`${unmarked} $60.00`),
      says: 'Both have marked $60.00, so one alone can’t undo it',
    },
    {
      what: 'a line is marked by the second household at what leaves nothing to share',
      refuses: 'booksRefusals.breaks',
      at: '/books',
      press: pressed(/^Mark as bought, at \$170\.00/),
      says: [
        'With this the shares could no longer be worked out: Building together',
        'correct the figures for building alone',
      ],
    },
    {
      what: 'all lines of an item are marked after one of them came to more',
      refuses: 'booksRefusals.changed',
      at: '/books',
      ...elsewhere({
        given: withList('contributions', (entries) => [...entries, postsEntry]),
        meanwhile: withList('contributions', (entries) => [...entries, meshEntry('cash', '5.00')]),
      }),
      press: pressed('Mark these 2 lines at what they came to'),
      says: 'This was changed in the meantime. Load the page again.',
    },
    {
      what: 'what the other household bought is put on another line',
      refuses: 'booksRefusals.notYours',
      at: '/books',
      typed: async (page) => {
        const { contributions } = await documentAt(page)
        await sends(button(page, 'Put it there'), entryFields(contributions, places.wireOfB))
      },
      press: pressed('Put it there'),
      says: 'Only the household that wrote the entry can change what it was for.',
    },
    {
      what: 'what was bought for a section is put on a line of the gate',
      refuses: 'entryRefusals.otherItem',
      at: '/books',
      typed: sending('Put it there', {
        to: lineValue({ item: 'g1', pot: 'materials', what: 'hinge', place: '1' }),
      }),
      press: pressed('Put it there'),
      says: 'This line is of “Willow gate”, and the entry is for “Along the bank”. Choose a line of “Along the bank”',
    },
    {
      what: 'goods are marked once more that both have marked whole',
      refuses: 'booksRefusals.valueHeld',
      at: '/books',
      typed: async (page) => {
        const { contributions } = await documentAt(page)
        await sends(
          button(page, /^Agree that all \$90\.00 counts/),
          entryFields(contributions, places.barnRails),
        )
      },
      press: pressed(/^Agree that all \$90\.00 counts/),
      says: 'Both have marked that all of it counts, so one alone can’t undo it.',
    },
    {
      what: 'a mark is taken off a leftover that the other household has marked meanwhile',
      refuses: 'booksRefusals.thingHeld',
      at: '/books',
      ...meanwhile(
        withKeys({ books: { ...keptBooks.books, things: [{ ...keptBooks.books.things[0], marks: both }] } }),
      ),
      press: pressed(/^Take your mark off.*mesh, 12 ft/),
      says: 'Both have marked this, so one alone can’t undo it: it counts until both mark another value.',
    },
    {
      what: 'a file is put in the place of books that hold the marks of both',
      refuses: 'booksRefusals.fileInstead',
      at: '/record',
      typed: (page) => chooseFile(page, JSON.stringify(shortNotebook)),
      press: pressedTwice('Put this file in its place'),
      says: 'A file brings no marks, so one household alone can’t put it in their place. Start a new notebook from the file instead',
    },
  ],
}

const postsEntry = {
  household: 'a',
  kind: 'cash',
  amount: '40.00',
  date: on,
  for: 's1',
  note: 'posts',
  enteredBy: 'a',
  lines: spentOn('s1', 'posts', '2', '40.00'),
}
