import { typeShare } from '../itemTyping.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { choose, put, tick, trySaving } from '../typing.ts'
import { all, rewriting } from './pressing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'
import { meanwhile } from './storeBeside.ts'

const saved = (button: string) => (page: Parameters<typeof trySaving>[0]) => trySaving(page, button)
/** Texts typed into a form by their paths; each is refused with the words beside it, at its field. */
function typedWrong(
  what: string,
  at: string,
  button: string,
  values: Readonly<Record<string, readonly [typed: string, refuses: string, says: string]>>,
): RefusalRow {
  const paths = Object.entries(values)
  const texts = paths.map(([path, [typed]]) => [path, typed] as const)
  return {
    what,
    refuses: [...new Set(paths.map(([, [, refuses]]) => refuses))],
    at,
    typed: async (page) => {
      for (const [path, typed] of texts) await put(page, path, typed)
    },
    press: saved(button),
    says: paths.map(([, [, , says]]) => says),
    keeps: texts,
    names: Object.fromEntries(paths.map(([path, [, , says]]) => [path, says])),
  }
}

/** Values that are refused where they are typed. */
export const valueRefusals: RefusalGroup = {
  about: 'a value that is refused',
  notebook: shortNotebook,
  rows: [
    typedWrong('lengths, figures and percentages of a section', '/item/s1', 'Save this section', {
      from: ['40', 'fault.length-form', '"40" has no unit: write "40 ft", or "40 in" where inches are meant'],
      to: [
        '-3 ft',
        'fault.length-negative',
        '"-3 ft" is negative; only ground heights may be. Write it without the minus.',
      ],
      'height.agreed': [
        '1,83 m',
        'fault.length-form',
        '"1,83 m" can\'t be read as a length: write "1.83 m".',
      ],
      'materials[0].quantity': [
        '1,200',
        'fault.number-form',
        '"1,200" can\'t be read as a number: write "1200", or "1.200", whichever is meant',
      ],
      'materials[0].unitPrice': [
        '5.1234567',
        'fault.number-form',
        '"5.1234567" has too many digits after the point: write at most 6.',
      ],
      'materials[0].taxPercent': [
        '101',
        'fault.percent-range',
        '"101" is more than 100; a percentage lies between 0 and 100.',
      ],
      'labour[0].hours': ['', 'fault.needed', 'Needed: a number, such as 14 or 0.385.'],
      'labour[0].rate': ['2e1', 'fault.number-form', '"2e1" can\'t be read as a number'],
    }),
    typedWrong('a gate as wide as a word', '/item/g1', 'Save this gate', {
      opening: ['four feet', 'fault.length-form', '"four feet" can\'t be read as a length'],
    }),
    typedWrong('a station without a unit, and a ground height with a plus', '/line', 'Save the line', {
      'line.stations[1].at': ['60', 'fault.length-form', '"60" has no unit: write "60 ft"'],
      'line.stations[1].gradeA': [
        '+2 in',
        'fault.length-form',
        'with a minus in front if it lies below; no comma, plus sign or exponent.',
      ],
    }),
    typedWrong('a cap in tenths of a cent', '/shares', 'Save the caps', {
      'caps.a': [
        '12.345',
        'fault.money-digits',
        '"12.345" has too many digits after the point; USD takes at most 2.',
      ],
    }),
    {
      ...typedWrong('an entry of tenths of a cent, without its day', '/money', 'Enter it', {
        amount: [
          '12.345',
          'fault.money-digits',
          '"12.345" has too many digits after the point; USD takes at most 2.',
        ],
        date: ['', 'fault.needed', 'Needed: a day written year-month-day, such as 2027-04-30.'],
        note: ['two rolls', 'fault.needed', ''],
      }),
      names: {
        amount: '"12.345" has too many digits after the point; USD takes at most 2.',
        date: 'a day written year-month-day, such as 2027-04-30.',
      },
      says: ['"12.345" has too many digits after the point', 'Needed: a day written year-month-day'],
    },
    {
      what: 'two percentages that do not add to 100',
      refuses: 'fault.percent-pair',
      at: '/item/s1',
      typed: (page) =>
        typeShare(page, {
          materials: { principle: 'percent', a: '60', b: '50' },
          labour: { principle: 'equal' },
        }),
      press: saved('Save this section'),
      says: '60 and 50 add to 110; the two percentages have to add to exactly 100.',
      keeps: [
        ['share.materials.a', '60'],
        ['share.materials.b', '50'],
      ],
      names: 'share.materials.b',
    },
    {
      what: 'lengths that nobody typed, of both pots',
      refuses: 'fault.needed',
      at: '/item/s1',
      typed: (page) =>
        typeShare(page, {
          materials: { principle: 'length', a: '', b: '30 ft' },
          labour: { principle: 'length', a: '', b: '' },
        }),
      press: saved('Save this section'),
      // Every field is told apart from those that lack the same.
      says: [
        'Materials, Length that Heron House fronts: Needed: a length with its unit',
        'Work, Length that Heron House fronts: Needed: a length with its unit',
        'Length that Bank Cottage fronts: Needed: a length with its unit',
      ],
      names: {
        'share.materials.a': 'a length with its unit, such as 6 ft or 1.83 m.',
        'share.labour.b': 'a length with its unit, such as 6 ft or 1.83 m.',
      },
    },
    {
      what: 'a principle that does not fit the item, where a browser sends it all the same',
      refuses: 'fault.use-off-gate',
      at: '/item/s1',
      typed: all(rewriting('"benefit"', '"use"'), (page) =>
        typeShare(page, {
          materials: { principle: 'benefit', a: '2', b: '1' },
          labour: { principle: 'equal' },
        }),
      ),
      press: saved('Save this section'),
      says: 'Only a gate can be shared by use, because only gates have counted passages; choose another principle here.',
      keeps: [['share.materials.a', '2']],
      names: 'share.materials.principle',
    },
    {
      what: 'hired labour that is a gift',
      refuses: 'fault.gift-hired',
      at: '/item/s1',
      typed: async (page) => {
        await choose(page, 'labour[0].by', 'hired')
        await tick(page, 'labour[0].counts', false)
      },
      press: saved('Save this section'),
      says: "Hired work can't be a gift; let it count, or name the household that gives it.",
      names: 'labour[0].counts',
    },
    {
      what: 'figures for building alone without where they come from',
      refuses: 'savingRefusals.source',
      at: '/item/s1',
      typed: (page) =>
        typeShare(page, {
          materials: { principle: 'saving', aloneA: '200.00', aloneB: '210.00' },
          labour: { principle: 'equal' },
        }),
      press: saved('Save this section'),
      says: 'Needed: where this figure comes from, such as an offer with its date, or your own reckoning.',
      keeps: [['share.materials.aloneA', '200.00']],
      names: {
        'share.materials.sourceA': 'where this figure comes from, such as an offer with its date',
        'share.materials.sourceB': 'where this figure comes from, such as an offer with its date',
      },
    },
    {
      what: 'another currency, while the book has entries',
      refuses: 'fault.currency-fixed',
      at: '/parties',
      typed: (page) => choose(page, 'currency', 'EUR'),
      press: saved('Save households and parties'),
      says: 'The book has entries in USD, so the currency stays USD. Start a new notebook for another one.',
      keeps: [['currency', 'EUR']],
      names: 'currency',
    },
    {
      what: 'lines of a receipt that add to more than it',
      refuses: 'fault.lines-above-amount',
      at: '/money',
      typed: async (page) => {
        await put(page, 'amount', '10.00')
        await page.locator('summary', { hasText: 'Lines of the plan' }).click()
        await page.getByRole('button', { name: 'Add a line' }).click()
        await page.getByRole('radiogroup', { name: 'Line of the plan' }).getByRole('radio').first().check()
        await put(page, 'lines[0].amount', '12.00')
      },
      press: saved('Enter it'),
      says: 'The lines add to 12.00, 2.00 more than the 10.00 of the whole entry. Lower a line, or correct the amount.',
      keeps: [
        ['amount', '10.00'],
        ['lines[0].amount', '12.00'],
      ],
      names: 'lines',
    },
    {
      what: 'a day that is none, where a browser sends it all the same',
      refuses: 'fault.date-form',
      at: '/closing',
      typed: all(rewriting('"2027-06-01"', '"2027-02-30"'), (page) => put(page, 'closing.on', '2027-06-01')),
      press: saved('Save the closing'),
      says: '"2027-02-30" is not a day of the calendar: write year-month-day, such as "2027-04-30".',
      keeps: [['closing.on', '2027-06-01']],
      names: 'closing.on',
    },
    {
      what: 'a gate is saved that was removed meanwhile',
      refuses: 'itemRefusals.removedTyped',
      at: '/item/g1',
      ...meanwhile((document) => ({ ...document, gates: [] })),
      typed: (page) => put(page, 'latch', 'slide bolt'),
      press: saved('Save this gate'),
      says: 'This was removed in the meantime. What you typed is still on the page, to copy from.',
      keeps: [['latch', 'slide bolt']],
    },
    {
      what: 'what is said of a section with its height measured from nowhere known',
      refuses: 'fault.not-one-of',
      at: '/item/s1',
      typed: all(rewriting('"higher"', '"middle"'), (page) => put(page, 'notes', 'on the slope')),
      press: saved('Save this section'),
      says: '"middle" is not known here; use one of',
      keeps: [['notes', 'on the slope']],
      names: 'height.measuredFrom',
    },
  ],
}
