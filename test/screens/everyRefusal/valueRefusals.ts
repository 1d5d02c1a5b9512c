import { shortNotebook } from '../shortNotebook.ts'
import { put, trySaving } from '../typing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'

const section = { at: '/item/s1', button: 'Save this section' }
const gate = { at: '/item/g1', button: 'Save this gate' }
const line = { at: '/line', button: 'Save the line' }
const caps = { at: '/shares', button: 'Save the caps' }
const book = { at: '/money', button: 'Enter it' }

type Form = typeof section

/** A value that its field does not take; on the form of the book something else was typed as well. */
function value({ at, button }: Form, path: string, typed: string, refuses: string, says: string): RefusalRow {
  const others: Readonly<Record<string, string>> =
    at === book.at ? { amount: '30.00', note: 'two rolls' } : {}
  const all = Object.entries({ ...others, [path]: typed })
  return {
    what: `${at.slice(1)}, ${path}: “${typed}”`,
    refuses,
    at,
    typed: async (page) => {
      for (const [field, text] of all) await put(page, field, text)
    },
    press: (page) => trySaving(page, button),
    says,
    keeps: all,
    names: path,
  }
}

/** Values that are refused where they are typed. */
export const valueRefusals: RefusalGroup = {
  about: 'a value that is refused',
  notebook: shortNotebook,
  rows: [
    value(
      section,
      'from',
      '40',
      'fault.length-form',
      '"40" has no unit: write "40 ft", or "40 in" where inches are meant',
    ),
    value(
      section,
      'to',
      '-3 ft',
      'fault.length-negative',
      '"-3 ft" is negative; only ground heights may be.',
    ),
    value(
      section,
      'height.agreed',
      '1,83 m',
      'fault.length-form',
      '"1,83 m" can\'t be read as a length: write a figure with its unit',
    ),
    value(
      section,
      'materials[0].quantity',
      '1,200',
      'fault.number-form',
      '"1,200" can\'t be read as a number: use figures and at most one point',
    ),
    value(section, 'materials[0].quantity', '', 'fault.needed', 'a number, such as 14 or 0.385'),
    value(
      section,
      'materials[0].unitPrice',
      '5.1234567',
      'fault.number-form',
      'with up to 6 digits after the point',
    ),
    value(
      section,
      'materials[0].taxPercent',
      '101',
      'fault.percent-range',
      '"101" is more than 100; a percentage lies between 0 and 100.',
    ),
    value(gate, 'opening', 'four feet', 'fault.length-form', '"four feet" can\'t be read as a length'),
    value(line, 'line.stations[1].at', '60', 'fault.length-form', '"60" has no unit: write "60 ft"'),
    value(
      line,
      'line.stations[1].gradeA',
      '+2 in',
      'fault.length-form',
      'with a minus in front if it lies below',
    ),
    value(caps, 'caps.a', '12.345', 'fault.money-digits', 'USD takes at most 2'),
    value(book, 'amount', '12.345', 'fault.money-digits', 'USD takes at most 2'),
    value(book, 'date', '', 'fault.needed', 'a day written year-month-day'),
  ],
}
