import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type AboveChoice,
  basicFenceSums,
  type HeldPots,
  heldAgainst,
  heldPots,
  heldPotsOf,
} from '../../../lib/core/shares/basicFence.ts'
import { sumLines } from '../../../lib/core/shares/itemShares.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { halves, notebookWith, statementWith } from '../madeNotebook.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'

const equal = { principle: 'equal' }
const wire = {
  materials: [
    // 12 × 20.05 = 240.60; 3 × 1.115 = 3.345, rounded to 3.35; less 10.00.
    { what: 'posts and wire', quantity: '12', unitPrice: '20.05', suppliedBy: 'bought' },
    { what: 'staples', quantity: '3', unitPrice: '1.115', suppliedBy: 'a' },
    { what: 'old wire', quantity: '1', unitPrice: '10', suppliedBy: 'bought', credit: true },
    { what: 'not priced', quantity: '4', suppliedBy: 'bought' },
  ],
  labour: [
    { task: 'set posts', hours: '8', rate: '25', by: 'a' },
    { task: 'tea', hours: '2', rate: '25', by: 'b', counts: false },
  ],
}

/** A section with this basic fence and this share, read as a file is. */
function sectionWith(share: unknown = halves, basicFence: unknown = wire) {
  const section = notebookWith({ sections: [{ id: 's1', share, basicFence }] }).sections[0]
  if (section?.basicFence === undefined) throw new Error('the section has a basic fence')
  return { ...section, basicFence: section.basicFence }
}

function held(pots: HeldPots, above: AboveChoice, share?: unknown, basicFence?: unknown) {
  const section = sectionWith(share, basicFence)
  return heldAgainst(section.share, pots, above, basicFenceSums(section.basicFence, 2), 2)
}

describe('the sums of a basic fence', () => {
  test('each line rounded once, credits taken off, gifts and lines without a price in no sum', () => {
    expect(basicFenceSums(sectionWith().basicFence, 2)).toEqual({
      materials: 23395n,
      labour: 20000n,
      both: 43395n,
    })
  })

  test('are those that the same lines have as an item', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        for (const item of readMade(document).sections) {
          const { materials, labour } = sumLines(item, 2)
          expect(basicFenceSums(item, 2)).toEqual({ materials, labour, both: materials + labour })
        }
      }),
      { numRuns: 50 },
    )
  })

  test('are in no sum of the statement', () => {
    const lines = { materials: [{ what: 'boards', quantity: '1', unitPrice: '900', suppliedBy: 'bought' }] }
    const plain = { id: 's1', share: halves, ...lines }
    expect(statementWith({ sections: [{ ...plain, basicFence: wire }] })).toEqual(
      statementWith({ sections: [plain] }),
    )
  })
})

const difference = (basic: string, upgradeShare: unknown, more: object = {}) => ({
  principle: 'difference',
  basic,
  basicShare: equal,
  upgradeShare,
  upgrades: [],
  ...more,
})
const ofA = { principle: 'one', household: 'a' }
const strips = { what: 'strips', amount: '50', household: 'b' }

describe('a share that is held against the basic fence', () => {
  test.each<[HeldPots, unknown]>([
    ['apart', { materials: difference('233.95', ofA), labour: difference('200.00', ofA) }],
    ['together', { together: difference('433.95', ofA) }],
    ['materials', { materials: difference('233.95', ofA), labour: equal }],
    ['labour', { materials: equal, labour: difference('200.00', ofA) }],
  ])('%s takes the sums that belong to it', (pots, share) => {
    expect(held(pots, 'a')).toEqual({ share })
  })

  test('goes on sharing the basic fence as the pot was shared, but by halves after a saving of the whole', () => {
    const parts = { principle: 'percent', a: '60', b: '40' }
    const saving = { principle: 'saving', aloneA: '500', aloneB: '500' }
    expect(held('apart', 'halves', { materials: parts, labour: saving })).toEqual({
      share: {
        materials: difference('233.95', equal, { basicShare: parts }),
        labour: difference('200.00', equal),
      },
    })
  })

  test('keeps upgrades and who is asked above, and takes the new sum', () => {
    const materials = difference('1', ofA, { basicShare: ofA, upgrades: [strips] })
    expect(held('materials', 'as it stands', { materials, labour: equal })).toEqual({
      share: { materials: { ...materials, basic: '233.95' }, labour: equal },
    })
  })

  test('of two pots that become one has the upgrades of both, materials first', () => {
    const height = { what: 'height', amount: '20', household: 'a' }
    const share = {
      materials: difference('1', equal, { upgrades: [strips] }),
      labour: difference('1', ofA, { upgrades: [height] }),
    }
    expect(held('together', 'as it stands', share)).toEqual({
      share: { together: difference('433.95', equal, { upgrades: [strips, height] }) },
    })
  })

  test('of one pot that becomes two leaves the pot that is not held to the share of the basic fence', () => {
    const together = difference('400', ofA)
    expect(held('labour', 'as it stands', { together })).toEqual({
      share: { materials: equal, labour: difference('200.00', ofA) },
    })
  })

  test.each<[string, ReturnType<typeof held>, string]>([
    ['nobody is named for what is above', held('apart', 'as it stands'), 'who is asked'],
    [
      'upgrades were named for both pots together',
      held('apart', 'a', { together: difference('400', ofA, { upgrades: [strips] }) }),
      'upgrades of both',
    ],
    [
      'credits exceed the cost',
      held('materials', 'a', halves, { materials: [wire.materials[2]] }),
      'below zero',
    ],
  ])('is refused where %s', (_, refused, why) => {
    expect(refused).toEqual({ not: why })
  })

  test('is held by exactly what the basic fence comes to, whatever it was before', () => {
    fc.assert(
      fc.property(
        randomNotebook,
        fc.constantFrom(...heldPots),
        fc.constantFrom<AboveChoice>('a', 'b', 'halves'),
        (document, pots, above) => {
          const notebook = readMade(document)
          const digits = digitsOf(notebook)
          for (const { share } of notebook.sections) {
            const { basicFence } = sectionWith()
            const after = heldAgainst(share, pots, above, basicFenceSums(basicFence, digits), digits)
            if ('not' in after) {
              expect(after.not).toBe('upgrades of both')
              continue
            }
            const against = heldPotsOf({ share: after.share, basicFence }, digits)
            const asked = pots === 'apart' ? ['materials', 'labour'] : [pots]
            const there = against.filter(({ pot }) => asked.includes(pot))
            expect(there.map(({ pot }) => pot)).toEqual(asked)
            for (const one of there) expect(one.typed).toBe(one.sum)
          }
        },
      ),
      { numRuns: 100 },
    )
  })
})

test('a typed basic cost is held beside the sum that it belongs to', () => {
  const apart = { materials: difference('233.95', ofA), labour: difference('150', ofA) }
  expect(heldPotsOf(sectionWith(apart), 2)).toEqual([
    { pot: 'materials', typed: 23395n, sum: 23395n },
    { pot: 'labour', typed: 15000n, sum: 20000n },
  ])
  expect(heldPotsOf(sectionWith({ together: difference('433.96', ofA) }), 2)).toEqual([
    { pot: 'together', typed: 43396n, sum: 43395n },
  ])
  expect(heldPotsOf(sectionWith(halves), 2)).toEqual([])
})
