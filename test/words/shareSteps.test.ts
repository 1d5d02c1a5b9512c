import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { placesOf } from '../../lib/core/shares/itemShares.ts'
import { askedBeforeItem } from '../../lib/core/shares/sideBySide.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { moneyWords } from '../../lib/words/money.ts'
import { itemSteps, type StepGroup, wholeSteps } from '../../lib/words/shareSteps.ts'
import { shareNames } from '../../lib/words/shareText.ts'
import { bought, notebookWith, statementWith } from '../core/madeNotebook.ts'
import { randomNotebook, readMade } from '../core/randomNotebook.ts'
import { readingGrade } from './readingGrade.ts'

const equal = { principle: 'equal' }

/** The steps of an item of a notebook made of these parts. */
function steps(parts: Record<string, unknown>, id: string): readonly StepGroup[] {
  const notebook = notebookWith(parts)
  const place = placesOf(notebook).find(({ item }) => item.id === id)
  const shares = statementWith(parts).items.find((item) => item.id === id)
  if (place === undefined || shares === undefined) throw new Error('there is such an item')
  const names = shareNames(notebook, 'uses' in place.item ? place.item.uses : undefined)
  return itemSteps(place.item, shares, names, askedBeforeItem(notebook, id))
}

const grouped = (groups: readonly StepGroup[]) => groups.map(({ heading, steps }) => [heading, ...steps])

const aDitch = {
  id: 's1',
  materials: [
    { what: 'mesh', quantity: '3.5', unitPrice: '11.11', taxPercent: '7.5', suppliedBy: 'bought' },
    { what: 'posts', quantity: '4', unitPrice: '15.05', suppliedBy: 'a' },
    { what: 'old mesh', quantity: '1', unitPrice: '2', suppliedBy: 'bought', credit: true },
    { what: 'stain', quantity: '1', suppliedBy: 'bought' },
  ],
  labour: [
    { task: 'dig', hours: '3', rate: '10.01', by: 'a' },
    { task: 'tea', hours: '1', by: 'b', counts: false },
  ],
  share: { materials: { principle: 'length', a: '60 ft', b: '30 ft' }, labour: equal },
}

