import { describe, expect, test } from 'vitest'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { crossingSentences, setbackRows, stripSentences } from '../../../lib/words/takeoff/setbackText.ts'
import { fence, notebookOf } from '../../core/takeoff/madeFence.ts'

type Data = Record<string, unknown>

function lying(stations: readonly Data[], error = '', length = '16 ft') {
  const notebook = notebookOf([fence('0 ft', length)], { line: { stations, error } })
  return { notebook, found: takeOff(notebook) }
}
const at = (place: string, side: string, distance: string) => ({ at: place, setback: { side, distance } })

describe('land that ends up on the other side', () => {
  test('each household’s own strip, where the fence crosses the line', () => {
    // From 1 ft on the land of a to 1 ft on that of b over 16 ft: two triangles of 8 by 1 ft.
    const { notebook, found } = lying([at('0 ft', 'a', '1 ft'), at('16 ft', 'b', '1 ft')])
    expect(stripSentences(notebook, found)).toEqual([
      'A strip of 4 sq ft of the land of no. 12 ends up on the side of no. 14. It stays the land of no. 12.',
      'A strip of 4 sq ft of the land of no. 14 ends up on the side of no. 12. It stays the land of no. 14.',
    ])
  })

  test('none where the fence stands on the line, and nothing where nobody said', () => {
    const on = lying([at('0 ft', '', '0 in'), at('16 ft', '', '0 in')])
    expect(stripSentences(on.notebook, on.found)).toEqual([
      'No strip of land ends up on the other side of the fence.',
    ])
    const unsaid = lying([{ at: '0 ft' }, { at: '16 ft' }])
    expect(stripSentences(unsaid.notebook, unsaid.found)).toEqual([])
  })
})

describe('holes across the line', () => {
  // Holes of 12 in reach 6 in.
  test('none, even within the error of the line', () => {
    const { notebook, found } = lying([at('0 ft', 'a', '8 in'), at('16 ft', 'a', '8 in')], '2 in')
    expect(crossingSentences(notebook, found)).toEqual([
      'No hole and no post reaches across the line, even if it lies 2 in to either side.',
    ])
  })

  test('some, some unsure, and some of which no station says anything', () => {
    const { notebook, found } = lying([at('0 ft', 'a', '2 in'), at('16 ft', 'a', '10 in')], '1 in', '24 ft')
    expect(crossingSentences(notebook, found)).toEqual([
      'At post 1 the hole or the post itself reaches across the line.',
      'At post 2 it can’t be told if the hole reaches across. The line may lie 1 in to either side.',
      'At post 4 it can’t be told. No station says how far off the line the fence is there.',
    ])
  })

  test('many are counted, not listed', () => {
    const { notebook, found } = lying([at('0 ft', '', '0 in'), at('80 ft', '', '0 in')], '', '80 ft')
    expect(crossingSentences(notebook, found)).toEqual([
      'At 11 posts the hole or the post itself reaches across the line.',
    ])
  })

  test('nothing is said where no post stands', () => {
    const notebook = notebookOf([], { line: { stations: [at('0 ft', 'a', '1 in')] } })
    expect(crossingSentences(notebook, takeOff(notebook))).toEqual([])
  })
})

test('a row for each post', () => {
  const { notebook, found } = lying([at('0 ft', 'b', '4 in'), at('8 ft', '', '0 in')])
  expect(setbackRows(notebook, found)).toEqual([
    { post: '1', at: '0 ft', stands: '4 in on the land of no. 14', reach: '6 in', crosses: 'yes' },
    { post: '2', at: '8 ft', stands: 'on the line', reach: '6 in', crosses: 'yes' },
    { post: '3', at: '16 ft', stands: 'not said yet', reach: '6 in', crosses: 'can’t be told' },
  ])
})
