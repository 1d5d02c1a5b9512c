import { describe, expect, test } from 'vitest'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { findingText } from '../../../lib/words/takeoff/findingText.ts'
import {
  feet,
  fence,
  findingsOf,
  gateAt,
  notebookOf,
  pipe,
  steelBuildUp,
  steelPosts,
  takeOffOf,
} from './madeFence.ts'

const line = { stations: [{ at: '0 ft' }, { at: '40 ft' }] }

function posts(more: Record<string, unknown>) {
  return fence('0 ft', '24 ft', { buildUp: { ...steelBuildUp, posts: { ...steelPosts, ...more } } })
}

describe('places that clash', () => {
  test('sections that overlap, with both stretches', () => {
    const found = takeOffOf([fence('0 ft', '24 ft'), fence('20 ft', '40 ft')], { line })
    expect(found.findings).toMatchObject([{ path: 'sections[1]', kind: 'sections-overlap', other: 0 }])
    const [clash] = found.findings
    expect(clash && 'otherTo' in clash ? [feet(clash.from), feet(clash.otherTo)] : []).toEqual([20, 24])
  })

  test('sections that only touch do not overlap', () => {
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft'), fence('24 ft', '40 ft')], { line }))).toEqual([])
  })

  test('a section that ends before it begins, or past the last station', () => {
    expect(findingsOf(takeOffOf([fence('24 ft', '0 ft')], { line }))).toEqual([
      'sections[0].to: section-backwards',
    ])
    expect(findingsOf(takeOffOf([fence('0 ft', '41 ft')], { line }))).toEqual([
      'sections[0].to: section-past-the-end',
    ])
  })

  test.each([
    ['1 ft', '4 ft'],
    ['39 ft', '4 ft'],
  ])('a gate at %s with an opening of %s, beyond an end of the line', (at, opening) => {
    expect(findingsOf(takeOffOf([fence('0 ft', '40 ft')], { line, gates: [gateAt(at, opening)] }))).toContain(
      'gates[0].at: gate-past-the-end',
    )
  })

  test('gates that overlap', () => {
    const gates = [gateAt('20 ft', '4 ft'), gateAt('22 ft', '4 ft')]
    expect(findingsOf(takeOffOf([fence('0 ft', '40 ft')], { line, gates }))).toContain(
      'gates[1]: gates-overlap',
    )
  })

  test('an opening in a section, or between two, is no finding', () => {
    expect(
      findingsOf(takeOffOf([fence('0 ft', '40 ft')], { line, gates: [gateAt('20 ft', '4 ft')] })),
    ).toEqual([])
    const beside = [fence('0 ft', '18 ft'), fence('22 ft', '40 ft')]
    expect(findingsOf(takeOffOf(beside, { line, gates: [gateAt('20 ft', '4 ft')] }))).toEqual([])
  })

  test('an opening in a section only in part, beside it or across the end of two', () => {
    const gates = [gateAt('20 ft', '4 ft')]
    for (const sections of [[fence('0 ft', '20 ft')], [fence('0 ft', '20 ft'), fence('20 ft', '40 ft')]]) {
      const { findings } = takeOffOf(sections, { line, gates })
      expect(findings).toMatchObject([{ path: 'gates[0].at', kind: 'gate-partly-outside', other: 0 }])
    }
  })

  test('a scrap of fence between a gate and the end of its section', () => {
    const found = takeOffOf([fence('0 ft', '24 ft')], { gates: [gateAt('2 ft 3 in', '4 ft')] })
    expect(findingsOf(found)).toEqual(['sections[0]: posts-too-close'])
  })

  test('brace assemblies that need more than the run has', () => {
    const endPosts = { brace: { span: '8 ft' } }
    const found = takeOffOf([fence('0 ft', '12 ft', { buildUp: { ...steelBuildUp, endPosts } })])
    expect(findingsOf(found)).toEqual(['sections[0].buildUp: brace-does-not-fit'])
  })
})

