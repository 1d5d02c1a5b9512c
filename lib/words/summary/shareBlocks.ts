import type { Notebook } from '../../core/agreement/notebook.ts'
import { type Hundredths, hoursText } from '../../core/amounts/hours.ts'
import { type Minor, minorUnits } from '../../core/amounts/money.ts'
import type { Fault } from '../../core/faults.ts'
import { households } from '../../core/people/household.ts'
import type { WaitingCap } from '../../core/shares/caps.ts'
import { commonParts } from '../../core/shares/commonParts.ts'
import type { ItemShares } from '../../core/shares/itemShares.ts'
import { digitsOf, type Statement } from '../../core/shares/statement.ts'
import { commonPartsNote, commonPartsTable, commonPartsTitle } from '../commonPartsText.ts'
import { faultText } from '../faultText.ts'
import { householdName } from '../labels.ts'
import { moneyWords } from '../money.ts'
import { capSentence, shareNames, waitingCapSentence } from '../shareText.ts'
import type { Block, TableColumn } from './block.ts'
import { itemsShared } from './costBlocks.ts'
import { householdStart, itemTitle } from './names.ts'
import { placeOfFault } from './placeOfFault.ts'
import type { SummaryInput } from './summaryInput.ts'

/** Who is asked for what in all: by part, in hours, under the caps, and what each brings in money. */
export function shareBlocks(input: SummaryInput): Block[] {
  const { notebook, statement, waitingCaps = [] } = input
  return [
    { kind: 'heading', level: 1, id: 'shares', text: 'Who is asked for what' },
    ...(statement.ok
      ? totalBlocks(notebook, statement.value, waitingCaps)
      : refusedBlocks(input, statement.faults)),
  ]
}

function totalBlocks(notebook: Notebook, statement: Statement, waitingCaps: readonly WaitingCap[]): Block[] {
  if (statement.items.length === 0)
    return [
      { kind: 'paragraph', text: 'There is nothing to share yet.' },
      ...moneyBlocks(notebook, statement),
    ]
  const foot = [
    'All parts',
    ...[statement.total, statement.beforeCaps.a, statement.beforeCaps.b].map((sum) =>
      moneyWords(sum, notebook.currency),
    ),
  ]
  return [
    itemTable(notebook, statement.items, foot),
    ...commonPartsBlocks(notebook, statement.items),
    hoursTable(notebook, statement.items),
    ...capBlocks(notebook, statement, waitingCaps),
    ...moneyBlocks(notebook, statement),
  ]
}

function refusedBlocks(input: SummaryInput, faults: readonly Fault[]): Block[] {
  const { notebook } = input
  const items = itemsShared(input)
  return [
    {
      kind: 'caution',
      title: 'The shares can’t be worked out yet',
      text: 'What stands in the way is listed here. Until it is mended there are no totals, and no balance can be told.',
    },
    {
      kind: 'list',
      items: faults.map((fault) => `${placeOfFault(notebook, fault.path)}: ${faultText(fault)}`),
    },
    ...(items.length === 0
      ? []
      : [
          {
            kind: 'paragraph' as const,
            text: 'These parts can be shared as they stand. A cent may still move when the rest is mended.',
          },
          itemTable(notebook, items),
        ]),
  ]
}

function itemTable(notebook: Notebook, items: readonly ItemShares[], foot?: readonly string[]): Block {
  const money = (minor: Minor) => moneyWords(minor, notebook.currency)
  return {
    kind: 'table',
    caption: 'Each part, and what each household is asked for',
    columns: [{ title: 'Part' }, { title: 'In all', figure: true }, ...askedColumns(notebook)],
    rows: items.map((item) => ({
      cells: [itemTitle(item.kind, item.index, item.name), money(item.total), money(item.a), money(item.b)],
    })),
    ...(foot && { foot }),
  }
}

