import type { CostLine, LabourLine, Notebook } from '../../core/agreement/notebook.ts'
import { hoursText } from '../../core/amounts/hours.ts'
import { costLineAmount, labourAmount } from '../../core/amounts/lineAmount.ts'
import { type ItemShares, placesOf } from '../../core/shares/itemShares.ts'
import { sharedUses } from '../../core/shares/passages.ts'
import { digitsOf, shareItems } from '../../core/shares/statement.ts'
import type { ItemAt } from '../../core/takeoff/postLayout.ts'
import type { TakeOff } from '../../core/takeoff/takeOff.ts'
import { typedBesideTakeOff } from '../../core/takeoff/typedBesideTakeOff.ts'
import { rateTitle } from '../arrangementText.ts'
import { costBars } from '../figures/costBars.ts'
import { labourNotes } from '../hoursText.ts'
import { householdName } from '../labels.ts'
import { moneyWords, typedMoneyWords } from '../money.ts'
import { quantityWords } from '../quantityWords.ts'
import { shareNames } from '../shareText.ts'
import { typedByHandWords } from '../takeoff/apartText.ts'
import { basicFenceBlocks } from './basicFenceBlocks.ts'
import type { Block } from './block.ts'
import { figureBlocks } from './figureBlocks.ts'
import { householdStart, itemTitle, spokenList } from './names.ts'
import { potBlocks } from './potBlocks.ts'
import type { SummaryInput } from './summaryInput.ts'
import { unbroken } from './unbroken.ts'

type Place = ReturnType<typeof placesOf>[number]

/** Every item's lines with their amounts, and how the item is shared. */
export function costBlocks(input: SummaryInput, found: TakeOff | undefined): Block[] {
  const { notebook } = input
  const typed = found === undefined ? [] : typedBesideTakeOff(notebook, found)
  const places = placesOf(notebook)
  const shared = itemsShared(input)
  return [
    { kind: 'heading', level: 1, id: 'costs', text: 'What each part costs, and how it is shared' },
    ...(places.length === 0
      ? [{ kind: 'paragraph' as const, text: 'There is nothing to price yet.' }]
      : [
          {
            kind: 'paragraph' as const,
            text: `All money is in ${notebook.currency}. Each line is rounded once. A credit is taken off, so it has a minus.`,
          },
        ]),
    ...(typed.length === 0
      ? []
      : [
          {
            kind: 'paragraph' as const,
            text: typedByHandWords(typed.map((item) => titleAt(notebook, item))),
          },
        ]),
    ...figureBlocks(costBars(shared, new Map(), shareNames(notebook), titleOf)),
    ...places.flatMap((place) =>
      itemBlocks(
        notebook,
        place,
        shared.find((item) => item.path === place.path),
      ),
    ),
  ]
}

function titleAt(notebook: Notebook, { list, index }: ItemAt): string {
  return itemTitle(list === 'sections' ? 'section' : 'gate', index, notebook[list][index]?.name ?? '')
}

function titleOf({ kind, index, name }: ItemShares): string {
  return itemTitle(kind, index, name)
}

/** The items that can be shared, also where the statement as a whole is refused. */
export function itemsShared({ notebook, statement }: SummaryInput): readonly ItemShares[] {
  return statement.ok ? statement.value.items : shareItems(notebook).items
}

function itemBlocks(notebook: Notebook, place: Place, shared: ItemShares | undefined): Block[] {
  const { item, kind, index } = place
  const counted = item.labour.filter((line) => line.counts)
  return [
    { kind: 'heading', level: 2, id: `costs-${kind}-${index + 1}`, text: itemTitle(kind, index, item.name) },
    ...(item.materials.length > 0 ? [materialsTable(notebook, item.materials, shared)] : []),
    ...(counted.length > 0 ? [labourTable(notebook, counted, shared)] : []),
    ...(item.materials.length + counted.length > 0
      ? []
      : [{ kind: 'paragraph' as const, text: 'It has no cost lines and no work lines yet.' }]),
    ...giftBlocks(
      notebook,
      item.labour.filter((line) => !line.counts),
    ),
    ...unpricedBlocks(item.materials, counted),
    ...(shared === undefined
      ? [{ kind: 'paragraph' as const, text: 'How this part is shared can’t be worked out yet.' }]
      : potBlocks(notebook, item, shared, sharedUses(item))),
    ...('basicFence' in item ? basicFenceBlocks(notebook, item) : []),
  ]
}

