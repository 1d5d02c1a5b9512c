import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { LabourLine } from '../../../lib/core/agreement/notebook.ts'
import { plainNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { ceilingOf, ceilingThatHolds } from '../../../lib/core/hours/ceilings.ts'
import { countedHours, countedSoFar, exactHours, ownHours } from '../../../lib/core/hours/ownHours.ts'
import { halves, notebookWith } from '../madeNotebook.ts'

const line = (more: Partial<LabourLine> = {}): LabourLine => ({
  task: 'dig',
  hours: '8',
  rate: '20',
  by: 'a',
  counts: true,
  skill: '',
  ceiling: '10',
  ...more,
})
const digWith = (ceiling: string) =>
  notebookWith({
    sections: [{ id: 's1', labour: [{ task: 'dig', hours: '8', by: 'a', ceiling }], share: halves }],
  })
const h = exactHours

describe('the ceiling of a task', () => {
  test.each<[string, LabourLine[], string | undefined]>([
    ['is the one on its line', [line()], '10'],
    [
      'adds those of lines with the same words',
      [line(), line({ task: ' dig ', by: 'b', ceiling: '4.5' })],
      '14.5',
    ],
    ['is none where one of its lines has none', [line(), line({ ceiling: '' })], undefined],
    ['is none for other words', [line({ task: 'weld' })], undefined],
    ['leaves gifts out', [line(), line({ counts: false, by: 'b', ceiling: '3' })], '10'],
  ])('%s', (_, lines, expected) => {
    expect(ceilingOf(lines, 'dig')).toBe(expected === undefined ? undefined : h(expected))
  })

  test.each<[string, string | undefined, string, boolean, string | undefined]>([
    ['the draft’s, while nothing is signed', undefined, '12', false, '12'],
    ['the signed one, whatever the draft says alone', '10', '12', false, '10'],
    ['more, once both have marked more', '10', '12', true, '12'],
    ['none, once both have marked none', '10', '', true, undefined],
    ['the signed one, where both have marked less', '10', '9', true, '10'],
  ])('that holds is %s', (_, signed, draft, marked, expected) => {
    const ceilings = {
      signed: signed === undefined ? undefined : digWith(signed),
      draft: digWith(draft),
      markedByBoth: new Set(marked ? ['s1'] : []),
    }
    expect(ceilingThatHolds(ceilings, 's1', 'dig')).toBe(expected === undefined ? undefined : h(expected))
  })

  test('of a task that is new since the signing is the draft’s', () => {
    const ceilings = { signed: notebookWith(), draft: digWith('7'), markedByBoth: new Set<string>() }
    expect(ceilingThatHolds(ceilings, 's1', 'dig')).toBe(h('7'))
  })
})

describe('hours beyond a ceiling', () => {
  test.each<[string, string, string | undefined, string, string]>([
    ['none without a ceiling', '50', undefined, '50', '0'],
    ['none below it', '3', '10', '6', '0'],
    ['none up to it', '4', '10', '6', '0'],
    ['what lies above it', '4.25', '10', '6', '0.25'],
    ['all, once it is reached', '2', '10', '10', '2'],
    ['all, where more was counted than now would', '2', '10', '13', '2'],
    ['all, where nothing counts', '2', '0', '0', '2'],
  ])('are %s', (_, hours, ceiling, soFar, own) => {
    expect(ownHours(h(hours), ceiling === undefined ? undefined : h(ceiling), h(soFar))).toBe(h(own))
  })

  test('never let more count than the ceiling, however the hours come in', () => {
    const figure = fc.nat(20_000_000).map((millionths) => plainNumber(BigInt(millionths), 6))
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.constantFrom('a', 'b'), figure)), figure, (entries, ceiling) => {
        let book: Record<string, string>[] = []
        const counted = () => {
          const date = '2027-04-03'
          const contributions = book.map((one) => ({ kind: 'hours', date, for: 's1', task: 'dig', ...one }))
          const { contributions: read } = notebookWith({
            sections: [{ id: 's1', share: halves }],
            contributions,
          })
          return countedSoFar(read, 's1', 'dig')
        }
        for (const [household, hours] of entries) {
          const own = ownHours(h(hours), h(ceiling), counted())
          book = [...book, { household, hours, ...(own === 0n ? {} : { own: plainNumber(own, 6) }) }]
        }
        const whole = entries.reduce((sum, [, hours]) => sum + h(hours), 0n)
        const [least] = [whole, h(ceiling)].sort((one, other) => Number(one - other))
        expect(counted()).toBe(least)
      }),
      { numRuns: 60 },
    )
  })

  test('leave what counts, and never less than nothing', () => {
    expect(countedHours({ hours: '5', own: '1.5' })).toBe('3.5')
    expect(countedHours({ hours: '5', own: '' })).toBe('5')
    expect(countedHours({ hours: '5', own: '7' })).toBe('0')
  })
})
