import { describe, expect, test } from 'vitest'
import type { ReachedCap } from '../../lib/core/shares/capReached.ts'
import { reachedCapSentences, whichCapsWords } from '../../lib/words/capText.ts'

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

describe('which caps that is, in words', () => {
  const both = { a: true, b: true }
  test.each([
    [
      { from: 'signed', marked: both },
      { signed: 2, draftDiffers: false },
      'This goes by the caps of revision 2, which all have signed.',
    ],
    [
      { from: 'signed', marked: both },
      { signed: 2, draftDiffers: true },
      'This goes by the caps of revision 2, which all have signed. The notebook has other caps now; they hold here once both of you have marked them.',
    ],
    [
      { from: 'marked since', marked: both },
      { signed: 2, draftDiffers: false },
      'This goes by the caps that both of you have marked since revision 2 was signed.',
    ],
    [
      { from: 'draft', marked: { a: false, b: true } },
      { signed: undefined, draftDiffers: false },
      'Nothing is signed yet, so this goes by the caps as they stand in the notebook. No. 14 has marked them, no. 12 has not.',
    ],
    [
      { from: 'draft', marked: { a: false, b: false } },
      { signed: undefined, draftDiffers: false },
      'Nothing is signed yet, so this goes by the caps as they stand in the notebook. Nobody has marked them so far.',
    ],
  ] as const)('%j %j', (held, now, words) => {
    expect(whichCapsWords(held, now, names)).toBe(words)
  })
})
