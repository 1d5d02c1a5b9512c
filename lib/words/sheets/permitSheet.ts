import type { Notebook, Section } from '../../core/agreement/notebook.ts'
import { lengthOf } from '../../core/amounts/length.ts'
import { setbackAlong } from '../../core/boundary/setbackAlong.ts'
import { highestSeen } from '../../core/takeoff/highestSeen.ts'
import type { TakeOff } from '../../core/takeoff/takeOff.ts'
import { dayWords } from '../day.ts'
import { evidenceWords, householdName } from '../labels.ts'
import { lengthWords } from '../length.ts'
import type { Block } from '../summary/block.ts'
import { setbackRange } from '../summary/buildBlocks.ts'
import { householdsNamed } from '../summary/householdsNamed.ts'
import { itemTitle } from '../summary/names.ts'
import { standingWords } from '../summary/openingBlocks.ts'
import type { SummaryInput } from '../summary/summaryInput.ts'
import { unbroken } from '../summary/unbroken.ts'
import { groundSentences } from '../takeoff/groundText.ts'
import { limitSentences } from '../takeoff/heightText.ts'
import { partyTable } from './partyTable.ts'
import type { SheetBlock } from './sheetBlock.ts'

/**
 * One page for a permit office: what stands where relative to the line, how high from each side, of what, where the water
 * goes, and what was asked and answered. No costs, hours or shares.
 *
 * @param takeOff of the same notebook
 */
export function permitSheet({ notebook, standing }: SummaryInput, takeOff: TakeOff): SheetBlock[] {
  return [
    {
      kind: 'title',
      text: 'Sheet for a permit office',
      standing: standingWords(standing),
    },
    { kind: 'paragraph', text: lineWords(notebook) },
    partyTable(notebook),
    sectionTable(notebook, takeOff),
    ...gateTable(notebook),
    ...[...groundSentences(notebook, takeOff), ...limitSentences(notebook, takeOff)].map(
      (text): Block => ({ kind: 'paragraph', text }),
    ),
    ...checkTable(notebook),
    {
      kind: 'paragraph',
      text: 'Two households made this sheet from their own notes. It is no survey and no permit. Heights are worked out from the ground heights that they wrote down.',
    },
  ]
}

function lineWords({ line }: Notebook): string {
  const ends = `The fence stands along a boundary line from ${line.start.trim() || 'a start that is not described'} to ${line.end.trim() || 'an end that is not described'}.`
  const rests =
    line.evidence === ''
      ? 'What the position of the line rests on is not said.'
      : `The position of the line rests on ${evidenceWords[line.evidence]}.`
  const error = line.error === '' ? '' : ` It may lie ${unbroken(line.error)} to either side.`
  return `${ends} ${rests}${error}`
}

function sectionTable(notebook: Notebook, takeOff: TakeOff): Block {
  return {
    kind: 'table',
    caption:
      'What stands where. Distances run along the line from its start; each height is the greatest in its stretch.',
    columns: [
      { title: 'Stretch' },
      { title: 'Middle of the fence' },
      { title: `Seen by ${householdName(notebook, 'a')}`, figure: true },
      { title: `Seen by ${householdName(notebook, 'b')}`, figure: true },
      { title: 'Of what' },
      { title: 'Water' },
    ],
    rows: notebook.sections.map((section, index) => {
      const seen = highestSeen(notebook, index, takeOff)
      const high = (side: 'a' | 'b') => (seen ? unbroken(lengthWords(seen[side], notebook.units)) : notSaid)
      return {
        cells: [
          `${itemTitle('section', index, section.name)}, ${stretchWords(section)}`,
          setbackWords(notebook, section),
          high('a'),
          high('b'),
          [section.face, section.infill]
            .map((text) => text.trim())
            .filter(Boolean)
            .join('; ') || notSaid,
          householdsNamed(notebook, section.drainage).trim() || notSaid,
        ],
      }
    }),
  }
}

function stretchWords({ from, to }: Section): string {
  return from === '' || to === '' ? 'it is not said where' : `${unbroken(from)} to ${unbroken(to)}`
}

function setbackWords(notebook: Notebook, { from, to }: Section): string {
  const along =
    from === '' || to === '' ? undefined : setbackAlong(notebook.line.stations, lengthOf(from), lengthOf(to))
  if (along === undefined) return notSaid
  const range = setbackRange(notebook, along.least, along.most)
  return along.whole ? range : `${range}; of a part of it nothing is said`
}

function gateTable(notebook: Notebook): Block[] {
  if (notebook.gates.length === 0) return []
  const stands = {
    line: 'in the fence on the line',
    a: `on the land of ${householdName(notebook, 'a')}`,
    b: `on the land of ${householdName(notebook, 'b')}`,
    '': notSaid,
  }
  return [
    {
      kind: 'table',
      caption: 'Gates',
      columns: [
        { title: 'Gate' },
        { title: 'Its middle at', figure: true },
        { title: 'Clear opening', figure: true },
        { title: 'Stands' },
        { title: 'Opens' },
      ],
      rows: notebook.gates.map((gate, index) => ({
        cells: [
          itemTitle('gate', index, gate.name),
          gate.at === '' ? notSaid : unbroken(gate.at),
          gate.opening === '' ? notSaid : unbroken(gate.opening),
          stands[gate.stands],
          householdsNamed(notebook, gate.opens).trim() || notSaid,
        ],
      })),
    },
  ]
}

function checkTable(notebook: Notebook): Block[] {
  if (notebook.checks.length === 0) return []
  return [
    {
      kind: 'table',
      caption: 'What was asked, and what was said',
      columns: [{ title: 'What' }, { title: 'Day' }, { title: 'Answer' }],
      rows: notebook.checks.map(({ what, on, answer, reference, done }) => ({
        cells: [
          what.trim() || notSaid,
          on === '' ? '–' : unbroken(dayWords(on)),
          [done ? answer.trim() || 'Done.' : 'Still open.', reference.trim() && `See ${reference.trim()}.`]
            .filter(Boolean)
            .join(' '),
        ],
      })),
    },
  ]
}

const notSaid = 'not said'
