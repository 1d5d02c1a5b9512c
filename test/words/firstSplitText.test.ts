import { expect, test } from 'vitest'
import { splitFirst } from '../../lib/core/shares/firstSplit.ts'
import { readFirstSplit } from '../../lib/forms/firstSplitDraft.ts'
import { firstSplitWaits } from '../../lib/words/firstSplitText.ts'

const waits = (typed: Record<string, string>) => {
  const split = splitFirst(readFirstSplit(typed), 'USD', 2)
  return split.ok ? [] : firstSplitWaits(split.faults, { a: 'no. 12', b: 'no. 14' })
}
const typed = { length: '60 ft', materials: '900' }

test.each<[string, Record<string, string>, readonly string[]]>([
  ['nothing is typed', {}, ['Type the length and a cost, and the split stands here.']],
  ['all that halves need is typed', typed, []],
  [
    'it is to go by length and no length of a household is typed',
    { ...typed, way: 'length' },
    [
      'Type the length along the ground of no. 12 and the length along the ground of no. 14, and the split stands here.',
    ],
  ],
  [
    'it is to go by length and one of the two is typed',
    { ...typed, way: 'length', frontA: '40 ft' },
    ['Type the length along the ground of no. 14, and the split stands here.'],
  ],
  [
    'the difference is to be paid and nothing says what would do',
    { ...typed, way: 'difference' },
    ['Type what a fence that would do for both costs, and the split stands here.'],
  ],
  [
    'a length has no unit yet and the hours have no rate',
    { ...typed, length: '60', hours: '20' },
    ['Type what an hour of the work is worth, and the split stands here.', 'The length can’t be read yet.'],
  ],
])('a first split says what it waits for where %s', (_when, draft, sentences) => {
  expect(waits(draft)).toEqual(sentences)
})

test('lengths that come to nothing are told as what they are', () => {
  expect(waits({ ...typed, way: 'length', frontA: '0 ft', frontB: '0 ft' })).toEqual([
    'The two lengths add to nothing: one of them has to be more than 0.',
  ])
  expect(waits({ ...typed, way: 'length', frontA: '0 ft', frontB: '1 ft' })).toEqual([])
})
