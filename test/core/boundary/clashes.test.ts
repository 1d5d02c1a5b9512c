import { describe, expect, test } from 'vitest'
import { clashes } from '../../../lib/core/boundary/clashes.ts'
import { clashText } from '../../../lib/words/clashText.ts'
import { halves, notebookWith } from '../madeNotebook.ts'

const station = (at: string, side: string, distance: string) => ({ at, setback: { side, distance } })
const onA = [station('0 ft', 'a', '2 in'), station('100 ft', 'a', '4 in')]
const gate = (more: object) => ({ id: 'g1', name: 'Yard', share: halves, ...more })

describe('what clashes along the line', () => {
  test('is a gate that is said to stand where the fence does not', () => {
    const notebook = notebookWith({
      households: { a: { name: 'No. 1' }, b: { name: 'No. 2' } },
      line: { stations: onA },
      gates: [gate({ at: '50 ft', opening: '4 ft', stands: 'b' })],
    })
    const [clash, ...more] = clashes(notebook)
    expect(more).toEqual([])
    expect(clash).toEqual({ kind: 'gate-on-other-land', gate: 0, said: 'b' })
    expect(clash && clashText(notebook, clash)).toContain(
      'said to stand on the land of No. 2, but by the stations',
    )
  })

  test('is no gate that stands on the line, or where the fence crosses it', () => {
    const crossing = [station('0 ft', 'a', '2 in'), station('100 ft', 'b', '2 in')]
    const place = { at: '50 ft', opening: '4 ft' }
    expect(
      clashes(notebookWith({ line: { stations: onA }, gates: [gate({ ...place, stands: 'line' })] })),
    ).toEqual([])
    expect(
      clashes(notebookWith({ line: { stations: crossing }, gates: [gate({ ...place, stands: 'b' })] })),
    ).toEqual([])
  })

  test('are sections that overlap and a gate past the end, and never an unfinished line', () => {
    const section = (id: string, from: string, to: string) => ({ id, from, to, share: halves })
    const notebook = notebookWith({
      line: { stations: onA },
      sections: [section('s1', '0 ft', '60 ft'), section('s2', '50 ft', '90 ft')],
      gates: [gate({ at: '200 ft', opening: '4 ft', stands: 'line' })],
    })
    expect(
      clashes(notebook)
        .map(({ kind }) => kind)
        .sort(),
    ).toEqual(['gate-past-the-end', 'sections-overlap'])
    expect(clashes(notebookWith({ sections: [{ id: 's1', share: halves }], gates: [gate({})] }))).toEqual([])
  })
})
