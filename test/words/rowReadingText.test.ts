import { describe, expect, test } from 'vitest'
import {
  checkReading,
  costLineReading,
  dateReading,
  firstWords,
  labourLineReading,
  stationReading,
} from '../../lib/words/rowReadingText.ts'

const named = { a: 'Heron House', b: 'Bank Cottage', currency: 'USD' }

describe('a folded row reads', () => {
  test('as a cost line: how many, at what price, from whom, with which tax', () => {
    const mesh = { what: 'mesh', quantity: '32', unit: 'ft', unitPrice: '5.40', taxPercent: '7.25' }
    expect(costLineReading({ ...mesh, suppliedBy: 'bought' }, named)).toBe(
      '32 ft at 5.40 USD, bought, tax 7.25 %',
    )
    expect(costLineReading({ ...mesh, taxPercent: '', suppliedBy: 'b', credit: true }, named)).toBe(
      '32 ft at 5.40 USD, from Bank Cottage in kind, a credit',
    )
    expect(costLineReading({ ...mesh, unit: '', unitPrice: ' ', taxPercent: '' }, named)).toBe(
      '32, not priced yet, bought',
    )
  })

  test('as a labour line: the hours, the rate, by whom, what counts of them', () => {
    const posts = { task: 'set posts', hours: '12', rate: '28' }
    expect(labourLineReading({ ...posts, by: 'a', ceiling: '16' }, named)).toBe(
      '12 h at 28 USD an hour, by Heron House, at most 16 h count',
    )
    expect(labourLineReading({ ...posts, by: 'hired', rate: '' }, named)).toBe('12 h, no rate yet, hired')
    // What does not count has no ceiling, whatever stands in the field that is out of sight then.
    expect(labourLineReading({ ...posts, by: 'b', counts: false, ceiling: '16' }, named)).toBe(
      '12 h at 28 USD an hour, by Bank Cottage, a gift',
    )
  })

  test('as a check: who asks and when, then what was said', () => {
    const permit = { who: 'b', on: '2026-10-05', answer: 'None needed up to 6 ft.', reference: 'a letter' }
    expect(checkReading(permit, named)).toBe(
      'Bank Cottage, 5 October 2026\nNone needed up to 6 ft.\nFound in: a letter',
    )
    expect(checkReading({}, named)).toBe('Nobody is named to ask yet')
  })

  test('as a date: the day, whose it is, how often it comes round', () => {
    const words = { year: 'every year' }
    expect(
      dateReading({ on: '2027-05-03', household: 'both', every: 'year', notes: 'rust' }, named, words),
    ).toBe('3 May 2027, both households, every year\nrust')
    expect(dateReading(null, named, words)).toBe('No day yet')
  })

  test('as a station: the setback and on whose land, the grounds, the turn', () => {
    const corner = {
      at: '24 ft',
      setback: { side: 'a', distance: '2 in' },
      gradeA: '4 in',
      gradeB: '-3 in',
      gradeFence: '1 in',
    }
    expect(stationReading(corner, named)).toBe(
      'Fence set back 2 in on the land of Heron House\nGround: Heron House 4 in, Bank Cottage -3 in, fence 1 in',
    )
    expect(
      stationReading({ at: '0 ft', setback: { distance: '0 in' }, angle: { degrees: '12' } }, named),
    ).toBe('Fence set back 0 in\nThe line turns here by 12°')
    expect(stationReading({ at: '0 ft' }, named)).toBe('No setback measured yet')
  })

  test('by its first whole words where it has no name of its own', () => {
    expect(firstWords('The old hazel stays.')).toBe('The old hazel stays.')
    expect(firstWords('Rails are welded, not clamped, with a slip joint every 60 ft')).toBe(
      'Rails are welded, not clamped, with a …',
    )
    expect(firstWords('x'.repeat(60))).toBe(`${'x'.repeat(40)} …`)
  })
})
