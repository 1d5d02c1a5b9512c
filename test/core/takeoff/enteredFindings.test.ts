import { describe, expect, test } from 'vitest'
import { findingText } from '../../../lib/words/takeoff/findingText.ts'
import { fence, findingsOf, notebookOf, takeOffOf } from './madeFence.ts'

const sections = [fence('0 ft', '40 ft')]
const piece = { what: 'found pipe', outside: '2 3/8 in', length: '14 ft' }
const wind = { speed: '115', unit: 'mph', exposure: 'C' }
const soil = { lateral: '150', unit: 'psf/ft' }
const found = (more: Record<string, unknown>) =>
  takeOffOf(sections, more).findings.filter(({ path }) => /^(inventory|line\.site)/.test(path))

describe('pieces at hand', () => {
  test.each([
    ['no length', { ...piece, length: '' }, 'inventory[1].length: missing'],
    ['a length of zero', { ...piece, length: '0 ft' }, 'inventory[1].length: zero'],
    ['no outside size', { ...piece, outside: '' }, 'inventory[1].outside: missing'],
  ])('one with %s is found, at its row', (_what, second, expected) => {
    expect(findingsOf(takeOffOf(sections, { inventory: [piece, second] }))).toEqual([expected])
  })
})

describe('wind and soil said by halves', () => {
  test.each([
    ['a wind without exposure', { wind: { ...wind, exposure: '' } }, 'line.site.wind.exposure', '115 mph'],
    ['a wind without unit', { wind: { ...wind, unit: '' } }, 'line.site.wind.unit', '115'],
    ['an exposure without wind', { wind: { ...wind, speed: '' } }, 'line.site.wind.speed', 'C'],
    ['a soil value without unit', { soil: { ...soil, unit: '' } }, 'line.site.soil.unit', '150'],
  ])('%s is found at what is left out, with what is said', (_what, site, path, said) => {
    const findings = found({ line: { site } })
    expect(findings.map((one) => one.path)).toEqual([path])
    expect(findings.map((one) => findingText(notebookOf(sections), one))).toEqual([
      expect.stringContaining(said),
    ])
  })

  test('nothing said, or all of it, is no finding', () => {
    expect(found({})).toEqual([])
    expect(found({ inventory: [piece], line: { site: { wind, soil } } })).toEqual([])
  })
})
