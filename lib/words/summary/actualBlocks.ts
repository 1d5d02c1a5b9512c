import type { Notebook } from '../../core/agreement/notebook.ts'
import type { Minor } from '../../core/amounts/money.ts'
import { type LineStanding, plannedAgainstActual } from '../../core/ledger/plannedAgainstActual.ts'
import { countedThings } from '../../core/ledger/things.ts'
import { households } from '../../core/people/household.ts'
import { digitsOf } from '../../core/shares/statement.ts'
import { differenceOf, lineWords } from '../booksText.ts'
import { householdName } from '../labels.ts'
import { moneyWords } from '../money.ts'
import { thingKindWords } from '../thingText.ts'
import type { Block } from './block.ts'
import { itemTitle } from './names.ts'

/** Planned against actual, line by line, where anything was entered or marked; nothing where there is none. */
export function actualBlocks(notebook: Notebook): Block[] {
  const digits = digitsOf(notebook)
  const money = (minor: Minor) => moneyWords(minor, notebook.currency)
  const { items } = plannedAgainstActual(notebook, digits)
  const rows = items.flatMap((item) =>
    item.lines.filter(isTouched).map((standing) => ({
      cells: [
        `${itemTitle(item.kind, item.index, item.name)}: ${lineWords(standing.line.what)}`,
        money(standing.planned),
        standing.entries.length === 0 ? 'nothing' : money(standing.actual),
        differenceOf(standing.actual, standing.planned, notebook.currency),
        paidWords(notebook, standing),
        countsWords(standing, money),
      ],
    })),
  )
  return [
    ...(rows.length === 0
      ? []
      : [
          {
            kind: 'paragraph' as const,
            text: 'Where both households marked what a line came to, the balance below counts that until both mark another amount. Every other line counts as planned.',
          },
          {
            kind: 'table' as const,
            caption: 'Planned against actual',
            columns: [
              { title: 'Line' },
              { title: 'Planned', figure: true },
              { title: 'Actual', figure: true },
              { title: 'Against the plan' },
              { title: 'Paid by' },
              { title: 'What counts' },
            ],
            rows,
          },
        ]),
    ...thingBlocks(notebook),
  ]
}

/** What both marked is said as an amount once the line has come to something else since. */
function countsWords({ bought, moved, counts }: LineStanding, money: (minor: Minor) => string): string {
  if (moved) return `${money(counts)}, as both marked it`
  return bought ? 'actual' : 'planned'
}

function isTouched({ entries, bought }: LineStanding): boolean {
  return entries.length > 0 || bought
}

function paidWords(notebook: Notebook, { by }: LineStanding): string {
  return households
    .filter((household) => by[household] !== 0n)
    .map(
      (household) => `${householdName(notebook, household)} ${moneyWords(by[household], notebook.currency)}`,
    )
    .join(', ')
}

/** What is kept or was sold at a value that both marked. */
function thingBlocks(notebook: Notebook): Block[] {
  const things = countedThings(notebook, digitsOf(notebook))
  if (things.length === 0) return []
  return [
    {
      kind: 'table',
      caption: 'Tools, leftovers and salvage that somebody keeps or sold',
      columns: [{ title: 'What' }, { title: 'Who has it, or its money' }, { title: 'Value', figure: true }],
      rows: things.map(({ kind, what, household, value }) => ({
        cells: [
          `${thingKindWords[kind]}: ${what}`,
          householdName(notebook, household),
          moneyWords(value, notebook.currency),
        ],
      })),
    },
  ]
}
