import { describe, expect, test } from 'vitest'
import type { Block } from '../../lib/words/summary/block.ts'
import { halves } from '../core/madeNotebook.ts'
import { fence, gateAt, steelPosts } from '../core/takeoff/madeFence.ts'
import { notebookWith, summaryInputFor } from '../pdf/madeSummary.ts'
import { readingGrade } from './readingGrade.ts'

type Data = Record<string, unknown>

const place = {
  wind: { speed: '115', unit: 'mph', exposure: 'C', saidBy: 'the permit office' },
  soil: { what: 'sand', lateral: '150', unit: 'psf/ft', doubled: true, saidBy: '' },
  frost: { depth: '3 ft', saidBy: 'the permit office' },
}
const limit = { from: '10 ft', to: '60 ft', limit: '5 ft', saidBy: 'the permit office', on: '2027-03-01' }
const stations = [
  { at: '0 ft', setback: { side: 'a', distance: '4 in' }, gradeA: '0 ft', gradeB: '1 ft' },
  { at: '96 ft', setback: { side: 'a', distance: '24 in' }, gradeA: '0 ft', gradeB: '0 ft' },
]
const buildUp = {
  posts: { ...steelPosts, what: 'pipe', reclaimed: true },
  rails: { shape: 'round', outside: '2 in', wall: '0.1 in', material: 'steel', count: '2' },
  footing: { fill: 'concrete' },
  infill: [
    { kind: 'roll', what: 'mesh', solid: '8' },
    { kind: 'strip', what: 'steel strip', width: '3 in', opening: '4 in' },
  ],
}
const section = (more: Data = {}) => fence('0 ft', '96 ft', { name: 'Front', buildUp, ...more })
const bare = { ...fence('0 ft', '96 ft'), buildUp: undefined }

function blocksOf(more: Data): readonly Block[] {
  return summaryInputFor(notebookWith(JSON.parse(JSON.stringify(more)) as Data)).content
}

const everything = { sections: [section()], line: { stations, site: place, limits: [limit], error: '1 in' } }

const idsOf = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.kind === 'heading' ? [block.id] : []))
const own = /^(made-of|land-and-holes|height-limits|wind-and-posts)/

/** The texts of one passage, figures with plain blanks. */
function passage(blocks: readonly Block[], id: string): string[] {
  const start = blocks.findIndex((block) => block.kind === 'heading' && block.id === id)
  if (start < 0) throw new Error(`no passage ${id}`)
  const after = blocks.slice(start + 1)
  const end = after.findIndex(({ kind }) => kind === 'heading')
  return after
    .slice(0, end < 0 ? undefined : end)
    .flatMap((block) => ('text' in block ? [block.text.replaceAll('\u00A0', ' ')] : []))
}

