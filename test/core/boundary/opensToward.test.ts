import { describe, expect, test } from 'vitest'
import { opensToward } from '../../../lib/core/boundary/opensToward.ts'
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
