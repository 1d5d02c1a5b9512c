import { describe, expect, test } from 'vitest'
import type { Standing } from '../../lib/words/summary/summaryInput.ts'
import { exampleNotebook, notebookWith, summaryInputFor } from '../pdf/madeSummary.ts'
import { readingGrade } from './readingGrade.ts'

const hardest = 8

/** The sentences of a summary, with names that hold no stop, so that no name is taken for the end of a sentence. */
function textsOf(read: ReturnType<typeof notebookWith>, kind: Standing['kind']): string[] {
  return summaryInputFor(read, { standing: { kind } })
    .content.flatMap((block) => {
      if (block.kind === 'paragraph' || block.kind === 'caution') return [block.text]
      return block.kind === 'drawing' ? [block.caption, block.description] : []
    })
    .map((text) => text.replace(/\bno\. 1[24]/gi, 'Mill House'))
}

describe('the sentences that the program writes', () => {
  test.each(['draft', 'up for signing', 'signed'] as const)(
    'read at grade 8 or below, one by one: %s',
    (kind) => {
      const texts = [...textsOf(exampleNotebook(), kind), ...textsOf(notebookWith(), kind)]
      expect(texts.length).toBeGreaterThan(60)
      const hard = texts.filter((text) => text.split(' ').length >= 8 && readingGrade(text) > hardest)
      expect(hard).toEqual([])
    },
  )

  test('read well below it as a whole', () => {
    expect(readingGrade(textsOf(exampleNotebook(), 'signed').join('\n'))).toBeLessThan(6)
  })

  test('are measured by a measure that tells hard from easy', () => {
    // Reckoned by hand: 6 words, 6 syllables, one sentence: 0.39·6 + 11.8 − 15.59 = −1.45.
    expect(readingGrade('The cat sat on the mat.')).toBeCloseTo(-1.45, 2)
    expect(
      readingGrade(
        'Notwithstanding the aforementioned, the undersigned parties irrevocably acknowledge proportionate liability.',
      ),
    ).toBeGreaterThan(14)
  })

  test('never speak of wrong, guilt or claims', () => {
    const texts = textsOf(exampleNotebook(), 'signed').join('\n')
    expect(texts).not.toMatch(
      /\b(wrong(ed)?|liab\w*|breach\w*|hereby|herein|whereas|aforesaid|defendant|damages|indemnif\w*)\b/i,
    )
  })
})
