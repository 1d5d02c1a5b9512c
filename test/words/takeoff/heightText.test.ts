import { describe, expect, test } from 'vitest'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { heightRows, heightTitles, limitSentences } from '../../../lib/words/takeoff/heightText.ts'
import { fence, notebookOf } from '../../core/takeoff/madeFence.ts'

type Data = Record<string, unknown>

const stations = [
  { at: '0 ft', gradeA: '0 ft', gradeB: '2 ft' },
  { at: '16 ft', gradeA: '0 ft', gradeB: '0 ft' },
]

function limited(...limits: readonly Data[]): readonly string[] {
  const notebook = notebookOf([fence('0 ft', '16 ft')], { line: { stations, limits } })
  return limitSentences(notebook, takeOff(notebook))
}

describe('limits in words', () => {
  test('from each household’s own ground where nobody said from which', () => {
    // 6 ft over the higher ground: 8 ft over that of a at the beginning.
    expect(limited({ limit: '7 ft' })).toEqual([
      'The limit is 7 ft over the ground of no. 12. The fence is 8 ft high there at most, at the start of the line: that is over the limit.',
      'The limit is 7 ft over the ground of no. 14. The fence is 6 ft high there at most, at the start of the line: that is within it.',
    ])
  })

  test('from the higher and the lower ground', () => {
    expect(
      limited({ limit: '6 ft', measuredFrom: 'higher' }, { limit: '6 ft', measuredFrom: 'lower' }),
    ).toEqual([
      'The limit is 6 ft over the higher ground. The fence is 6 ft high there at most, at the start of the line: that is within it.',
      'The limit is 6 ft over the lower ground. The fence is 8 ft high there at most, at the start of the line: that is over the limit.',
    ])
  })

  test('within its stretch, with who said it and when', () => {
    const said = { saidBy: 'the town hall', on: '2027-04-30', measuredFrom: 'a' }
    expect(limited({ from: '8 ft', to: '16 ft', limit: '7 ft', ...said })).toEqual([
      'The limit from 8 ft to 16 ft is 7 ft over the ground of no. 12, as said by the town hall on 30 April 2027. The fence is 7 ft high there at most, at 8 ft: that is within it.',
    ])
  })

  test('nothing of a limit without a figure, or where nothing stands', () => {
    expect(limited({ limit: '' }, { limit: '7 ft', from: '20 ft', to: '30 ft' })).toEqual([])
  })
})

test('a row for each place, as each household sees it', () => {
  const notebook = notebookOf([fence('0 ft', '16 ft')], { line: { stations, limits: [] } })
  expect(heightTitles(notebook)).toMatchObject({ a: 'Seen by no. 12', b: 'Seen by no. 14' })
  expect(heightRows(notebook, takeOff(notebook))).toEqual([
    { at: '0 ft', place: 'station 1', a: '8 ft', b: '6 ft' },
    { at: '0 ft', place: 'post 1', a: '8 ft', b: '6 ft' },
    { at: '8 ft', place: 'post 2', a: '7 ft', b: '6 ft' },
    { at: '16 ft', place: 'station 2', a: '6 ft', b: '6 ft' },
    { at: '16 ft', place: 'post 3', a: '6 ft', b: '6 ft' },
  ])
})