describe('the steps of an item, worked by hand', () => {
  test('lines with tax and a credit, a share by length, and halves of an odd pot', () => {
    expect(grouped(steps({ sections: [aDitch] }, 's1'))).toEqual([
      [
        'Materials',
        // 3.5 × 11.11 = 38.885; a tax of 7.5 percent makes it 41.801375.
        'mesh: 3.5 × $11.11, and 7.5 percent tax on top = 41.801375, rounded to $41.80.',
        'posts: 4 × $15.05 = $60.20.',
        'old mesh: 1 × $2.00 = $2.00. It is a credit, so it is taken off.',
        'stain: not priced yet, so it counts as nothing.',
        'Materials in all: $41.80 + $60.20 − $2.00 + $0.00 = $100.00.',
      ],
      [
        'Work',
        'dig: 3 hours × $10.01 = $30.03.',
        'tea: 1 hour given freely, in no sum.',
        'Work in all: $30.03.',
      ],
      [
        'Sharing the materials',
        'By length: 60 ft for no. 12 and 30 ft for no. 14.',
        'The part of no. 12 is 60 ft ÷ (60 ft + 30 ft) = 2/3.',
        // 10000 × 2/3 = 6666 2/3 cents.
        '$100.00 × 2/3 = $66.66 and 2/3 of $0.01 for no. 12. The rest is $33.33 and 1/3 of $0.01 for no. 14.',
        'Both are cut down to whole units of $0.01: $66.66 and $33.33. One $0.01 is left over.',
        'It goes to no. 12, who had more cut off: 2/3 of a unit against 1/3.',
        'no. 12: $66.67. no. 14: $33.33.',
      ],
      [
        'Sharing the work',
        'Halves: $30.03 ÷ 2 = $15.01 and 1/2 of $0.01 for each.',
        'Both are cut down to whole units of $0.01: $15.01 and $15.01. One $0.01 is left over.',
        'It goes to no. 14, since both had as much cut off, and up to here it was asked for less: $33.33 against $66.67.',
        'no. 12: $15.01. no. 14: $15.02.',
      ],
      ['The item in all', 'no. 12: $66.67 + $15.01 = $81.68.', 'no. 14: $33.33 + $15.02 = $48.35.'],
      [
        'Hours',
        'The hours follow the same shares. The part of no. 12 is 1/2.',
        '3.00 hours × 1/2, to the nearest hundredth: 1.50 for no. 12. The rest is 1.50 for no. 14. A tie goes to whoever has fewer hours up to here.',
      ],
    ])
  })

  test('one pot of both under the difference, with a saving and parts inside', () => {
    const together = {
      principle: 'difference',
      basic: '70.01',
      basicShare: { principle: 'saving', aloneA: '50', aloneB: '40' },
      upgradeShare: { principle: 'percent', a: '25', b: '75' },
    }
    const section = { id: 's1', materials: [bought('90')], share: { together } }
    expect(grouped(steps({ sections: [section] }, 's1')).at(-1)).toEqual([
      'Sharing both together',
      'Materials and work are one pot: $90.00 + $0.00 = $90.00.',
      'Pay the difference: of $90.00, the basic fence takes $70.01. Above it lies $19.99.',
      'The basic fence. Share the saving: alone, no. 12 would pay $50.00 and no. 14 $40.00. Together it is $70.01.',
      'The basic fence. The saving is $50.00 + $40.00 − $70.01 = $19.99. Each keeps half of it.',
      // (7001 + 5000 − 4000) ÷ 2 = 4000 1/2 and (7001 + 4000 − 5000) ÷ 2 = 3000 1/2.
      'The basic fence. no. 12: ($70.01 + $50.00 − $40.00) ÷ 2 = $40.00 and 1/2 of $0.01.',
      'The basic fence. no. 14: ($70.01 + $40.00 − $50.00) ÷ 2 = $30.00 and 1/2 of $0.01.',
      'The basic fence. Both are cut down to whole units of $0.01: $40.00 and $30.00. One $0.01 is left over.',
      'The basic fence. It goes to no. 12, the first household: both had as much cut off, and up to here both were asked for $0.00.',
      'The basic fence. no. 12: $40.01. no. 14: $30.00.',
      'Above it. Agreed parts: 25 percent for no. 12, 75 percent for no. 14.',
      // 1999 × 25/100 = 499 3/4 and 1499 1/4.
      'Above it. $19.99 × 25 ÷ 100 = $4.99 and 3/4 of $0.01 for no. 12. The rest is $14.99 and 1/4 of $0.01 for no. 14.',
      'Above it. Both are cut down to whole units of $0.01: $4.99 and $14.99. One $0.01 is left over.',
      'Above it. It goes to no. 12, who had more cut off: 3/4 of a unit against 1/4.',
      'Above it. no. 12: $5.00. no. 14: $14.99.',
      'no. 12: $40.01 + $5.00 = $45.01.',
      'no. 14: $30.00 + $14.99 = $44.99.',
    ])
  })

  test('several upgrades, each taken off what is left, down to the odd cent', () => {
    const materials = {
      principle: 'difference',
      basic: '900',
      basicShare: equal,
      upgradeShare: equal,
      upgrades: [
        { what: 'one foot more', amount: '200', household: 'b' },
        { what: '', amount: '150', household: 'a' },
        { what: 'strips', amount: '80', household: 'a' },
      ],
    }
    const shared = (price: string) =>
      grouped(
        steps(
          { sections: [{ id: 's1', materials: [bought(price)], share: { materials, labour: equal } }] },
          's1',
        ),
      )[2]
    expect(shared('1412.35')).toEqual([
      'Sharing the materials',
      'Pay the difference: of $1,412.35, the basic fence takes $900.00. Above it lies $512.35.',
      'The basic fence. Halves: $900.00 ÷ 2 = $450.00 for each.',
      'The basic fence. no. 12: $450.00. no. 14: $450.00.',
      '“one foot more” is put at $200.00: $512.35 − $200.00 = $312.35 is left.',
      '“one foot more”. One household: all of $200.00 is asked of no. 14.',
      '“one foot more”. no. 12: $0.00. no. 14: $200.00.',
      'An upgrade without a name is put at $150.00: $312.35 − $150.00 = $162.35 is left.',
      'An upgrade without a name. One household: all of $150.00 is asked of no. 12.',
      'An upgrade without a name. no. 12: $150.00. no. 14: $0.00.',
      '“strips” is put at $80.00: $162.35 − $80.00 = $82.35 is left.',
      '“strips”. One household: all of $80.00 is asked of no. 12.',
      '“strips”. no. 12: $80.00. no. 14: $0.00.',
      'What is left. Halves: $82.35 ÷ 2 = $41.17 and 1/2 of $0.01 for each.',
      'What is left. Both are cut down to whole units of $0.01: $41.17 and $41.17. One $0.01 is left over.',
      // a was asked for 450 + 150 + 80 = 680, b for 450 + 200 = 650.
      'What is left. It goes to no. 14, since both had as much cut off, and up to here it was asked for less: $650.00 against $680.00.',
      'What is left. no. 12: $41.17. no. 14: $41.18.',
      'no. 12: $450.00 + $0.00 + $150.00 + $80.00 + $41.17 = $721.17.',
      'no. 14: $450.00 + $200.00 + $0.00 + $0.00 + $41.18 = $691.18.',
    ])
    expect(shared('1150')?.slice(4)).toEqual([
      '“one foot more” is put at $200.00: $250.00 − $200.00 = $50.00 is left.',
      '“one foot more”. One household: all of $200.00 is asked of no. 14.',
      '“one foot more”. no. 12: $0.00. no. 14: $200.00.',
      'An upgrade without a name is put at $150.00, but only $50.00 is left: it takes that. Nothing is left.',
      'An upgrade without a name. One household: all of $50.00 is asked of no. 12.',
      'An upgrade without a name. no. 12: $50.00. no. 14: $0.00.',
      '“strips” is put at $80.00. Nothing is left to ask for.',
      'What is left. There is nothing here to share, so nobody is asked for anything.',
      'no. 12: $450.00 + $0.00 + $50.00 + $0.00 + $0.00 = $500.00.',
      'no. 14: $450.00 + $200.00 + $0.00 + $0.00 + $0.00 = $650.00.',
    ])
  })

  test('a gate by use, and a pot with nothing in it', () => {
    const use = { principle: 'use' }
    const gate = {
      id: 'g1',
      uses: { a: '5', b: '15' },
      materials: [bought('10')],
      share: { materials: use, labour: use },
    }
    const groups = grouped(steps({ gates: [gate] }, 'g1'))
    expect(groups[2]).toEqual([
      'Sharing the materials',
      'By use, passages a week: 5 for no. 12 and 15 for no. 14.',
      'The part of no. 12 is 5 ÷ (5 + 15) = 1/4.',
      '$10.00 × 1/4 = $2.50 for no. 12. The rest is $7.50 for no. 14.',
      'no. 12: $2.50. no. 14: $7.50.',
    ])
    expect(groups[1]).toEqual(['Work', 'Work: no line that costs money, so $0.00.'])
    expect(groups[3]).toEqual([
      'Sharing the work',
      'There is nothing here to share, so nobody is asked for anything.',
    ])
  })
})

