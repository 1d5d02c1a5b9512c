import { describe, expect, test } from 'vitest'
import { differences, differenceWords, labelOf } from '../../lib/words/differences.ts'

const words = (before: unknown, after: unknown) => differences(before, after).map(differenceWords)
const item = (more: Record<string, unknown>, currency = 'USD') => ({ currency, item: { id: 's1', ...more } })

describe('what differs, in words', () => {
  test('is nothing between the same data in another order', () => {
    expect(words({ a: 1, b: [{ c: 2, d: 3 }] }, { b: [{ d: 3, c: 2 }], a: 1 })).toEqual([])
  })

  test('names the field, what was and what is', () => {
    expect(words(item({ height: { agreed: '6 ft' } }), item({ height: { agreed: '6 ft 6 in' } }))).toEqual([
      'Height, agreed: 6 ft before, 6 ft 6 in now',
    ])
  })

  test('says what is new and what was emptied', () => {
    expect(words(item({}), item({ infill: 'boards' }))).toEqual(['Infill: now boards'])
    expect(words(item({ infill: 'boards' }), item({ infill: '' }))).toEqual([
      'Infill: boards before, nothing now',
    ])
  })

  test('counts lines from one', () => {
    const before = item({ materials: [{ quantity: '1' }, { quantity: '2' }] })
    const after = item({ materials: [{ quantity: '1' }, { quantity: '3' }] })
    expect(words(before, after)).toEqual(['Cost line 2, quantity: 2 before, 3 now'])
  })

  test('gives figures with their units, and days in words', () => {
    const line = (quantity: string, unitPrice: string) =>
      item({ materials: [{ what: 'pipe', quantity, unit: 'bag', unitPrice }] })
    expect(words(line('1', '0.385'), line('3', '102.6'))).toEqual([
      'Cost line 1, quantity: 1 bag before, 3 bags now',
      'Cost line 1, unit price: 0.385 USD before, $102.60 now',
    ])
    const work = (hours: string, rate: string) => item({ labour: [{ hours, rate }] })
    expect(words(work('1', '25'), work('2.5', '26.5'))).toEqual([
      'Work line 1, hours: 1 hour before, 2.5 hours now',
      'Work line 1, rate: $25.00 an hour before, $26.50 an hour now',
    ])
    const parts = (a: string) => item({ share: { together: { principle: 'percent', a, b: '40' } } })
    expect(words(parts('60'), parts('50'))).toEqual([
      'Share, both together, household a: 60 percent before, 50 percent now',
    ])
    expect(words({ currency: 'JPY', caps: { b: '1500' } }, { currency: 'JPY', caps: { b: '900' } })).toEqual([
      'Caps, household b: ¥1,500 before, ¥900 now',
    ])
    expect(words({ on: '2027-05-01' }, { on: '2027-06-12' })).toEqual([
      'On: 1 May 2027 before, 12 June 2027 now',
    ])
  })

  test('shows as typed what reads the same', () => {
    const rate = (typed: string) => item({ labour: [{ rate: typed }] })
    expect(words(rate('25'), rate('25.00'))).toEqual(['Work line 1, rate: 25 before, 25.00 now'])
  })

  test('names what the take-off and the line say, and a word inside a thing by that thing', () => {
    const wind = { site: { wind: { exposure: 'B' } }, error: '2 in' }
    expect(words({}, { line: wind })).toEqual([
      'Line, the place, wind, what stands around: now houses or trees',
      'Line, line may lie elsewhere by: now 2 in',
    ])
    expect(words({}, [{ limit: '6 ft', measuredFrom: 'higher', saidBy: 'the permit counter' }])).toEqual([
      'Row 1, limit: now 6 ft',
      'Row 1, measured from: now whichever is higher',
      'Row 1, as said by: now the permit counter',
    ])
    const strip = { buildUp: { infill: [{ opening: '4 in' }], posts: { layout: 'equal' } }, opening: '4 ft' }
    expect(words(item({}), item(strip))).toEqual([
      'Build-up, infill 1, mesh opening: now 4 in',
      'Build-up, posts, bays: now equal',
      'Clear opening: now 4 ft',
    ])
    expect(words(item({}), item({ measured: [{ post: '2', at: '8 ft', why: 'rock' }] }))).toEqual([
      'Measured post 1, post number: now 2',
      'Measured post 1, stands at station: now 8 ft',
      'Measured post 1, why: now rock',
    ])
  })

  test('names principles and households in plain words', () => {
    const share = (materials: unknown) => item({ share: { materials } })
    const after = share({ principle: 'one', household: 'b' })
    expect(words(share({ principle: 'equal' }), after)).toEqual([
      'Share, materials, principle: halves before, one household now',
      'Share, materials, household: now household b',
    ])
  })

  test('calls the households by their names where they are known, and leaves what was typed', () => {
    const known = { currency: 'USD', names: { a: 'no. 12', b: 'no. 14' } }
    const named = (before: unknown, after: unknown) => differences(before, after, known).map(differenceWords)
    const share = (materials: unknown) => item({ share: { materials } })
    expect(
      named(share({ principle: 'one', household: 'a' }), share({ principle: 'one', household: 'b' })),
    ).toEqual(['Share, materials, household: no. 12 before, no. 14 now'])
    expect(named({ caps: { b: '1500' } }, { caps: { b: '900' } })).toEqual([
      'Caps, no. 14: $1,500.00 before, $900.00 now',
    ])
    expect(named({}, { share: { sourceA: 'a quote of household b' } })).toEqual([
      'Share, where the figure of no. 12 comes from: now a quote of household b',
    ])
    expect(labelOf(['line', 'stations', 0, 'gradeB'], known.names)).toBe('Line, station 1, ground of no. 14')
  })

  test('leaves words that somebody typed as they are, even where they are words of the format', () => {
    expect(words(item({ name: 'equal' }), item({ name: 'use' }))).toEqual(['Name: equal before, use now'])
  })

  test('says yes and no', () => {
    expect(words({ credit: false }, { credit: true })).toEqual(['Credit: no before, yes now'])
  })

  test('speaks of the currency only where it changed', () => {
    expect(words(item({ name: 'x' }), item({ name: 'x' }, 'EUR'))).toEqual(['Currency: USD before, EUR now'])
  })

  test('of a new item is all it holds, and of a removed one too', () => {
    expect(words(undefined, { on: '2027-01-01', text: 'The hazel stays.' })).toEqual([
      'On: now 1 January 2027',
      'Text: now The hazel stays.',
    ])
    expect(words({ text: 'x' }, null)).toEqual(['Text: x before, nothing now'])
  })

  test.each(['constructor', '__proto__', 'toString'])(
    'takes a key that every object has like any other: %s',
    (key) => {
      const data = JSON.parse(`{"${key}":"x"}`) as unknown
      expect(differences({}, data)).toMatchObject([{ before: '(nothing)', after: 'x' }])
    },
  )

  test('never stays silent about two texts that differ', () => {
    const pairs: [unknown, unknown][] = [
      [{ uses: { a: '5' } }, { uses: { a: '6' } }],
      [{ parties: [{ name: 'x' }] }, { parties: [{ name: 'y' }] }],
      [[{ topic: 'x' }], [{ topic: 'y' }]],
      [{ caps: { a: '1' } }, { caps: { b: '1' } }],
      [{ line: { stations: [{ gradeA: '1 in' }] } }, { line: { stations: [{ gradeB: '1 in' }] } }],
    ]
    for (const [before, after] of pairs) expect(words(before, after).length).toBeGreaterThan(0)
  })
})
