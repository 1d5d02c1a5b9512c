import { expect, test } from 'vitest'
import { quantityWords } from '../../lib/words/quantityWords.ts'

test.each([
  ['1', 'bag', '1 bag'],
  ['8', 'bag', '8 bags'],
  ['0.5', 'day', '0.5 days'],
  ['2', 'box', '2 boxes'],
  ['2', 'coil', '2 coils'],
  ['4', 'each', '4 each'],
  ['48.005', 'ft', '48.005 ft'],
  ['3', 'bags', '3 bags'],
  ['3', 'armful of twigs', '3 armful of twigs'],
  ['3', 'constructor', '3 constructor'],
  ['3', '', '3'],
])('%s of the unit "%s" reads "%s"', (quantity, unit, words) => {
  expect(quantityWords(quantity, unit)).toBe(words)
})