function materialsTable(
  notebook: Notebook,
  lines: readonly CostLine[],
  shared: ItemShares | undefined,
): Block {
  const digits = digitsOf(notebook)
  return {
    kind: 'table',
    caption: 'Materials',
    columns: [
      { title: 'What' },
      { title: 'Quantity', figure: true },
      { title: 'Price of one', figure: true },
      { title: 'Tax', figure: true },
      { title: 'From' },
      { title: 'Amount', figure: true },
    ],
    rows: lines.map((line) => {
      const amount = costLineAmount(line, digits)
      return {
        cells: [
          line.credit
            ? `${line.what.trim() || 'Not named yet'} (credit)`
            : line.what.trim() || 'Not named yet',
          unbroken(quantityWords(line.quantity, line.unit)),
          line.unitPrice === '' ? notPriced : typedMoneyWords(line.unitPrice, notebook.currency),
          line.taxPercent === '0' ? 'none' : unbroken(`${line.taxPercent} %`),
          suppliedWords(notebook, line),
          line.unitPrice === '' ? notPriced : moneyWords(line.credit ? -amount : amount, notebook.currency),
        ],
      }
    }),
    ...(shared && {
      foot: ['Materials in all', '', '', '', '', moneyWords(shared.materialsTotal, notebook.currency)],
    }),
  }
}

/** A credit that nobody "supplied" was paid back to whoever bought. */
function suppliedWords(notebook: Notebook, line: CostLine): string {
  if (line.suppliedBy === 'bought') return line.credit ? 'paid back' : 'bought'
  return line.credit
    ? `kept by ${householdName(notebook, line.suppliedBy)}`
    : `given by ${householdName(notebook, line.suppliedBy)}`
}

function labourTable(
  notebook: Notebook,
  lines: readonly LabourLine[],
  shared: ItemShares | undefined,
): Block {
  const digits = digitsOf(notebook)
  return {
    kind: 'table',
    caption: 'Work',
    columns: [
      { title: 'Task' },
      { title: 'Who' },
      { title: 'Hours', figure: true },
      { title: rateTitle, figure: true },
      { title: 'Amount', figure: true },
    ],
    rows: lines.map((line) => ({
      cells: [
        [line.task.trim() || 'Not named yet', ...labourNotes(line)].join(', '),
        line.by === 'hired' ? 'hired' : householdName(notebook, line.by),
        line.hours,
        line.rate === '' ? notPriced : typedMoneyWords(line.rate, notebook.currency),
        line.rate === '' ? notPriced : moneyWords(labourAmount(line, digits), notebook.currency),
      ],
    })),
    ...(shared && {
      foot: [
        'Work in all',
        '',
        hoursText(shared.hours.hours),
        '',
        moneyWords(shared.labourTotal, notebook.currency),
      ],
    }),
  }
}

const notPriced = 'not priced yet'

function giftBlocks(notebook: Notebook, gifts: readonly LabourLine[]): Block[] {
  if (gifts.length === 0) return []
  return [
    { kind: 'paragraph', text: 'These hours are gifts. They are in no sum, and nobody is asked for them:' },
    {
      kind: 'list',
      items: gifts.map((gift) => {
        const giver = gift.by === 'hired' ? 'A hired hand' : householdStart(notebook, gift.by)
        const task = gift.task.trim() === '' ? '' : ` for this: ${gift.task.trim()}`
        return `${giver} gives ${unbroken(`${gift.hours} h`)}${task}. Thank you.`
      }),
    },
  ]
}

function unpricedBlocks(materials: readonly CostLine[], labour: readonly LabourLine[]): Block[] {
  const unpriced = [
    ...materials.filter((line) => line.unitPrice === '').map((line) => line.what),
    ...labour.filter((line) => line.rate === '').map((line) => line.task),
  ].map((name) => name.trim() || 'a line with no name')
  if (unpriced.length === 0) return []
  return [
    { kind: 'paragraph', text: `Not priced yet, and counted as nothing so far: ${spokenList(unpriced)}.` },
  ]
}
