import { describe, expect, test } from 'vitest'
import { lengthOf } from '../../lib/core/amounts/length.ts'
import { noMember } from '../../lib/core/takeoff/postSize.ts'
import {
  askedDepthWords,
  forceWords,
  momentWords,
  percentWords,
  roughAreaWords,
  roughWeightWords,
  volumeWords,
  weightWords,
} from '../../lib/words/takeoff/figures.ts'
import { findingName, findingPlace } from '../../lib/words/takeoff/findingPlace.ts'
import { findingText } from '../../lib/words/takeoff/findingText.ts'
import { memberText } from '../../lib/words/takeoff/quantityText.ts'
import { stepText } from '../../lib/words/takeoff/stepText.ts'
import { halves, notebookWith } from '../core/madeNotebook.ts'

describe('figures in the notebook’s units', () => {
  // 1 lb = 0.45359237 kg, 1 ft³ = 28.316846592 L, 1 lbf = 4.4482216152605 N (NIST SP 811).
  test('weights, volumes, moments and forces', () => {
    expect(weightWords(0.45359237 * 12, 'ft-in')).toBe('12 lb')
    expect(weightWords(12.3456, 'metric')).toBe('12.346 kg')
    expect(volumeWords(28.316846592 * 0.6, 'ft-in')).toBe('0.6 cu ft')
    expect(volumeWords(17, 'metric')).toBe('17 L')
    expect(momentWords(4.4482216152605 * 0.3048 * 50, 'ft-in')).toBe('50 lb ft')
    expect(forceWords(444.82216152605, 'ft-in')).toBe('100 lb')
    expect(percentWords(0.4567)).toBe('45.7 %')
  })
})

describe('no finer than it deserves', () => {
  const pounds = (figure: number) => roughWeightWords(figure * 0.45359237, 'ft-in')
  test('a weight has three digits that count, and no whole pound is lost', () => {
    expect([3648.386, 175.545, 94.395, 7.602, 0.8125].map(pounds)).toEqual([
      '3648 lb',
      '176 lb',
      '94.4 lb',
      '7.6 lb',
      '0.813 lb',
    ])
    expect(roughWeightWords(1654.88, 'metric')).toBe('1655 kg')
  })

  test('so has an area', () => {
    expect(roughAreaWords({ over: 15_733n * 92_903_04n, under: 100_000n }, 'ft-in')).toBe('15.7 sq ft')
    expect(roughAreaWords({ over: 1_461_600n, under: 1n }, 'metric')).toBe('1.46 sq m')
  })

  test('a depth that wind asks for is told up to the next inch, unless the hole lies just there', () => {
    const asked = (needed: string, depth: string) =>
      askedDepthWords(lengthOf(needed), lengthOf(depth), 'ft-in')
    expect(asked('6 ft 7 13/16 in', '27 in')).toBe('6 ft 8 in')
    expect(asked('2 ft 8 11/16 in', '2 ft 8 1/2 in')).toBe('2 ft 9 in')
    expect(asked('2 ft 8 11/16 in', '2 ft 8 3/4 in')).toBe('2 ft 8 11/16 in')
    expect(asked('32 in', '36 in')).toBe('2 ft 8 in')
    expect(askedDepthWords(lengthOf('0.8305 m'), lengthOf('1 m'), 'metric')).toBe('0.84 m')
  })
})

describe('a member in words', () => {
  test('its own words, its size and its wall', () => {
    const pipe = {
      ...noMember,
      what: 'reclaimed pipe',
      shape: 'round' as const,
      outside: '2⅜ in',
      wall: '0.154 in',
    }
    expect(memberText(pipe, 'posts')).toBe('reclaimed pipe, 2⅜ in round, wall 0.154 in')
  })

  test('of two sides, and without words', () => {
    const rail = { ...noMember, shape: 'rectangular' as const, outside: '3½ in', thickness: '1½ in' }
    expect(memberText(rail, 'rails')).toBe('rails, 3½ in by 1½ in')
    expect(memberText(noMember, 'posts')).toBe('posts')
  })
})

describe('workings that can be redone with a pencil', () => {
  const step = {
    step: 'equal bays' as const,
    run: lengthOf('100 ft'),
    spacing: lengthOf('8 ft'),
    bays: 13,
    bay: { over: 30480n, under: 13n },
    braces: 0,
  }

  test('100 ft at no more than 8 ft', () => {
    expect(stepText(step, 'ft-in')).toBe('100 ft at no more than 8 ft make 13 equal bays of 7 ft 8 5/16 in.')
    expect(stepText(step, 'metric')).toBe('30.48 m at no more than 2.438 m make 13 equal bays of 2.345 m.')
  })

  test('gravel is reckoned by its beds, without the concrete over them', () => {
    const bed = {
      step: 'gravel beds' as const,
      holes: 4,
      hole: lengthOf('9 1/2 in'),
      gravel: lengthOf('4 in'),
      overbreak: '10',
      litres: 28.316846592 * 0.722,
    }
    expect(stepText(bed, 'ft-in')).toBe(
      '4 holes of 9 1/2 in, each with 4 in of gravel, dug 10 percent larger than drawn: 0.722 cu ft of gravel.',
    )
  })

  test('one is one, and several are several', () => {
    expect(stepText({ step: 'of these', posts: 1 }, 'ft-in')).toBe('1 post of these is of this size.')
    expect(stepText({ step: 'of these', posts: 2 }, 'ft-in')).toBe('2 posts of these are of this size.')
  })
})

test('a measured post is named by its own number, wherever its row stands', () => {
  const measured = [{ post: '7', at: '8 ft' }, { post: '' }]
  const notebook = notebookWith({ sections: [{ id: 's1', name: 'Front', measured, share: halves }] })
  expect(findingPlace(notebook, 'sections[0].measured[0].at')).toBe('Front, post 7 as measured')
  expect(findingPlace(notebook, 'sections[0].measured[1].post')).toBe('Front, measured post in row 2')
})

test.each([
  ['sections[0].buildUp.posts.spacing', 'zero', 'Front, posts, largest spacing'],
  ['sections[0].buildUp.infill[1].opening', 'missing', 'Front, infill 2, mesh opening'],
  ['sections[0].height.agreed', 'missing', 'Front, height, agreed'],
  ['inventory[2].length', 'missing', 'Pieces at hand, piece 3, length'],
  ['line.limits[0].limit', 'missing', 'The line, limit on height 1, limit'],
  ['sections[0].buildUp.posts.hole', 'hole-narrower', 'Front'],
] as const)('what is missing or zero at %s is named in a list: %s, %s', (path, kind, name) => {
  const notebook = notebookWith({ sections: [{ id: 's1', name: 'Front', share: halves }] })
  expect(findingName(notebook, { path, kind })).toBe(name)
})

test('a finding names the numbers that clash and the household by its name', () => {
  const notebook = notebookWith()
  expect(
    findingText(notebook, { kind: 'hole-narrower', hole: lengthOf('2 in'), post: lengthOf('2 3/8 in') }),
  ).toBe('A hole of 2 in is narrower than its post, which is 2 3/8 in across.')
  expect(
    findingText(notebook, {
      kind: 'over-limit',
      at: lengthOf('8 ft'),
      from: 'b',
      height: lengthOf('8 ft'),
      limit: lengthOf('7 ft'),
      saidBy: 'permit office',
    }),
  ).toBe(
    'At 8 ft the fence is 8 ft high over the ground of no. 14; the limit is 7 ft, as said by permit office.',
  )
})
