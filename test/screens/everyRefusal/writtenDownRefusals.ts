import type { Page } from '@playwright/test'
import { field, trySaving } from '../typing.ts'
import { keptBooks } from './keptBooks.ts'
import { all, opened, rewriting } from './pressing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'
import { elsewhere, meanwhile, withKeys } from './storeBeside.ts'

const [section, slope] = keptBooks.sections
const tomorrow = () => new Date(Date.now() + 86_400_000).toISOString().slice(0, 10)
type Step = (page: Page) => Promise<unknown>

/** Of a form of a thing, the one that is new. */
const writeDown = (page: Page) =>
  page
    .locator('form.draft-form', { has: field(page, 'what', 'new-thing') })
    .getByRole('button', { name: 'Write it down' })
    .click()
const newThing = opened('Write down a tool, a leftover or salvage')
const ofThing = (path: string, text: string) => (page: Page) => field(page, path, 'new-thing').fill(text)

/** What is written down as a tool or a leftover, and hours that are turned into money. */
export const writtenDownRefusals: RefusalGroup = {
  about: 'a thing that is written down, and hours turned into money',
  notebook: keptBooks,
  rows: [
    {
      what: 'a thing without a name is lent from tomorrow',
      refuses: ['thingRefusals.what', 'thingRefusals.afterToday'],
      at: '/books',
      typed: all(newThing, (page) => ofThing('on', tomorrow())(page)),
      press: writeDown,
      says: [
        'Needed: what it is, such as “post auger” or “12 ft of mesh”.',
        'This day is yet to come: today is',
      ],
      form: 'new-thing',
      names: 'what',
    },
    {
      what: 'a thing of no known kind',
      refuses: 'thingRefusals.kind',
      at: '/books',
      typed: all(newThing, ofThing('what', 'post auger'), rewriting('"kind":"borrowed"', '"kind":"found"')),
      press: writeDown,
      says: 'Needed: choose one of the answers.',
      form: 'new-thing',
      keeps: [['what', 'post auger']],
    },
    {
      what: 'a leftover has a value, and nobody keeps it',
      refuses: ['thingRefusals.item', 'thingRefusals.household'],
      at: '/books',
      typed: all(
        newThing,
        (page) =>
          page
            .locator('form.draft-form', { has: field(page, 'what', 'new-thing') })
            .getByRole('radio', { name: 'Left over' })
            .check(),
        ofThing('what', '12 ft of mesh'),
        ofThing('value', '20.00'),
      ),
      press: writeDown,
      says: [
        'Needed where it has a value: the section, gate or common cost whose materials the value is taken off.',
        'Needed where it has a value: who keeps it, or who took the money for it.',
      ],
      form: 'new-thing',
      keeps: [
        ['what', '12 ft of mesh'],
        ['value', '20.00'],
      ],
    },
    turned('hours are turned into money that are none', 'noHours', 's1', '0', 'Needed: more than no hours.'),
    turned(
      'hours of nothing in the plan are turned into money',
      'noSuchItem',
      '',
      '1',
      'Needed: choose the section, gate or common cost that the hours are on.',
    ),
    turned(
      'more hours are turned into money than are still to give',
      'tooManyHours',
      's1',
      '900',
      'More than are still to give: on Along the bank, Heron House has',
    ),
    turned(
      'more money is turned into hours than is still to give',
      'tooMuchMoney',
      's1',
      '900',
      'More than is still to give: these hours come to $18,000.00, and Heron House has',
      choosingTo('hours'),
    ),
    {
      ...turned(
        'hours are turned into money on a section that can’t be shared since',
        'notWorkedOut',
        's1',
        '1',
        'What this item asks for can’t be worked out yet. Choose another item, or mend that first.',
      ),
      ...meanwhile(
        withKeys({
          sections: [
            { ...section, share: { together: { ...slope.share.together, aloneA: '1.00', aloneB: '1.00' } } },
            slope,
          ],
        }),
      ),
    },
    {
      what: 'hours are agreed to be turned into money after that was taken back meanwhile',
      refuses: 'conversionRefusals.gone',
      at: '/work',
      ...elsewhere({
        given: withKeys({ books: { ...keptBooks.books, conversions: [asked()] } }),
        meanwhile: withKeys({ books: keptBooks.books }),
      }),
      press: (page) => page.getByRole('button', { name: 'Agree to this', exact: true }).click(),
      says: 'This was marked, taken back or changed in the meantime, or it is not yours to press. Load the page again.',
    },
  ],
}

function asked() {
  return {
    household: 'b',
    to: 'money',
    item: 's1',
    hours: '1',
    rate: '20',
    on: '2026-05-20',
    why: 'a bad back',
    marks: { b: { on: '2026-05-20' } },
  }
}

function choosingTo(to: string): Step {
  return (page) => page.locator(`#conversions input[type=radio][value="${to}"]`).check()
}

function turned(
  what: string,
  key: string,
  item: string,
  hours: string,
  says: string,
  besides: Step = async () => undefined,
): RefusalRow {
  return {
    what,
    refuses: `conversionRefusals.${key}`,
    at: '/work',
    typed: async (page) => {
      await besides(page)
      if (item !== '') await page.locator(`#conversions input[type=radio][value="${item}"]`).check()
      await field(page, 'hours', 'conversion').fill(hours)
      await field(page, 'rate', 'conversion').fill('20')
      await field(page, 'why', 'conversion').fill('a bad back')
    },
    press: (page) => trySaving(page, 'Ask for it'),
    says,
    form: 'conversion',
    keeps: [
      ['hours', hours],
      ['why', 'a bad back'],
    ],
  }
}
