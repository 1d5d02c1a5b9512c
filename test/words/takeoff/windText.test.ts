import { describe, expect, test } from 'vitest'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import {
  depthRows,
  depthRulesCaution,
  windCatching,
  windCaution,
  windOutcome,
  windWorkings,
} from '../../../lib/words/takeoff/windText.ts'
import { fence, notebookOf, steelPosts } from '../../core/takeoff/madeFence.ts'
import { readingGrade } from '../readingGrade.ts'

type Data = Record<string, unknown>

const place = {
  wind: { speed: '115', unit: 'mph', exposure: 'C', saidBy: 'the permit office' },
  soil: { what: 'sand', lateral: '150', unit: 'psf/ft', doubled: true, saidBy: '' },
  frost: { depth: '3 ft', saidBy: 'the permit office' },
}
const strips = { kind: 'strip', what: 'steel strip', width: '3 in', opening: '4 in' }
const meshAndStrips = [{ kind: 'roll', what: 'mesh', solid: '8' }, strips]

function looked(depth: string, site: Data = place, more: Data = {}, infill: readonly Data[] = meshAndStrips) {
  const buildUp = {
    posts: { ...steelPosts, depth },
    footing: { fill: 'concrete' },
    infill,
  }
  const notebook = notebookOf([fence('0 ft', '96 ft', { buildUp })], { line: { site }, ...more })
  const [check] = takeOff(notebook).wind
  if (check === undefined) throw new Error('a section with a build-up is looked at')
  return { notebook, check }
}

describe('the look at wind in words', () => {
  test('a shortfall sends to a licensed engineer', () => {
    const { notebook, check } = looked('30 in')
    expect(windOutcome(notebook, check)).toMatch(
      /^By this look the line posts need holes 5 ft [^.]+ deep\. The shallowest is 2 ft 6 in deep\. Have the fence designed by a licensed engineer before you build it\.$/,
    )
  })

  test('without a shortfall it says that it is no approval', () => {
    const { notebook, check } = looked('9 ft')
    expect(windOutcome(notebook, check)).toContain('This look finds no shortfall. It is no approval.')
  })

  test('what is missing is named once', () => {
    const { notebook, check } = looked('30 in', { soil: place.soil, frost: {}, wind: { speed: '115' } })
    expect(windOutcome(notebook, check)).toBe(
      'This look can’t tell yet. Still to be said: the unit of the wind speed; how open the place is to the wind.',
    )
  })

  test('never reads as an approval', () => {
    for (const depth of ['30 in', '9 ft', '']) {
      const { notebook, check } = looked(depth)
      const text = [windOutcome(notebook, check), windCaution, ...windWorkings(notebook, check)].join(' ')
      expect(text).not.toMatch(/\b(enough|safe|sound|strong|passes|approved|complies|sufficient)\b/i)
    }
    expect(windCaution).toContain('no approval')
    expect(windCaution).toContain('licensed engineer')
  })

  test('reads at grade 8 or below', () => {
    const texts = ['30 in', '9 ft', ''].flatMap((depth) => {
      const { notebook, check } = looked(depth)
      return [windOutcome(notebook, check), ...windCatching(check)]
    })
    for (const text of [...texts, windCaution, depthRulesCaution])
      expect(readingGrade(text), text).toBeLessThanOrEqual(8)
  })

  test('shows every step with its figures, in feet and pounds', () => {
    const { notebook, check } = looked('30 in')
    const workings = windWorkings(notebook, check)
    expect(workings).toHaveLength(check.steps.length)
    expect(workings[1]).toBe(
      'Wind, as said by the permit office, of 115 mph, exposure C (open country): 0.00256 × 0.85 × 0.85 × 115² = 24.5 lb/sq ft (ASCE 7).',
    )
    expect(workings).toContain('Steel strip: 75 % of it stops the wind, by strip and opening.')
    expect(workings).toContain(
      'Sand bears 150 psf/ft sideways, taken twice for posts that a little motion does not harm.',
    )
  })

  test('shows the same in metres and newtons, which a pencil can redo', () => {
    const { notebook, check } = looked('30 in', place, { units: 'metric' })
    const workings = windWorkings(notebook, check)
    // 0.613 × 0.85 × 0.85 × 51.4² = 1170.1; the constant in full is 0.61333, so 1171 is shown.
    expect(workings[1]).toContain('0.613 × 0.85 × 0.85 × 51.4² (in m/s) = 1171 Pa')
    expect(workings.join(' ')).not.toMatch(/ (lb|ft)\b/)
  })

  test('how many times strips take what the mesh takes', () => {
    const { check } = looked('30 in')
    expect(windCatching(check)).toHaveLength(1)
    expect(windCatching(check)[0]).toMatch(
      /^With the strips the wind pushes [0-9.]+ times as hard as without them\.$/,
    )
  })

  test('rules of thumb say which they are, and the frost who said it', () => {
    const { notebook, check } = looked('30 in')
    expect(depthRows(notebook, check)).toEqual([
      {
        rule: 'At least 2 ft for a fence of up to 6 ft (common practice)',
        depth: '2 ft',
        reached: 'reach it',
      },
      { rule: 'A third of the height (common practice)', depth: '2 ft', reached: 'reach it' },
      { rule: 'ASTM F567, for line posts of chain-link fence', depth: '2 ft 6 in', reached: 'reach it' },
      { rule: 'Frost, as said by the permit office', depth: '3 ft', reached: 'do not reach it' },
    ])
  })

  test.each([
    ['boards', [{ kind: 'board', what: 'cedar board', width: '6 in' }], false],
    ['panels of boards', [{ kind: 'panel', what: 'pine panel', width: '6 ft', solid: '90' }], false],
    ['panels of mesh', [{ kind: 'panel', what: 'panel of welded mesh', width: '6 ft', solid: '10' }], true],
    ['wire by the roll', [{ kind: 'roll', what: 'chain link', solid: '10' }], true],
  ])('the rule for chain-link fence is named beside %s: %#', (_what, infill, named) => {
    const { notebook, check } = looked('30 in', place, {}, infill)
    const rules = depthRows(notebook, check).map(({ rule }) => rule)
    expect(rules.some((rule) => rule.includes('chain-link'))).toBe(named)
    expect(rules).toContain('A third of the height (common practice)')
  })
})
