import { describe, expect, test } from 'vitest'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { groundSentences } from '../../../lib/words/takeoff/groundText.ts'
import { fence, notebookOf } from '../../core/takeoff/madeFence.ts'

type Data = Record<string, unknown>

function told(stations: readonly Data[], sections = [fence('0 ft', '16 ft')]): readonly string[] {
  const notebook = notebookOf(sections, { line: { stations } })
  return groundSentences(notebook, takeOff(notebook))
}

const level = 'Elsewhere it is taken as level: measure it there before you rely on a height over it.'

describe('what heights over the ground rest on', () => {
  test('is not told where both grounds are written down all along the fence', () => {
    const both = { gradeA: '0 ft', gradeB: '1 ft' }
    expect(
      told([
        { at: '0 ft', ...both },
        { at: '16 ft', ...both },
      ]),
    ).toEqual([])
    // In whatever order they were written down.
    expect(
      told([
        { at: '16 ft', ...both },
        { at: '0 ft', ...both },
      ]),
    ).toEqual([])
    expect(told([], [])).toEqual([])
  })

  test('is level ground where nothing is written down', () => {
    expect(told([{ at: '0 ft' }])).toEqual([
      'No station says a ground height yet, so the ground is taken as level on both sides.',
    ])
  })

  test('names the ground that was measured at one place, or not as far as the fence reaches', () => {
    const a = { gradeA: '0 ft' }
    expect(
      told([
        { at: '0 ft', ...a, gradeB: '-3 in' },
        { at: '16 ft', ...a },
      ]),
    ).toEqual([`The ground of no. 14 is said at 0 ft only. ${level}`])
    expect(
      told([
        { at: '2 ft', ...a, gradeB: '0 ft' },
        { at: '16 ft', gradeB: '0 ft' },
        { at: '12 ft', ...a },
      ]),
    ).toEqual([
      `The ground of no. 12 is said from 2 ft to 12 ft only. ${level}`,
      `The ground of no. 14 is said from 2 ft to 16 ft only. ${level}`,
    ])
  })

  test('says whose ground stands in for one that nobody measured', () => {
    expect(
      told([
        { at: '0 ft', gradeA: '0 ft' },
        { at: '16 ft', gradeA: '1 ft' },
      ]),
    ).toEqual(['The ground of no. 14 is not said: that of no. 12 stands in for it.'])
    expect(
      told([
        { at: '0 ft', gradeA: '0 ft', gradeFence: '0 ft' },
        { at: '16 ft', gradeA: '1 ft' },
      ]),
    ).toEqual([
      `The ground of no. 14 is not said: that under the fence stands in for it, and is said at 0 ft only. ${level}`,
    ])
  })
})
