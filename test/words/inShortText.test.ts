import { describe, expect, test } from 'vitest'
import { conditionLines } from '../../lib/words/inShortText.ts'
import { scaleLine } from '../../lib/words/summary/drawingExaggeration.ts'
import { exampleNotebook, notebookWith } from '../pdf/madeSummary.ts'

describe('the conditions of an agreement in short', () => {
  test('name what stands, the cap, the rates and instalments, every topic of the terms, and what is open', () => {
    const { notebook } = exampleNotebook()
    const lines = conditionLines(notebook)
    expect(lines.map(({ text }) => text)).toEqual([
      'The fence: 5 sections and 4 gates.',
      'Caps: no. 14 is asked for at most $4,200.00.',
      'Money and hours: 2 agreed rates for an hour of work, a tolerance of 10 percent and 3 instalments.',
      '11 terms in words',
      '4 decisions written down.',
      '4 questions under “Ask first” without an answer yet.',
    ])
    expect(lines[3]?.more).toEqual(notebook.terms.map(({ topic }) => topic))
  })

  test('say of an empty notebook that it has neither cap nor terms, and no more', () => {
    expect(conditionLines(notebookWith().notebook)).toEqual([
      { text: 'The fence: 0 sections and 0 gates.' },
      { text: 'No cap on what a household can be asked for.' },
      { text: 'No terms are written down.' },
    ])
  })

  test('tell a term without a topic by its beginning', () => {
    const terms = [
      { topic: '', text: 'The hedge at the lower end is cut twice a year by whoever sees it first' },
    ]
    expect(conditionLines(notebookWith({ terms }).notebook)[2]).toEqual({
      text: '1 term in words',
      more: ['The hedge at the lower end is cut twice…'],
    })
  })
})

describe('one line under a drawing says', () => {
  test.each([
    [1, 1, 'To scale in every direction.'],
    [1, 2, 'To scale along the line; heights 2 times higher.'],
    [4, 1, 'To scale along the line; distances off the line 4 times wider.'],
    [4, 2.5, 'To scale along the line; distances off the line 4 times wider, heights 2.5 times higher.'],
    [1, 0.5, 'To scale along the line; heights drawn lower.'],
  ])(
    'that it is %d times wider across and %d times higher',
    (setbacksDrawnWider, heightsDrawnHigher, words) => {
      expect(scaleLine({ setbacksDrawnWider, heightsDrawnHigher })).toBe(words)
    },
  )
})
