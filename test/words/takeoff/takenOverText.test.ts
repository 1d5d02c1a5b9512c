import { expect, test } from 'vitest'
import { fromTakeOffWords, takenOverWords } from '../../../lib/words/takeoff/takenOverText.ts'

test.each([
  [{ added: 1, renewed: 0 }, 'Put among the cost lines: 1 line added.'],
  [
    { added: 3, renewed: 1 },
    'Put among the cost lines: 3 lines added and 1 line given the take-off’s quantity of now.',
  ],
  [{ added: 0, renewed: 0 }, 'Put among the cost lines: no line was added, and none took another quantity.'],
])('what was put among the cost lines is counted', (came, said) => {
  expect(takenOverWords(came)).toBe(said)
})

test.each([
  [1, 1, 'The line from the take-off has no price yet and counts as nothing until then.'],
  [4, 4, 'All 4 lines from the take-off have no price yet and count as nothing until then.'],
  [4, 1, 'Of the 4 lines from the take-off 1 has no price yet and counts as nothing until then.'],
  [4, 2, 'Of the 4 lines from the take-off 2 have no price yet and count as nothing until then.'],
  [4, 0, undefined],
])('of %i lines from the take-off, %i without a price are told', (taken, unpriced, said) => {
  expect(fromTakeOffWords({ taken, unpriced, beside: [] })[0]).toBe(said)
})
