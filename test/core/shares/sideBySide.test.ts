import { describe, expect, test } from 'vitest'
import type { Way } from '../../../lib/core/shares/shareUnder.ts'
import { itemSideBySide, wholeSideBySide } from '../../../lib/core/shares/sideBySide.ts'
import { bought, notebookWith, sectionOf } from '../madeNotebook.ts'

const equal = { principle: 'equal' }
const lengths = { principle: 'length', a: '2 ft', b: '1 ft' }
const work = { task: 'dig', hours: '3', rate: '10', by: 'a' }

/** What each usable way asks of a and b in cents, and the ways that can't be used with their reasons. */
function found(parts: Record<string, unknown>, id = 's1') {
  const item = itemSideBySide(notebookWith(parts), id)
  if (item === undefined) throw new Error('there is such an item')
  return {
    ...item,
    asks: Object.fromEntries(item.ways.map(({ way, shares }) => [way, [Number(shares.a), Number(shares.b)]])),
    not: Object.fromEntries(item.unusable.map(({ way, because }) => [way, because])),
    now: item.ways.filter(({ chosen }) => chosen).map(({ way }) => way),
  }
}

describe('the ways to share one item', () => {
  test('worked by hand: $100.01 of wire by lengths 2 to 1, $30.00 of labour halved', () => {
    const section = { ...sectionOf('100.01', lengths), labour: [work] }
    const { asks, not, now, range, total } = found({ sections: [section] })
    expect(total).toBe(13_001n)
    expect(asks).toEqual({
      // 10001 ÷ 2 = 5000 1/2 each; the odd cent to a, since nobody was asked for anything yet. Labour 1500 each.
      equal: [6501, 6500],
      // 10001 × 2/3 = 6667 1/3, and 3333 2/3 for b, who has more cut off: 6667 and 3334. Labour 2000 and 1000.
      length: [8667, 4334],
      'one-a': [13_001, 0],
      'one-b': [0, 13_001],
    })
    expect(not).toEqual({
      percent: 'no figures',
      use: 'no gate',
      benefit: 'no figures',
      saving: 'no figures',
      difference: 'no figures',
    })
    expect(now).toEqual([])
    // As chosen now: 6667 + 1500 and 3334 + 1500.
    expect(item(range)).toEqual({ low: [6501, 6500], high: [8667, 4334], middle: [7584, 5417] })
  })

  test('worked by hand: an odd cent in the middle goes to the household asked for less before the item', () => {
    const before = { ...sectionOf('10', { principle: 'one', household: 'a' }), id: 's0' }
    const { asks, range, askedBefore } = found({
      sections: [before, sectionOf('1.00', { principle: 'percent', a: '33', b: '67' })],
    })
    expect(askedBefore.money).toEqual({ a: 1000n, b: 0n })
    expect(asks).toMatchObject({ equal: [50, 50], percent: [33, 67] })
    // (33 + 50) ÷ 2 = 41 1/2 and 58 1/2: a was asked for 1000 before, b for nothing.
    expect(item(range)).toEqual({ low: [33, 67], high: [50, 50], middle: [41, 59] })
    expect(range?.middle.odd).toEqual({ to: 'b', because: 'asked for less so far' })
  })

  test('amounts of money belong to the pot they were given for, and the other pot stays as it is chosen', () => {
    const difference = {
      principle: 'difference',
      basic: '60',
      basicShare: equal,
      upgradeShare: { principle: 'one', household: 'b' },
    }
    const section = { ...sectionOf('100', difference), labour: [work] }
    const { ways, asks, now } = found({ sections: [section] })
    expect(ways.find(({ way }) => way === 'difference')?.stays).toBe('labour')
    expect(asks.difference).toEqual([3000 + 1500, 7000 + 1500])
    expect(now).toEqual(['difference'])
  })

  test('lengths inside a basic share serve the whole pot', () => {
    const share = { principle: 'difference', basic: '60', basicShare: lengths, upgradeShare: equal }
    expect(found({ sections: [sectionOf('90', share)] }).asks.length).toEqual([6000, 3000])
  })

  test.each<[string, Record<string, unknown>, Way, string]>([
    ['a gate without passages', { uses: { a: '0', b: '0' } }, 'use', 'no passages'],
    ['a gate whose passages nobody counted', {}, 'use', 'no passages'],
  ])('%s', (_what, more, way, because) => {
    const gate = { ...sectionOf('90', equal, 'g1'), ...more }
    expect(found({ gates: [gate] }, 'g1').not).toMatchObject({ [way]: because })
  })

  test('a way whose figures don’t hold is named with its faults, and the rest can still be used', () => {
    const saving = { principle: 'saving', aloneA: '10', aloneB: '20' }
    const { chosen, unusable, asks } = found({ sections: [sectionOf('90', saving)] })
    expect(chosen.ok).toBe(false)
    expect(unusable.find(({ way }) => way === 'saving')).toMatchObject({
      because: 'faults',
      faults: [{ kind: 'saving-dearer', over: '60.00' }],
    })
    expect(asks.equal).toEqual([4500, 4500])
  })

  test('an item that is not there has no ways', () => {
    expect(itemSideBySide(notebookWith(), 's1')).toBeUndefined()
  })
})

describe('the ways to share the whole fence', () => {
  test('items that can follow a way do, the others stay as chosen, and caps come last', () => {
    const sections = [
      sectionOf('90', lengths, 's1'),
      {
        id: 's2',
        materials: [bought('50')],
        share: { materials: { principle: 'one', household: 'b' }, labour: equal },
      },
    ]
    const whole = wholeSideBySide(notebookWith({ sections, caps: { b: '70' } }))
    if (!whole.ok) throw new Error('the whole can be shared')
    const { ways, chosen, unusable, range, total } = whole.value
    expect(total).toBe(14_000n)
    expect(
      Object.fromEntries(
        ways.map(({ way, asked, follow }) => [way, [Number(asked.a), Number(asked.b), follow]]),
      ),
    ).toEqual({
      equal: [7000, 7000, 2],
      // 60 and 30 by length; 0 and 50 as chosen: b would be asked for 80, its cap moves 10.
      length: [7000, 7000, 1],
      'one-a': [14_000, 0, 2],
      'one-b': [7000, 7000, 2],
    })
    expect(ways.find(({ way }) => way === 'length')).toMatchObject({
      beforeCaps: { a: 6000n, b: 8000n },
      // All items stand as they would under it, but one of them doesn't follow it.
      chosen: false,
    })
    expect(unusable).toEqual(['percent', 'use', 'benefit', 'saving', 'difference'])
    expect(chosen.asked).toMatchObject({ a: 7000n, b: 7000n })
    expect(item(range)).toEqual({ low: [7000, 7000], high: [7000, 7000], middle: [7000, 7000] })
  })

  test('a fence that can’t be shared as it stands is refused with its faults', () => {
    const sections = [sectionOf('90', { principle: 'length', a: '0 ft', b: '0 ft' })]
    expect(wholeSideBySide(notebookWith({ sections }))).toMatchObject({
      ok: false,
      faults: [{ kind: 'weights-zero' }],
    })
  })
})

function item(range: ReturnType<typeof found>['range']) {
  const cents = (one?: { a: bigint; b: bigint }) => (one ? [Number(one.a), Number(one.b)] : undefined)
  return { low: cents(range?.low), high: cents(range?.high), middle: cents(range?.middle) }
}
