import { describe, expect, test } from 'vitest'
import type { ReachedCap } from '../../lib/core/shares/capReached.ts'
import { reachedCapSentences } from '../../lib/words/capText.ts'

const names = { currency: 'USD', a: 'no. 12', b: 'no. 14' }
const told = (more: Partial<ReachedCap>) =>
  reachedCapSentences(
    {
      household: 'b',
      cap: 100_00n,
      asked: 90_00n,
      afterwards: 104_00n,
      over: 4_00n,
      agreed: 0n,
      pauses: true,
      ...more,
    },
    names,
    'this item',
  )

describe('a cap that is reached, in words', () => {
  test('by what is about to be spent', () => {
    expect(told({})).toEqual([
      'With this the cap of no. 14, $100.00, would be reached: $4.00 would lie above it.',
      'Buying on this item pauses until you two agree: spend less, raise the cap, or put the new price into the plan and both mark it.',
    ])
  })

  test('already, of which a part is agreed', () => {
    expect(told({ asked: 104_00n, agreed: 3_00n })).toEqual([
      'The cap of no. 14, $100.00, is reached: $4.00 would lie above it.',
      'No. 12 has marked that it bears $3.00 of this.',
      'Buying on this item pauses until you two agree: spend less, raise the cap, or put the new price into the plan and both mark it.',
    ])
  })

  test('with all of what lies above agreed, or nothing above it', () => {
    expect(told({ asked: 104_00n, agreed: 4_00n, pauses: false })).toEqual([
      'The cap of no. 14, $100.00, is reached: $4.00 would lie above it.',
      'No. 12 has marked that it bears this. Buying goes on.',
    ])
    expect(told({ afterwards: 100_00n, over: 0n, pauses: false })).toEqual([
      'With this the cap of no. 14, $100.00, would be reached, to the last unit.',
    ])
  })
})
