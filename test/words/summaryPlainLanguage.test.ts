import { describe, expect, test } from 'vitest'
import type { Notebook } from '../../lib/core/agreement/notebook.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { takeOff } from '../../lib/core/takeoff/takeOff.ts'
import { buyerSheet } from '../../lib/words/sheets/buyerSheet.ts'
import { landRecordsPage } from '../../lib/words/sheets/landRecordsPage.ts'
import { permitSheet } from '../../lib/words/sheets/permitSheet.ts'
import { summaryContent } from '../../lib/words/summary/summaryContent.ts'
import type { Standing, SummaryInput } from '../../lib/words/summary/summaryInput.ts'
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

function summaryFor(notebook: Notebook): SummaryInput {
  const frozenAt = new Date('2027-10-01T10:00:00Z')
  const standing = { kind: 'signed', number: 2, sha256: '0'.repeat(64), frozenAt } as const
  return { notebook, statement: statementOf(notebook), standing, signatures: [] }
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

  test('read at grade 8 or below where the paper amends, closes, tells of dates and was locked', () => {
    const { notebook } = notebookWith({
      closing: {
        on: '2027-09-30',
        asBuilt: [{ what: 'Height at the lane', measured: '6 ft 1 in' }],
        upkeep: [{ what: 'Oil the hinges', household: 'b', every: 'year' }],
      },
      dates: [{ what: 'Utility marks run out', on: '2027-04-21', household: 'a' }],
    })
    const sha256 = '0'.repeat(64)
    const texts = (['up for signing', 'signed'] as const).flatMap((kind) =>
      [
        ...summaryContent({
          notebook,
          statement: statementOf(notebook),
          standing: { kind, number: 2, sha256, frozenAt: new Date('2027-10-01T10:00:00Z') },
          signatures: [],
          amends: {
            number: 1,
            changes: [{ title: 'The line', lines: ['Start: the oak before, the ash now'] }],
          },
          history: { entry: 41, hash: sha256 },
        }),
        ...permitSheet(summaryFor(notebook), takeOff(notebook)),
        ...buyerSheet(summaryFor(notebook), takeOff(notebook)),
        ...landRecordsPage(summaryFor(notebook)),
      ]
        .flatMap((block) => (block.kind === 'paragraph' || block.kind === 'caution' ? [block.text] : []))
        .map((text) => text.replace(/\bno\. 1[24]/gi, 'Mill House').replace(sha256, 'it')),
    )
    expect(texts.join(' ')).toContain('This copy is locked')
    expect(texts.join(' ')).toContain('close their notebook')
    const hard = texts.filter((text) => text.split(' ').length >= 8 && readingGrade(text) > hardest)
    expect(hard).toEqual([])
  })

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
