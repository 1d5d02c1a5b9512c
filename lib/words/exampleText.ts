import type { Need } from '../core/agreement/needs.ts'

// What the invented households of the example have said and signed before a visitor opens it.

/** Stands before the sentence that each invented party ticked, on the screen and on paper. */
export const inventedSignature = 'Example: this person and this signature are invented.'

export const exampleNeeds: Readonly<Record<'a' | 'b', readonly Need[]>> = {
  a: [
    { need: 'privacy', weight: 'like', words: 'at the bench behind the sheds' },
    { need: 'a welded fence that our grandchildren can mend', weight: 'must', words: '' },
  ],
  b: [
    { need: 'stock', weight: 'must', words: 'six sheep in the orchard' },
    { need: 'low-cost', weight: 'like', words: '' },
  ],
}

export const exampleSayings = {
  firstAnswer: 'Yes, let us do it. We will need a gate that the mower fits through.',
  latch: 'Will the latch open from our side too?',
  latchAnswer: 'Yes: a gravity latch that both sides can lift.',
  clay: 'The clay took nineteen hours of hired digging, not fourteen. We would like to share the work on the slope in halves from here on.',
  objection:
    'When we signed, no. 12 took the work on the slope on itself. We are sorry about the clay, but we can’t put five more hours on our side just like that.',
  quarter: 'We can carry a quarter of the work on the slope.',
} as const