describe('what the take-off adds to the summary', () => {
  const blocks = blocksOf(everything)

  test('a passage each, in the order of reading', () => {
    expect(idsOf(blocks).filter((id) => own.test(id))).toEqual([
      'land-and-holes',
      'height-limits',
      'made-of',
      'made-of-section-1',
      'wind-and-posts',
    ])
  })

  test('one table for each section and gate with a build-up, with a weight by line and their total', () => {
    const gates = [
      gateAt('50 ft', '4 ft', {
        buildUp: { frame: { outside: '1.66 in', wall: '0.14 in', material: 'steel' } },
      }),
    ]
    const tables = blocksOf({ ...everything, gates }).flatMap((block) =>
      block.kind === 'table' && block.caption.startsWith('What it takes') ? [block] : [],
    )
    expect(tables).toHaveLength(2)
    for (const { rows, foot } of tables) {
      const weights = rows.map(({ cells }) => Number(/^([0-9.]+)\u00A0lb$/.exec(cells[2] ?? '')?.[1] ?? 0))
      const total = Number(/^([0-9.]+)\u00A0lb$/.exec(foot?.[2] ?? '')?.[1])
      expect(Math.abs(total - weights.reduce((sum, weight) => sum + weight, 0))).toBeLessThan(
        0.1 * rows.length,
      )
      expect(total).toBeGreaterThan(0)
    }
    expect(tables[0]?.rows[0]?.cells[0]).toBe('pipe, 2 3/8 in round, wall 0.154 in (reclaimed)')
  })

  test('the total and the reclaimed share by weight', () => {
    const text = passage(blocks, 'made-of-section-1').join(' ')
    const [, total, reclaimed, percent] =
      /All that has a weight comes to ([0-9.]+) lb\. Of this ([0-9.]+) lb is reclaimed, ([0-9.]+) % by weight\./.exec(
        text,
      ) ?? []
    expect((Number(reclaimed) / Number(total)) * 100).toBeCloseTo(Number(percent), 1)
    expect(Number(percent)).toBeGreaterThan(0)
  })

  test('the strip of land of each household, and which holes reach across', () => {
    // A trapezoid of 4 and 24 in over 96 ft: 96 · (1/3 + 2)/2 = 112 sq ft of the land of a.
    expect(passage(blocks, 'land-and-holes')).toEqual([
      'A strip of 112 sq ft of the land of the first household ends up on the side of the second household. It stays the land of the first household.',
      // The hole reaches 6 in to each side; the fence stands 4 and 5⅔ in off the line at the first two posts.
      'At post 1 the hole or the post itself reaches across the line.',
      'At post 2 it can’t be told if the hole reaches across. The line may lie 1 in to either side.',
    ])
  })

  test('heights against the limit, with who named it and when', () => {
    expect(passage(blocks, 'height-limits')).toEqual([
      // At 10 ft the ground of b lies 86/96 ft over that of a: 6 ft and 10¾ in.
      'The limit from 10 ft to 60 ft is 5 ft over the ground of the first household, as said by the permit office on 1 March 2027. The fence is 6 ft 10 3/4 in high there at most, at 10 ft: that is over the limit.',
      expect.stringMatching(/over the ground of the second household.* that is over the limit\.$/),
    ])
  })

  test('the look at wind with its caution', () => {
    const [look, caution] = passage(blocks, 'wind-and-posts')
    expect(look).toMatch(/^Section 1: Front\. By this look the line posts need holes .* licensed engineer/)
    expect(look).toContain('The frost goes 3 ft deep, as said by the permit office. All holes go as deep.')
    expect(caution).toContain('no design and no approval')
  })

  test('says nothing twice', () => {
    const texts = idsOf(blocks)
      .filter((id) => own.test(id))
      .flatMap((id) => passage(blocks, id))
    const sentences = texts
      .join(' ')
      .split(/(?<=\.) /)
      .filter((sentence) => sentence.length > 20)
    expect(sentences.filter((sentence, index) => sentences.indexOf(sentence) !== index)).toEqual([])
  })

  test('reads at grade 8 or below', () => {
    const texts = idsOf(blocks)
      .filter((id) => own.test(id))
      .flatMap((id) => passage(blocks, id))
    expect(texts.length).toBeGreaterThan(8)
    for (const text of texts) expect(readingGrade(text), text).toBeLessThanOrEqual(8)
  })

  test('never breaks a line between a figure and its unit', () => {
    for (const block of blocks) {
      if (block.kind === 'paragraph') expect(block.text).not.toMatch(/[0-9] (ft|in|lb|sq ft|%)(?![A-Za-z])/)
    }
  })
})

describe('without these keys the summary is what it was', () => {
  test('no build-up and no limit: no passage, even where the place is known', () => {
    for (const line of [{ stations }, { stations, site: place }])
      expect(idsOf(blocksOf({ sections: [bare], line })).filter((id) => own.test(id))).toEqual([])
  })

  test('a limit alone adds the limits alone', () => {
    const without = blocksOf({ sections: [bare], line: { stations } })
    const more = blocksOf({ sections: [bare], line: { stations, limits: [limit] } })
    expect(idsOf(more).filter((id) => own.test(id))).toEqual(['height-limits'])
    expect(more.length).toBe(without.length + 3)
  })

  test('a build-up without a place says nothing of wind', () => {
    expect(idsOf(blocksOf({ sections: [section()], line: { stations } }))).not.toContain('wind-and-posts')
  })

  test('an empty build-up says that nothing can be worked out', () => {
    const blocks = blocksOf({ sections: [{ id: 's', share: halves, buildUp: {} }] })
    expect(passage(blocks, 'made-of-section-1')[0]).toBe('Nothing can be worked out for it yet.')
  })
})
