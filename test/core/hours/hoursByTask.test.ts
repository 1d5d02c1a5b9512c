import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hoursByTask } from '../../../lib/core/hours/hoursByTask.ts'
import { hoursTotals } from '../../../lib/core/hours/hoursTotals.ts'
import { exactHours } from '../../../lib/core/hours/ownHours.ts'
import { shareItems } from '../../../lib/core/shares/statement.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { documentWith, halves } from '../madeNotebook.ts'
import { randomNotebook } from '../randomNotebook.ts'

function hoursOf(document: unknown) {
  const read = readDocument(document)
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  const { notebook } = read.value
  return hoursByTask(notebook, shareItems(notebook).items, notebook.books.conversions)
}

const h = (typed: string) => exactHours(typed)
const date = '2027-04-03'
const given = (household: string, hours: string, task: string, more: object = {}) => ({
  household,
  kind: 'hours',
  hours,
  date,
  for: 's1',
  task,
  ...more,
})

/**
 * Worked by hand. Counted work: weld 8, dig 4 (a) and 2 (hired): 14 h at one rate, halved: 7 h each. Laid on the tasks
 * in the order of the lines: of weld's 8 h, 4 each; of the dug 4 h, 2 each; of the hired 2 h, 1 each.
 * a gave 5 h of welding and 3 of digging, of which 1 is its own; b gave 2 h of digging and 1 h with no task.
 * b turned 1.5 h into money. Still to give: a 6 − 5 − 2 = −1; b 6 − 2 − 1 − 1.5 = 1.5. The painting is b's gift.
 */
const worked = documentWith({
  sections: [
    {
      id: 's1',
      labour: [
        { task: 'weld', hours: '8', rate: '30', by: 'a' },
        { task: 'dig', hours: '4', rate: '30', by: 'a', ceiling: '6' },
        { task: 'dig', hours: '2', rate: '30', by: 'hired', ceiling: '2' },
        { task: 'paint', hours: '3', by: 'b', counts: false },
      ],
      share: halves,
    },
  ],
  contributions: [
    given('a', '5', 'weld', { rate: '30' }),
    given('a', '3', ' dig ', { rate: '30', own: '1' }),
    given('b', '2', 'dig', { rate: '30' }),
    given('b', '1', ''),
    given('b', '2.5', 'paint'),
    given('b', '9', 'weld', { struck: { on: date, by: 'b', why: 'another day' } }),
  ],
  books: {
    conversions: [
      {
        household: 'b',
        to: 'money',
        item: 's1',
        hours: '1.5',
        rate: '30',
        on: date,
        marks: { a: { on: date }, b: { on: date } },
      },
      {
        household: 'b',
        to: 'money',
        item: 's1',
        hours: '1',
        rate: '30',
        on: date,
        marks: { b: { on: date } },
      },
    ],
  },
})

describe('hours by task and household', () => {
  const [item] = hoursOf(worked)
  const row = (kind: string, task: string) =>
    item?.tasks.find((one) => one.kind === kind && one.task === task)

  test('lay what the item asks of each on its tasks, and tell hired work apart', () => {
    expect(item?.tasks.map(({ kind, task }) => [kind, task])).toEqual([
      ['work', 'weld'],
      ['work', 'dig'],
      ['hired', 'dig'],
      ['gift', 'paint'],
      ['no line', ''],
    ])
    expect(row('work', 'weld')?.asked).toEqual({ a: h('4'), b: h('4') })
    expect(row('work', 'dig')?.asked).toEqual({ a: h('2'), b: h('2') })
    expect(row('hired', 'dig')?.asked).toEqual({ a: h('1'), b: h('1') })
    expect(row('hired', 'dig')?.stillToGive).toEqual({ a: 0n, b: 0n })
  })

  test('take off what was given and counts; own hours and entries taken back count as nothing', () => {
    expect(row('work', 'weld')).toMatchObject({
      given: { a: h('5'), b: 0n },
      stillToGive: { a: -h('1'), b: h('4') },
    })
    expect(row('work', 'dig')).toMatchObject({
      given: { a: h('2'), b: h('2') },
      own: { a: h('1'), b: 0n },
      ceiling: h('8'),
    })
    expect(row('no line', '')?.given).toEqual({ a: 0n, b: h('1') })
  })

  test('leave gifts outside of what is asked and still to give', () => {
    expect(row('gift', 'paint')).toMatchObject({
      planned: { a: 0n, b: h('3') },
      asked: { a: 0n, b: 0n },
      given: { a: 0n, b: h('2.5') },
      stillToGive: { a: 0n, b: 0n },
    })
  })

  test('are fewer by hours that both agreed to turn into money, and by no others', () => {
    expect(item?.turned).toEqual({ a: 0n, b: -h('1.5') })
    expect(item?.stillToGive).toEqual({ a: -h('1'), b: h('1.5') })
  })

  test('come to the same in all', () => {
    expect(hoursTotals(hoursOf(worked), { a: 0n, b: h('0.5') })).toEqual({
      a: {
        asked: h('7'),
        hired: h('1'),
        given: h('7'),
        turned: 0n,
        still: -h('1'),
        own: h('1'),
        gifts: 0n,
      },
      b: {
        asked: h('7'),
        hired: h('1'),
        given: h('3.5'),
        turned: -h('1.5'),
        still: h('1'),
        own: 0n,
        gifts: h('2.5'),
      },
    })
  })

  test('always add to exactly what rule 4 asks of each on the item, and nobody is asked for less than nothing', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const read = readDocument(document)
        if (!read.ok) throw new Error('a made notebook is refused')
        const { items } = shareItems(read.value.notebook)
        for (const [index, item] of hoursOf(document).entries()) {
          const rule4 = items[index]?.hours
          for (const household of ['a', 'b'] as const) {
            const asked = item.tasks.map((task) => task.asked[household])
            expect(asked.reduce((sum, one) => sum + one, 0n)).toBe((rule4?.[household] ?? -1n) * 10_000n)
            expect(asked.every((one) => one >= 0n)).toBe(true)
          }
        }
      }),
      { numRuns: 300 },
    )
  })
})
