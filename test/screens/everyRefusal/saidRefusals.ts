import { shortNotebook } from '../shortNotebook.ts'
import { field } from '../typing.ts'
import { all, pressed, rewriting } from './pressing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'
import { meanwhile, withKeys } from './storeBeside.ts'

/** A message beside the gate, typed as a remark. */
function message(
  row: Pick<RefusalRow, 'what' | 'refuses' | 'says'> & Partial<RefusalRow>,
  text: string,
  sent?: readonly [string, string],
): RefusalRow {
  const written = async (page: Parameters<RefusalRow['press']>[0]) => {
    await field(page, 'text', 'message').fill(text)
  }
  return {
    at: '/item/g1',
    typed: sent === undefined ? written : all(written, rewriting(...sent)),
    press: pressed('Say it'),
    form: 'message',
    keeps: [['text', text]],
    ...row,
  }
}

const long = 'why '.repeat(1001).trim()

/** A reader's link with one field typed otherwise. */
function reader(
  what: string,
  refuses: string,
  path: 'label' | 'through',
  typed: string,
  says: string,
): RefusalRow {
  return {
    what,
    refuses,
    at: '/readers',
    typed: async (page) => {
      await field(page, 'label', 'reader').fill('the permit office')
      await field(page, path, 'reader').fill(typed)
    },
    press: pressed('Make the link'),
    says,
    form: 'reader',
    names: path,
    keeps: [[path, typed]],
  }
}

/** What is said beside an item, and links for those who only read. */
export const saidRefusals: RefusalGroup = {
  about: 'a message, and a link for somebody who only reads',
  notebook: shortNotebook,
  rows: [
    message(
      {
        what: 'nothing is said',
        refuses: 'messageRefusals.text',
        says: 'Needed: what you want to say.',
        names: 'text',
      },
      '',
    ),
    message(
      {
        what: 'more is said than is taken',
        refuses: 'messageRefusals.tooLong',
        says: 'At most 4000 characters; this has 4003.',
        names: 'text',
      },
      long,
    ),
    message(
      {
        what: 'something is said that is none of the kinds',
        refuses: 'messageRefusals.kind',
        says: 'Needed: choose one of the answers.',
      },
      'The hinge is loose.',
      ['"kind":"remark"', '"kind":"song"'],
    ),
    message(
      {
        what: 'something is answered that nobody has said',
        refuses: 'messageRefusals.answers',
        says: 'Needed: choose which message of the other household you answer.',
      },
      'So be it.',
      ['"kind":"remark"', '"kind":"answer"'],
    ),
    message(
      {
        what: 'something is said beside a gate that was removed meanwhile',
        refuses: 'messageRefusals.removed',
        says: 'This item was removed in the meantime. What you typed is still on the page, to copy from.',
        ...meanwhile(withKeys({ gates: [] })),
      },
      'The hinge is loose.',
    ),
    message(
      {
        what: 'something is said in half a character',
        refuses: 'pressRefusals.draft',
        says: 'This form could not be read, or is larger than 2 MB. Nothing was changed.',
      },
      'The hinge is loose.',
      ['The hinge is loose.', '\\ud800'],
    ),
    reader(
      'it is not said for whom a link is',
      'readerRefusals.label',
      'label',
      '',
      'Needed: for whom the link is, such as “the permit office”.',
    ),
    reader(
      'it is said at length for whom a link is',
      'readerRefusals.labelTooLong',
      'label',
      'o'.repeat(201),
      'At most 200 characters; this has 201.',
    ),
    reader(
      'a link is to end on no day',
      'readerRefusals.day',
      'through',
      '',
      'Needed: a day, the last on which the link works.',
    ),
    reader(
      'a link is to end in the past',
      'readerRefusals.past',
      'through',
      '2020-05-01',
      'This day is over. Choose today or a later day.',
    ),
    reader(
      'a link is to hold for generations',
      'readerRefusals.tooFar',
      'through',
      '2099-05-01',
      'At most five years ahead:',
    ),
    {
      what: 'a link is to show what is none of the choices',
      refuses: 'readerRefusals.content',
      at: '/readers',
      typed: all(
        (page) => field(page, 'label', 'reader').fill('the bank'),
        rewriting('"content":"summary"', '"content":"the best of it"'),
      ),
      press: pressed('Make the link'),
      says: 'Needed: choose one of the answers.',
      form: 'reader',
      keeps: [['label', 'the bank']],
    },
  ],
}
