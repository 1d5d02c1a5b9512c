import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { applyTried, type TryingWith, triedItems } from '../../../lib/core/trying/applyTried.ts'
import { nothingTried, plannedText, sameInput, type TriedEdit } from '../../../lib/core/trying/tried.ts'
import { shareAmounts } from '../../../lib/core/trying/triedShare.ts'
import { readTried } from '../../../lib/forms/triedDraft.ts'
import { shareAmountName } from '../../../lib/words/tryText.ts'
import { bought, notebookWith } from '../madeNotebook.ts'

const using: TryingWith = { sections: new Map(), gates: new Map(), nameOf: ({ kind }) => kind }
const difference = {
  principle: 'difference',
  basic: '100.00',
  basicShare: { principle: 'equal' },
  upgradeShare: { principle: 'equal' },
  upgrades: [
    { what: 'one foot more', amount: '40.00', household: 'b' },
    { what: 'slats', amount: '20.00', household: 'a' },
  ],
}
const saving = { principle: 'saving', aloneA: '80.00', aloneB: '60.00' }
/** Materials of 200.00: 100.00 by halves, 40.00 of b, 20.00 of a, the last 40.00 by halves: 90.00 and 110.00. */
const plan = notebookWith({
  sections: [
    {
      id: 's1',
      materials: [bought('200')],
      share: { materials: difference, labour: { principle: 'equal' } },
    },
    { id: 's2', materials: [bought('100')], share: { together: saving } },
    { id: 's3', materials: [bought('10')], share: { together: { principle: 'equal' } } },
  ],
})

const tryIt = (...edits: TriedEdit[]) => applyTried(plan, { ...nothingTried, edits }, using)
function askedOf(notebook: typeof plan, id: string) {
  const statement = statementOf(notebook)
  if (!statement.ok) throw new Error('it can be shared')
  const item = statement.value.items.find((one) => one.id === id)
  return item && [item.a, item.b]
}
const upgrade = (line: number, text: string): TriedEdit => ({
  item: 's1',
  field: 'upgrade',
  pot: 'materials',
  line,
  text,
})

describe('amounts of a share', () => {
  test('are the basic fence, each named upgrade, and what each would pay alone', () => {
    const [first, second, third] = plan.sections
    const told = (section: typeof first) =>
      section &&
      shareAmounts(section.share).map((one) => [shareAmountName(one, { a: 'no. 12', b: 'no. 14' }), one.text])
    expect(told(first)).toEqual([
      ['Cost of the basic fence', '100.00'],
      ['“one foot more”, asked of no. 14', '40.00'],
      ['“slats”, asked of no. 12', '20.00'],
    ])
    expect(told(second)).toEqual([
      ['No. 12 building alone', '80.00'],
      ['No. 14 building alone', '60.00'],
    ])
    expect(told(third)).toEqual([])
  })

  test('move what is asked when they are tried, and nothing in the plan', () => {
    expect(askedOf(plan, 's1')).toEqual([90_00n, 110_00n])
    // 60.00 of b instead of 40.00; 20.00 of the rest is left to halve: 50 + 20 + 10 and 50 + 60 + 10.
    const tried = tryIt(upgrade(0, '60.00'))
    expect(askedOf(tried, 's1')).toEqual([80_00n, 120_00n])
    expect(triedItems(plan, tried)).toEqual(['s1'])
    expect(askedOf(plan, 's1')).toEqual([90_00n, 110_00n])
    // A basic fence of 160.00, 80.00 each, leaves 40.00 for the first upgrade.
    const basic = tryIt({ item: 's1', field: 'basic', pot: 'materials', line: 0, text: '160.00' })
    expect(askedOf(basic, 's1')).toEqual([80_00n, 120_00n])
    // (100 + 90 − 60) ÷ 2 = 65.
    const alone = tryIt({ item: 's2', field: 'aloneA', pot: 'together', line: 0, text: '90.00' })
    expect(askedOf(alone, 's2')).toEqual([65_00n, 35_00n])
  })

  test('that do not hold, or have no place in the share, are left out', () => {
    const wrong: TriedEdit[] = [
      upgrade(0, 'more'),
      upgrade(0, '1.234'),
      upgrade(7, '10.00'),
      { ...upgrade(0, '10.00'), pot: 'labour' } as TriedEdit,
      { item: 's3', field: 'basic', pot: 'together', line: 0, text: '5.00' },
      { item: 's2', field: 'upgrade', pot: 'together', line: 0, text: '5.00' },
    ]
    for (const edit of wrong) expect(triedItems(plan, tryIt(edit))).toEqual([])
  })

  test('are told apart by their pot and their place, and known by what the plan says of them', () => {
    expect(sameInput(upgrade(0, '1'), upgrade(0, '2'))).toBe(true)
    expect(sameInput(upgrade(0, '1'), upgrade(1, '1'))).toBe(false)
    expect(sameInput(upgrade(0, '1'), { ...upgrade(0, '1'), pot: 'labour' } as TriedEdit)).toBe(false)
    expect(plannedText(plan, upgrade(1, ''))).toBe('20.00')
    expect(plannedText(plan, upgrade(2, ''))).toBeUndefined()
  })

  test('come from a browser as they are, and not with a pot that is none', () => {
    const moves = { prices: '', hours: '', rates: '' }
    expect(readTried({ edits: [upgrade(0, '60')], moves })?.edits).toEqual([upgrade(0, '60')])
    expect(readTried({ edits: [{ ...upgrade(0, '60'), pot: 'both' }], moves })).toBeUndefined()
  })

  test('never change what the item costs, whatever they are', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), fc.integer({ min: 0, max: 1 }), (cents, line) => {
        const text = `${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')}`
        const [a = 0n, b = 0n] = askedOf(tryIt(upgrade(line, text)), 's1') ?? []
        expect(a + b).toBe(200_00n)
      }),
    )
  })
})