/** Where common costs are laid on the sections and gates: what each of them comes to with its part. */
function commonPartsBlocks(notebook: Notebook, items: readonly ItemShares[]): Block[] {
  const parts = commonParts(items)
  if (parts === undefined) return []
  const titleOf = (item: ItemShares) => itemTitle(item.kind, item.index, item.name)
  const { columns, rows, foot } = commonPartsTable(parts, titleOf, shareNames(notebook))
  return [
    {
      kind: 'table',
      caption: commonPartsTitle,
      columns: columns.map((title, at) => ({ title, ...(at > 0 && { figure: true }) })),
      rows: rows.map((cells) => ({ cells })),
      foot,
    },
    { kind: 'paragraph', text: commonPartsNote },
  ]
}

function askedColumns(notebook: Notebook): TableColumn[] {
  return households.map((household) => ({
    title: `Asked of ${householdName(notebook, household)}`,
    figure: true,
  }))
}

/** Hours are asked by the exact shares; gifts stand beside them and are in no sum of what is asked. */
function hoursTable(notebook: Notebook, items: readonly ItemShares[]): Block {
  const figures = ({ hours }: ItemShares) => [hours.hours, hours.a, hours.b, hours.gifts.a, hours.gifts.b]
  const sum = (column: number) =>
    items.reduce<Hundredths>((total, item) => total + (figures(item)[column] ?? 0n), 0n)
  return {
    kind: 'table',
    caption: 'Hours of work, and gifts of work',
    columns: [
      { title: 'Part' },
      { title: 'In all', figure: true },
      ...askedColumns(notebook),
      ...households.map((household) => ({
        title: `Gift of ${householdName(notebook, household)}`,
        figure: true,
      })),
    ],
    rows: items.map((item) => ({
      cells: [itemTitle(item.kind, item.index, item.name), ...figures(item).map(hoursText)],
    })),
    foot: ['All parts', ...[0, 1, 2, 3, 4].map((column) => hoursText(sum(column)))],
  }
}

function capBlocks(notebook: Notebook, statement: Statement, waiting: readonly WaitingCap[]): Block[] {
  const digits = digitsOf(notebook)
  const capped = households.flatMap((household) => {
    const cap = notebook.caps[household]
    return cap === undefined
      ? []
      : [{ household, cap: moneyWords(minorUnits(cap, digits), notebook.currency) }]
  })
  if (capped.length === 0)
    return [{ kind: 'paragraph', text: 'No household has set a cap on what it can be asked for.' }]
  const names = shareNames(notebook)
  const moved = capSentence(statement.asked, names)
  const waits = waiting.map((cap) => waitingCapSentence(cap, names))
  return [
    {
      kind: 'paragraph',
      text: [
        ...capped.map(
          ({ household, cap }) =>
            `${householdStart(notebook, household)} has agreed to be asked for no more than ${cap}.`,
        ),
        ...(moved ? [moved] : waits.length > 0 ? [] : ['That moves nothing.']),
        ...waits,
      ].join(' '),
    },
  ]
}

function moneyBlocks(notebook: Notebook, statement: Statement): Block[] {
  const money = (minor: Minor) => moneyWords(minor, notebook.currency)
  const sum = (amounts: { a: Minor; b: Minor }) => money(amounts.a + amounts.b)
  const { asked, promised, inMoney } = statement
  return [
    {
      kind: 'table',
      caption: 'What each household brings, if all goes as planned',
      columns: [
        { title: '' },
        { title: 'Both', figure: true },
        ...households.map((household) => ({ title: householdStart(notebook, household), figure: true })),
      ],
      rows: [
        { cells: ['Asked for, after caps', money(statement.total), money(asked.a), money(asked.b)] },
        { cells: ['Promised in goods and in work', sum(promised), money(promised.a), money(promised.b)] },
      ],
      foot: ['Left to bring in money', sum(inMoney), money(inMoney.a), money(inMoney.b)],
    },
    {
      kind: 'paragraph',
      text: 'A minus in the last row means that the household brings more than it is asked for. It is then due to get that much back.',
    },
  ]
}
