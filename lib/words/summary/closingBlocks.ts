import type { Notebook } from '../../core/agreement/notebook.ts'
import { dayWords } from '../day.ts'
import { moneyWords } from '../money.ts'
import { intervalWords, keeperName } from '../upkeepText.ts'
import type { Block } from './block.ts'
import { typedSentence } from './names.ts'
import type { SummaryInput } from './summaryInput.ts'
import { unbroken } from './unbroken.ts'

/** How the fence came out, what was planned and given, and who keeps it up; nothing while the notebook goes on. */
export function closingBlocks(input: SummaryInput): Block[] {
  const { notebook } = input
  const { closing } = notebook
  if (closing === undefined) return []
  return [
    { kind: 'heading', level: 1, id: 'closing', text: 'How the fence came out' },
    {
      kind: 'paragraph',
      text: [
        `The fence stood as it is to stay on ${unbroken(dayWords(closing.on))}. With this the two households close their notebook.`,
        figureWords(input),
        typedSentence(closing.notes),
      ]
        .filter(Boolean)
        .join(' '),
    },
    ...(closing.asBuilt.length === 0
      ? []
      : [
          {
            kind: 'table' as const,
            caption: 'As it was built',
            columns: [{ title: 'What' }, { title: 'Measured' }],
            rows: closing.asBuilt.map(({ what, measured }) => ({
              cells: [what.trim() || notSaid, measured.trim() || notSaid],
            })),
          },
        ]),
    ...upkeepTable(notebook, closing.upkeep),
  ]
}

type Upkeep = NonNullable<Notebook['closing']>['upkeep']

function upkeepTable(notebook: Notebook, upkeep: Upkeep): Block[] {
  if (upkeep.length === 0) return [{ kind: 'paragraph', text: 'No plan for its upkeep was written down.' }]
  return [
    {
      kind: 'table',
      caption: 'Who keeps it up',
      columns: [{ title: 'What' }, { title: 'Who' }, { title: 'How often' }],
      rows: upkeep.map(({ what, household, every }) => ({
        cells: [
          what.trim() || notSaid,
          keeperName(notebook, household),
          every === '' ? 'when it is needed' : intervalWords[every],
        ],
      })),
    },
  ]
}

function figureWords({ notebook, statement, actual = statement }: SummaryInput): string {
  if (!statement.ok || !actual.ok) return ''
  const { total } = statement.value
  const { contributed } = actual.value
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const given = contributed.a + contributed.b
  const outstanding = total - given
  const compared =
    outstanding > 0n
      ? `${money(outstanding)} less than planned, or not entered yet`
      : outstanding < 0n
        ? `${money(-outstanding)} more than planned`
        : 'just what was planned'
  return `It was planned at ${money(total)} in all. The books show ${money(given)} as given: ${compared}.`
}

const notSaid = 'not said'
