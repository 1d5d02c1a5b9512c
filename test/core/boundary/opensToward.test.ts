import { describe, expect, test } from 'vitest'
import { opensToward, whereNamed } from '../../../lib/core/boundary/opensToward.ts'
import { notebookWith } from '../madeNotebook.ts'

const notebook = notebookWith({ households: { a: { name: 'no. 12' }, b: { name: 'Marsh' } } })

describe('a gate opens', () => {
  test.each([
    ['toward household a', ['a']],
    ['Toward Household B', ['b']],
    ['toward no. 12', ['a']],
    ['into the garden of Marsh', ['b']],
    ['both ways', ['a', 'b']],
    ['to both sides', ['a', 'b']],
    ['household a and household b', ['a', 'b']],
  ])('%s', (typed, toward) => {
    expect(opensToward(notebook, typed)).toEqual(toward)
  })
})

describe('a gate shows no swing rather than a guess', () => {
  test.each([
    '',
    'outward',
    'away from household a',
    'not toward household a',
    'toward no. 120',
    'toward Marshall',
  ])('where it says %j', (typed) => {
    expect(opensToward(notebook, typed)).toEqual([])
  })

  test('where the household has no name', () => {
    expect(opensToward(notebookWith({ households: { a: {}, b: {} } }), 'toward the lane')).toEqual([])
  })
})

describe('a household is known by its house number', () => {
  const numbered = notebookWith({
    households: { a: { name: 'Household at no. 7' }, b: { name: 'The Marshes, No. 9b' } },
  })

  test.each([
    ['toward No. 7', ['a']],
    ['toward no 7, by the brook', ['a']],
    ['into number 7', ['a']],
    ['toward no. 9 b', ['b']],
    ['toward no. 77', []],
    ['toward no. 9', []],
    ['not toward no. 7', []],
  ])('%s', (typed, toward) => {
    expect(opensToward(numbered, typed)).toEqual(toward)
  })

  test('but not where both have the same number', () => {
    const same = notebookWith({
      households: { a: { name: 'Upper flat, no. 7' }, b: { name: 'Lower flat, no. 7' } },
    })
    expect(opensToward(same, 'toward no. 7')).toEqual([])
  })

  test('and the place of the name in the text is told', () => {
    expect(whereNamed(numbered, 'a', 'toward No. 7, on a stop')).toEqual({ from: 7, to: 12 })
    expect(whereNamed(numbered, 'b', 'on the side of household b')).toEqual({ from: 15, to: 26 })
    expect(whereNamed(numbered, 'b', 'toward No. 7')).toBeUndefined()
  })
})
