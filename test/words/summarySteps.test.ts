import { describe, expect, test } from 'vitest'
import { plannedStatement } from '../../lib/core/shares/statement.ts'
import type { Block } from '../../lib/words/summary/block.ts'
import { contentWithoutCosts } from '../../lib/words/summary/contentWithoutCosts.ts'
import { shareBlocks } from '../../lib/words/summary/shareBlocks.ts'
import { stepsBlocks } from '../../lib/words/summary/stepsBlocks.ts'
import { summaryContent } from '../../lib/words/summary/summaryContent.ts'
import type { SummaryInput } from '../../lib/words/summary/summaryInput.ts'
import { bought, halves, notebookWith } from '../core/madeNotebook.ts'
import { readingGrade } from './readingGrade.ts'

const one = (household: 'a' | 'b') => ({
  materials: { principle: 'one', household },
  labour: { principle: 'equal' },
})

/** Two sections of 30 ft and 10 ft, and an auger that is laid on them by length. */
const withSpread = {
  sections: [
    { id: 's1', name: 'Lane', from: '0 ft', to: '30 ft', materials: [bought('10.00')], share: one('a') },
    { id: 's2', name: 'Creek', from: '30 ft', to: '40 ft', materials: [bought('10.00')], share: one('b') },
  ],
  common: [
    { id: 'c1', name: 'Auger', materials: [bought('10.01')], share: halves, spread: 'length' },
    { id: 'c2', name: 'Nothing yet', share: halves },
  ],
}

function inputOf(parts: Record<string, unknown>): SummaryInput {
  const notebook = notebookWith(parts)
  return {
    notebook,
    statement: plannedStatement(notebook),
    standing: { kind: 'draft', sha256: '' },
    signatures: [],
  }
}

/** Headings of the second level with the groups of steps under each, as texts. */
function appendix(blocks: readonly Block[]): Record<string, readonly (readonly string[])[]> {
  const found: Record<string, (readonly string[])[]> = {}
  let under = ''
  for (const block of blocks) {
    if (block.kind === 'heading') under = block.text
    if (block.kind !== 'steps') continue
    found[under] = [...(found[under] ?? []), ...block.groups.map(({ heading, steps }) => [heading, ...steps])]
  }
  return found
}

describe('the appendix of the summary', () => {
  const steps = appendix(stepsBlocks(inputOf(withSpread)))

  test('has every item that has something to share, and all parts together', () => {
    expect(Object.keys(steps)).toEqual([
      'Section 1: Lane',
      'Section 2: Creek',
      'Common cost 1: Auger',
      'All parts together',
    ])
  })

  test('shows how a common cost is laid, part by part, down to the odd cent', () => {
    // 30 of 40 ft are a's alone: 3/4. 10.01 × 3/4 = 7.5075.
    expect(steps['Common cost 1: Auger']?.find(([heading]) => heading === 'Sharing the materials')).toEqual([
      'Sharing the materials',
      'Laid on the sections and gates by length.',
      'Lane, 0 ft to 30 ft, bears 3/4. 1 of that is the part of no. 12: 3/4 × 1 = 3/4.',
      'Creek, 30 ft to 40 ft, bears 1/4. 0 of that is the part of no. 12: 1/4 × 0 = 0.',
      'The parts of no. 12 add to 3/4.',
      '$10.01 × 3/4 = $7.50 and 3/4 of $0.01 for no. 12. The rest is $2.50 and 1/4 of $0.01 for no. 14.',
      'Both are cut down to whole units of $0.01: $7.50 and $2.50. One $0.01 is left over.',
      'It goes to no. 12, who had more cut off: 3/4 of a unit against 1/4.',
      'no. 12: $7.51. no. 14: $2.50.',
    ])
  })

  test('adds the items up', () => {
    expect(steps['All parts together']?.[0]?.at(-1)).toBe(
      'All items together ask for $17.51 of no. 12, $12.50 of no. 14. That is $30.01 in all.',
    )
  })

  test('stands at the end of the summary, and nowhere in the paper without costs', () => {
    const input = inputOf(withSpread)
    const kinds = (blocks: readonly Block[]) => blocks.filter(({ kind }) => kind === 'steps').length
    expect(summaryContent(input).at(-1)?.kind).toBe('steps')
    expect(kinds(summaryContent(input))).toBe(4)
    expect(kinds(contentWithoutCosts(input))).toBe(0)
  })

  test('is left out where there is nothing to share, and has what can be shared where the whole can’t be', () => {
    expect(stepsBlocks(inputOf({ common: [{ id: 'c', share: halves }] }))).toEqual([])
    const noPoints = { materials: { principle: 'benefit', a: '0', b: '0' }, labour: { principle: 'equal' } }
    const half = inputOf({
      sections: [
        withSpread.sections[0],
        { id: 's9', name: 'Slope', materials: [bought('1.00')], share: noPoints },
      ],
    })
    expect(Object.keys(appendix(stepsBlocks(half)))).toEqual(['Section 1: Lane'])
  })

  test('is in plain words', () => {
    const texts = Object.values(steps).flat(2)
    expect(readingGrade(texts.join('\n'))).toBeLessThan(7)
  })
})

describe('each part with its part of the common costs', () => {
  const tables = (parts: Record<string, unknown>) =>
    shareBlocks(inputOf(parts)).flatMap((block) => (block.kind === 'table' ? [block] : []))

  test('is a table that adds up to the same sums', () => {
    const table = tables(withSpread).find(
      ({ caption }) => caption === 'Each item with its part of the common costs',
    )
    // The auger's 7.51 of a all belong to the lane, its 2.50 of b to the creek.
    expect(table?.rows.map(({ cells }) => cells)).toEqual([
      ['Section 1: Lane', '$10.00', '$7.51', '$17.51', '$17.51', '$0.00'],
      ['Section 2: Creek', '$10.00', '$2.50', '$12.50', '$0.00', '$12.50'],
      ['Common cost 2: Nothing yet', '$0.00', '$0.00', '$0.00', '$0.00', '$0.00'],
    ])
    expect(table?.foot).toEqual(['All items', '$20.00', '$10.01', '$30.01', '$17.51', '$12.50'])
  })

  test('is not there where common costs are shared by themselves', () => {
    const captions = tables({ common: [{ id: 'c', materials: [bought('1.00')], share: halves }] }).map(
      ({ caption }) => caption,
    )
    expect(captions).not.toContain('Each item with its part of the common costs')
  })

  test('leaves the last table as it was: old locked copies are checked by it', () => {
    expect(tables(withSpread).at(-1)?.caption).toBe('What each household brings, if all goes as planned')
  })
})
