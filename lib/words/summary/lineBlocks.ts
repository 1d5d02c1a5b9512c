import type { Notebook, Station } from '../../core/agreement/notebook.ts'
import { stationsInOrder } from '../../core/boundary/stationsInOrder.ts'
import { evidenceWords, householdName } from '../labels.ts'
import type { Block } from './block.ts'
import { drawingDescription } from './drawingDescription.ts'
import { unbroken } from './unbroken.ts'

/** The line, what its position rests on, its stations, and the place of the drawing. */
export function lineBlocks(notebook: Notebook): Block[] {
  const { line } = notebook
  return [
    { kind: 'heading', level: 1, id: 'line', text: 'The line' },
    { kind: 'paragraph', text: lineWords(notebook) },
    ...evidenceCaution(notebook),
    ...(line.stations.length === 0
      ? [{ kind: 'paragraph' as const, text: 'No station has been set on the line yet.' }]
      : [stationTable(notebook)]),
    { kind: 'heading', level: 1, id: 'drawing', text: 'The drawing' },
    drawingDescription(notebook),
  ]
}

function lineWords({ line }: Notebook): string {
  const start =
    line.start.trim() === '' ? 'Its start has not been described yet' : `It starts at: ${line.start.trim()}`
  const end = line.end.trim() === '' ? 'Its end has not been described yet' : `It ends at: ${line.end.trim()}`
  const evidence =
    line.evidence === ''
      ? 'The households have not said yet what its position rests on'
      : `Its position rests on ${evidenceWords[line.evidence]}`
  return `${[start, end, evidence].join('. ')}. The line is where one household’s land ends and the other’s begins. The fence may stand beside it. All distances are level and run along the line from its start.`
}

function evidenceCaution({ line }: Notebook): Block[] {
  if (line.evidence === 'survey') return []
  return [
    {
      kind: 'caution',
      title: 'The place of the line is not sure',
      text: 'No licensed surveyor has found this line for this paper. Have it found before you build. If you sign over a line that is in doubt, your fence can in some places become the boundary.',
    },
  ]
}

function stationTable(notebook: Notebook): Block {
  return {
    kind: 'table',
    caption: 'Stations along the line, as written down. Ground heights are above one common level.',
    columns: [
      { title: 'At', figure: true },
      { title: 'Middle of the fence' },
      { title: `Ground of ${householdName(notebook, 'a')}`, figure: true },
      { title: 'Ground under the fence', figure: true },
      { title: `Ground of ${householdName(notebook, 'b')}`, figure: true },
    ],
    rows: stationsInOrder(notebook.line.stations).map((station) => ({
      cells: [
        typed(station.at),
        setbackWords(notebook, station),
        typed(station.gradeA),
        typed(station.gradeFence),
        typed(station.gradeB),
      ],
    })),
  }
}

function setbackWords(notebook: Notebook, { setback }: Station): string {
  if (setback === undefined || setback.distance === '') return 'not said yet'
  const distance = unbroken(setback.distance)
  return setback.side === ''
    ? `${distance} from the line`
    : `${distance} on the land of ${householdName(notebook, setback.side)}`
}

function typed(length: string): string {
  return length === '' ? '–' : unbroken(length)
}