test('the steps of the whole fence end with what the caps leave', () => {
  const parts = {
    sections: [{ id: 's1', materials: [bought('100')], share: { together: equal } }],
    caps: { b: '40' },
  }
  const notebook = notebookWith(parts)
  expect(grouped(wholeSteps(statementWith(parts), ['Lane'], shareNames(notebook)))).toEqual([
    [
      'The whole fence',
      'Lane asks for $50.00 of no. 12, $50.00 of no. 14.',
      'All items together ask for $50.00 of no. 12, $50.00 of no. 14. That is $100.00 in all.',
      'The cap of no. 14 moves $10.00 to no. 12.',
      'After caps, the fence asks for $60.00 of no. 12, $40.00 of no. 14.',
    ],
  ])
})

test('on any notebook the steps lead to the statement’s own figures', () => {
  fc.assert(
    fc.property(randomNotebook, (document) => {
      const notebook = readMade(document)
      const statement = statementOf(notebook)
      if (!statement.ok) throw new Error('a made notebook is refused')
      for (const { item } of placesOf(notebook)) {
        const shares = statement.value.items.find((one) => one.id === item.id)
        if (shares === undefined) throw new Error('every item is shared')
        const names = shareNames(notebook, 'uses' in item ? item.uses : undefined)
        const groups = itemSteps(item, shares, names, askedBeforeItem(notebook, item.id))
        const said = groups.flatMap((group) => group.steps).join('\n')
        for (const amount of [shares.materialsTotal, shares.labourTotal, shares.a, shares.b])
          expect(said).toContain(moneyWords(amount, notebook.currency))
        const { pots } = shares
        const parts = (pots.form === 'together' ? [pots.together] : [pots.materials, pots.labour]).flatMap(
          (pot) => pot.parts,
        )
        expect(said.split('is left over.').length - 1).toBe(parts.filter(({ odd }) => odd).length)
      }
    }),
    { numRuns: 100 },
  )
})

test('the steps are plain to read', () => {
  const said = steps({ sections: [aDitch] }, 's1').flatMap((group) => group.steps)
  expect(readingGrade(said.join('\n'))).toBeLessThanOrEqual(8)
})
