import type { Need } from '../core/agreement/needs.ts'
import type { MetNeed } from '../core/agreement/notebook.ts'

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

/** Which section of the example meets which need, as both tell each other once they know them. That it costs little stays open. */
export const exampleMeets: Readonly<Record<string, readonly MetNeed[]>> = {
  s1: [{ household: 'a', need: 'a welded fence that our grandchildren can mend' }],
  s3: [{ household: 'a', need: 'privacy' }],
  s5: [{ household: 'b', need: 'stock' }],
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
