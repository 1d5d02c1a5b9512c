import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { countsSideBySide } from '../../../lib/core/shares/countsSideBySide.ts'
import { afterCount, afterTaking, sameCount, sharedUses } from '../../../lib/core/shares/passages.ts'
import { itemSideBySide } from '../../../lib/core/shares/sideBySide.ts'
import { bought, faultsWith, notebookWith, sectionOf, statementWith } from '../madeNotebook.ts'

const unsaid = { a: '', b: '' }
const five = { a: '5', b: '9' }
const six = { a: '6', b: '6' }
const use = { principle: 'use' }

function gateWith(more: Record<string, unknown>, price = '140'): Record<string, unknown> {
  return { ...sectionOf(price, use, 'g1'), ...more }
}

describe('a gate shared by use while its passages are counted', () => {
  test.each<[string, Record<string, unknown>]>([
    ['nobody has counted to the end', { passages: {} }],
    ['two counts differ', { passages: { a: five, b: six, takes: { a: 'a' } } }],
    ['an older count stands beside them', { uses: five, passages: {} }],
  ])('asks each for half: %s', (_what, more) => {
    const { asked } = statementWith({ gates: [gateWith(more)] })
    expect([asked.a, asked.b]).toEqual([7000n, 7000n])
  })

  test('can be shared by use although no count stands', () => {
    const gate = { ...gateWith({ passages: {} }), share: { together: { principle: 'equal' } } }
    const ways = itemSideBySide(notebookWith({ gates: [gate] }), 'g1')?.ways ?? []
    const byUse = ways.find(({ way }) => way === 'use')
    expect([byUse?.shares.a, byUse?.shares.b]).toEqual([7000n, 7000n])
  })

  test('is refused as before where nobody counts and no count stands', () => {
    expect(faultsWith({ gates: [gateWith({})] })).toEqual([
      { path: 'gates[0].share.materials', kind: 'weights-zero', principle: 'use' },
    ])
  })
})

describe('what a gate says after a count', () => {
  const before = { uses: unsaid }

  test('the first count opens the counting and tells nothing of itself', () => {
    expect(afterCount(before, { b: five })).toEqual({ uses: unsaid, passages: { takes: {} } })
  })

  test('a second count that is the same settles it', () => {
    expect(afterCount(before, { a: five, b: { a: '5.0', b: '9' } })).toEqual({ uses: five })
  })

  test('a second count that differs stands beside the first', () => {
    expect(afterCount(before, { a: five, b: six })).toEqual({
      uses: unsaid,
      passages: { a: five, b: six, takes: {} },
    })
  })

  test('a count that stands goes on until both have counted again', () => {
    const settled = { uses: five }
    expect(afterCount(settled, { a: six })).toBe(settled)
    expect(afterCount(settled, { a: six, b: six })).toEqual({ uses: six })
  })

  test('a new round that one household began leaves two older counts as they are', () => {
    const apart = { uses: unsaid, passages: { a: five, b: six, takes: { a: 'a' as const } } }
    expect(afterCount(apart, { a: six })).toBe(apart)
  })

  test('two counts are the same where their numbers are, whatever their digits', () => {
    const figure = fc.integer({ min: 0, max: 999 })
    fc.assert(
      fc.property(figure, figure, figure, figure, (a, b, c, d) => {
        const one = { a: `${a}`, b: `${b}` }
        const other = { a: `${c}.00`, b: `${d}.0` }
        expect(sameCount(one, other)).toBe(a === c && b === d)
      }),
    )
  })
})

describe('taking a count', () => {
  const apart = { uses: unsaid, passages: { a: five, b: six, takes: {} } }

  test('by one household alone is noted and settles nothing', () => {
    expect(afterTaking(apart, 'b', 'a')).toEqual({
      uses: unsaid,
      passages: { a: five, b: six, takes: { b: 'a' } },
    })
  })

  test.each(['a', 'b'] as const)('by both settles that count: that of %s', (count) => {
    const once = afterTaking(apart, 'a', count) ?? apart
    expect(afterTaking(once, 'b', count)).toEqual({ uses: apart.passages[count] })
  })

  test('each its own, or each the other’s, settles nothing', () => {
    const own = afterTaking(afterTaking(apart, 'a', 'a') ?? apart, 'b', 'b')
    const other = afterTaking(afterTaking(apart, 'a', 'b') ?? apart, 'b', 'a')
    expect(own?.passages?.takes).toEqual({ a: 'a', b: 'b' })
    expect(other?.passages?.takes).toEqual({ a: 'b', b: 'a' })
  })

  test('is not possible where no two counts stand', () => {
    expect(afterTaking({ uses: five }, 'a', 'a')).toBeUndefined()
    expect(afterTaking({ uses: unsaid, passages: { takes: {} } }, 'a', 'a')).toBeUndefined()
  })
})

test('only a gate has passages to share by, and they rest while they are counted', () => {
  const { sections, gates } = notebookWith({
    sections: [sectionOf('1', { principle: 'equal' })],
    gates: [gateWith({ uses: five }), { ...gateWith({ uses: five, passages: {} }), id: 'g2' }],
  })
  expect(sharedUses(sections[0])).toBeUndefined()
  expect(gates.map(sharedUses)).toEqual([five, { ...unsaid, apart: true }])
})

describe('two counts side by side', () => {
  const apart = { passages: { a: five, b: six } }

  test('say what each would ask, what is asked meanwhile, and how far apart they are', () => {
    const found = countsSideBySide(notebookWith({ gates: [gateWith(apart)] }), 'g1')
    // By hand: 140.00 · 5/14 = 50.00; 140.00 · 6/12 = 70.00; halves are 70.00.
    expect(found?.under.a).toMatchObject({ ok: true, value: { a: 5000n, b: 9000n } })
    expect(found?.under.b).toMatchObject({ ok: true, value: { a: 7000n, b: 7000n } })
    expect(found?.now).toMatchObject({ ok: true, value: { a: 7000n, b: 7000n } })
    expect([found?.apart, found?.byUse]).toEqual([2000n, true])
  })

  test('are shown as if the gate went by use where it does not', () => {
    const gate = { ...gateWith(apart), share: { together: { principle: 'one', household: 'a' } } }
    const found = countsSideBySide(notebookWith({ gates: [gate] }), 'g1')
    expect([found?.apart, found?.byUse]).toEqual([2000n, false])
  })

  test('have no distance where one of them counts nobody', () => {
    const nobody = { passages: { a: five, b: { a: '0', b: '0' } } }
    const found = countsSideBySide(notebookWith({ gates: [gateWith(nobody)] }), 'g1')
    expect(found?.apart).toBeUndefined()
    expect(found?.under.b.ok).toBe(false)
  })

  test('a use inside pay the difference counts as by use', () => {
    const difference = {
      principle: 'difference',
      basic: '40',
      basicShare: { principle: 'equal' },
      upgradeShare: use,
    }
    const gate = {
      ...apart,
      id: 'g1',
      materials: [bought('140')],
      share: { materials: difference, labour: use },
    }
    const found = countsSideBySide(notebookWith({ gates: [gate] }), 'g1')
    // 20.00 of the basic 40.00 each; then 100.00 · 5/14 = 35.714…, against 50.00.
    expect([found?.byUse, found?.apart]).toEqual([true, 1429n])
  })

  test('are nothing where they do not stand, or where there is no such gate', () => {
    expect(countsSideBySide(notebookWith({ gates: [gateWith({ uses: five })] }), 'g1')).toBeUndefined()
    expect(countsSideBySide(notebookWith({ gates: [gateWith(apart)] }), 'g2')).toBeUndefined()
  })
})