describe('sizes that clash', () => {
  test.each([
    ['a spacing of zero', { spacing: '0 ft' }, ['sections[0].buildUp.posts.spacing: zero']],
    ['no spacing', { spacing: '' }, ['sections[0].buildUp.posts.spacing: missing']],
    ['a hole narrower than its post', { hole: '2 in' }, ['sections[0].buildUp.posts.hole: hole-narrower']],
    ['a hole as wide as its post', { hole: '2 3/8 in' }, []],
    [
      'a square post whose diagonal is wider',
      { shape: 'square', hole: '3 in' },
      ['sections[0].buildUp.posts.hole: hole-narrower'],
    ],
    [
      'a gravel bed higher than the hole',
      { gravel: '37 in' },
      ['sections[0].buildUp.posts.gravel: gravel-fills-hole'],
    ],
    [
      'a wall thicker than half the tube',
      { wall: '2 in' },
      ['sections[0].buildUp.posts.wall: wall-too-thick'],
    ],
    ['no outside size', { outside: '' }, ['sections[0].buildUp.posts.outside: missing']],
    [
      'stock shorter than the post',
      { stock: '8 ft' },
      ['sections[0].buildUp.posts.stock: post-longer-than-stock'],
    ],
    ['stock of zero', { stock: '0 m' }, ['sections[0].buildUp.posts.stock: zero']],
    ['a deduction that leaves nothing', { deduction: '9 ft', top: 'flat' }, ['sections[0]: post-too-short']],
    ['bays to a stock that is not said', { layout: 'stock' }, ['sections[0].buildUp.rails.stock: missing']],
  ])('%s', (_name, more, findings) => {
    expect(findingsOf(takeOffOf([posts(more)]))).toEqual(findings)
  })

  test('a special post is named where it is typed', () => {
    const endPosts = { outside: '6 in', hole: '5 in' }
    expect(
      findingsOf(takeOffOf([fence('0 ft', '24 ft', { buildUp: { ...steelBuildUp, endPosts } })])),
    ).toEqual(['sections[0].buildUp.endPosts.hole: hole-narrower'])
  })

  test('no agreed height', () => {
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft', { height: {} })]))).toEqual([
      'sections[0].height.agreed: missing',
    ])
  })
})

test('findings never touch the statement, and nothing a file may hold makes the take-off throw', () => {
  const bad = [
    posts({ spacing: '0 ft', outside: '0 in', hole: '0 in', wall: '9 ft', depth: '0 in' }),
    {
      ...fence('30 ft', '10 ft'),
      id: 'x',
      measured: [{ post: '0' }, { post: '999999999999', at: '0 m' }, {}],
    },
    {
      ...fence('', ''),
      id: 'y',
      buildUp: { infill: ['roll', 'panel', 'board', 'strip'].map((kind) => ({ kind })) },
    },
    {
      ...fence('0 ft', '9 ft'),
      id: 'z',
      buildUp: {
        rails: { ...pipe, count: '0', stock: '0 m' },
        finishes: [{}],
        lines: [{ basis: 'once', pack: '0' }],
      },
    },
  ]
  const gates = [
    { ...gateAt('0 ft', '0 ft'), buildUp: {} },
    { ...gateAt('3 ft', '400 ft', { buildUp: { leaves: '0', header: {} } }), id: 'g' },
    { ...gateAt('', ''), buildUp: {} },
  ]
  const notebook = notebookOf(bad, {
    gates,
    line: { limits: [{}], error: '', stations: [{}, { at: '0 ft', angle: {} }] },
  })
  const found = takeOff(notebook)
  expect(found.findings.length).toBeGreaterThan(8)
  for (const finding of found.findings) {
    expect(finding.path).toMatch(/^(sections|gates|line)/)
    expect(findingText(notebook, finding)).not.toMatch(/undefined|NaN|\[object/)
  }
  expect(statementOf(notebook).ok).toBe(true)
})
