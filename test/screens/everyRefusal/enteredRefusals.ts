import type { Page } from '@playwright/test'
import { markEverything } from '../../actions/world.ts'
import { choose, field, put, trySaving } from '../typing.ts'
import { filesTakenAway, onRecord } from './filesOnRecord.ts'
import { keptBooks } from './keptBooks.ts'
import { all, opened, rewriting } from './pressing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'
import { meanwhile, notebookOf, withKeys } from './storeBeside.ts'

const [section, slope] = keptBooks.sections
const enter = (page: Page) => trySaving(page, 'Enter it')
const tomorrow = () => new Date(Date.now() + 86_400_000).toISOString().slice(0, 10)
type Step = (page: Page) => Promise<unknown>

/** An entry with a note, which has to stay, and with what is typed besides. */
function entry(
  row: Pick<RefusalRow, 'what' | 'refuses' | 'says'> & Partial<RefusalRow>,
  ...typed: readonly Step[]
): RefusalRow {
  return {
    at: '/money',
    typed: all((page) => put(page, 'note', 'two rolls'), ...typed),
    press: enter,
    keeps: [['note', 'two rolls']],
    ...row,
  }
}

const typing = (path: string, text: string) => (page: Page) => put(page, path, text)
const choosing = (path: string, value: string) => (page: Page) => choose(page, path, value)

/** One line of the plan, that a part of the amount was for. */
const lineOf =
  (label: RegExp, amount: string): Step =>
  async (page) => {
    await opened('Which lines it was for')(page)
    await field(page, 'lines').getByRole('button', { name: 'Add a line' }).click()
    await page.getByRole('radio', { name: label }).check()
    await put(page, 'lines[0].amount', amount)
  }

const hoursOf = (task: string, hours: string, rate: string): Step =>
  all(
    choosing('kind', 'hours'),
    choosing('for', 's1'),
    choosing('task', task),
    typing('hours', hours),
    typing('rate', rate),
  )

/** What is typed into the book of money and hours. */
export const enteredRefusals: RefusalGroup = {
  about: 'an entry in the book of money and hours',
  notebook: keptBooks,
  rows: [
    entry(
      {
        what: 'something is entered for a day that is yet to come',
        refuses: 'entryObjection.after today',
        says: ['is yet to come: today is', 'Enter what has been given, with the day on which it was given.'],
      },
      typing('amount', '5.00'),
      (page) => put(page, 'date', tomorrow()),
    ),
    entry(
      {
        what: 'something is entered for a day before the notebook',
        refuses: 'entryObjection.before the notebook',
        says: ['This notebook was started on', 'If the day is right, tick here; if not, correct it.'],
        names: { earlierIsMeant: 'If the day is right, tick here; if not, correct it.' },
      },
      typing('amount', '5.00'),
      typing('date', '2020-01-05'),
    ),
    entry(
      {
        what: 'something is entered for a line that the plan has lost meanwhile',
        refuses: 'entryObjection.no such line',
        says: '“mesh” is no longer in the plan. Choose another line, or take this row away: the amount then stays with the item.',
        ...meanwhile(withKeys({ sections: [{ ...section, materials: [section.materials[1]] }, slope] })),
      },
      typing('amount', '5.00'),
      choosing('for', 's1'),
      lineOf(/^Along the bank: mesh/, '5.00'),
    ),
    entry(
      {
        what: 'something is entered for the gate, with a line of a section',
        refuses: 'entryObjection.other item',
        says: 'This line is of “Along the bank”, and the entry is for “Willow gate”. Choose a line of “Willow gate”',
      },
      typing('amount', '5.00'),
      choosing('for', 's1'),
      lineOf(/^Along the bank: mesh/, '5.00'),
      rewriting('"for":"s1"', '"for":"g1"'),
    ),
    entry(
      {
        what: 'a payment of nothing is entered, by no means',
        refuses: ['entryRefusals.means', 'entryRefusals.noAmount'],
        says: [
          'Needed: in a few words, by what means it was paid, such as “in cash” or “by bank”.',
          'Needed: an amount of more than nothing.',
        ],
        names: { means: 'Needed: in a few words', amount: 'Needed: an amount of more than nothing.' },
      },
      choosing('kind', 'transfer'),
      typing('amount', '0.00'),
    ),
    entry(
      {
        what: 'something is entered in the name of the other household',
        refuses: 'entryRefusals.onlyOwn',
        says: 'Each household enters what it gave or got back itself: Bank Cottage has to enter this. Between you, enter a payment.',
      },
      choosing('household', 'b'),
      typing('amount', '5.00'),
    ),
    entry(
      {
        what: 'something is entered with a receipt that was taken away meanwhile',
        refuses: 'entryRefusals.receiptGone',
        says: 'This photo or paper is not with the notebook any more. Choose another, or leave it out.',
        given: (table) => onRecord(table, { name: 'receipt.pdf', kind: 'receipt' }),
        meanwhile: filesTakenAway,
      },
      typing('amount', '5.00'),
      opened('Which lines it was for'),
      (page) => page.getByRole('radio', { name: 'receipt.pdf' }).check(),
    ),
    entry(
      {
        what: 'hours are entered for a task that the plan has lost meanwhile',
        refuses: 'hoursRefusals.noSuchTask',
        says: 'This item has no work line with this task any more. Choose another one, or say that it is for none of them.',
        ...meanwhile(withKeys({ sections: [{ ...section, labour: [section.labour[1]] }, slope] })),
      },
      hoursOf('set the posts', '2', '20.00'),
    ),
    entry(
      {
        what: 'hours that are a gift are entered with a rate',
        refuses: 'hoursRefusals.giftWithRate',
        by: 'b',
        says: 'This work is planned as a gift, and a gift is in no sum: leave the rate empty.',
        names: 'rate',
      },
      hoursOf('clear the bank', '1', '20.00'),
    ),
    entry(
      {
        what: 'more hours are entered than count for a task',
        refuses: 'hoursRefusals.beyondCeiling',
        says: [
          'Of these 14 h, 2 h lie beyond the ceiling: for “set the posts” no more than 12 h count',
          'Tick that they are yours, enter fewer hours, or let both mark a higher ceiling first.',
        ],
        given: async (table) => markEverything(notebookOf(table)),
      },
      hoursOf('set the posts', '14', '20.00'),
    ),
  ],
}
