import { expect, test } from 'vitest'
import { householdsNamed } from '../../lib/words/summary/householdsNamed.ts'
import { notebookWith } from '../core/madeNotebook.ts'

const notebook = notebookWith({
  households: { a: { name: 'Household at no. 7' }, b: { name: 'The Marshes' } },
})

test.each([
  ['toward No. 7', 'toward Household at no. 7'],
  ['falls toward household b, then to household a', 'falls toward The Marshes, then to Household at no. 7'],
  ['toward Household at no. 7', 'toward Household at no. 7'],
  ['toward the lane', 'toward the lane'],
  ['', ''],
])('“%s” is said as “%s”', (typed, said) => {
  expect(householdsNamed(notebook, typed)).toBe(said)
})
