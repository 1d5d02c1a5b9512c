import { expect, test } from 'vitest'
import { lineBlocks } from '../../lib/words/summary/lineBlocks.ts'
import { notebookWith } from '../pdf/madeSummary.ts'

test('the stations stand in the paper in order along the line, whatever order they were written down in', () => {
  const stations = [
    { at: '', gradeA: '4 in' },
    { at: '0 ft', gradeA: '1 in' },
    { at: "90'", gradeA: '3 in' },
    { at: '9.3 m', gradeA: '2 in' },
  ]
  const tables = lineBlocks(notebookWith({ line: { stations } }).notebook).flatMap((block) =>
    block.kind === 'table' ? [block.rows.map(({ cells }) => [cells[0], cells[2]])] : [],
  )
  expect(JSON.stringify(tables).replace(/\u00a0/g, ' ')).toBe(
    JSON.stringify([
      [
        ['0 ft', '1 in'],
        ['9.3 m', '2 in'],
        ["90'", '3 in'],
        ['–', '4 in'],
      ],
    ]),
  )
})
