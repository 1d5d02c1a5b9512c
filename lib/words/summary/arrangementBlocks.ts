import type { Arrangements, Notebook } from '../../core/agreement/notebook.ts'
import { minorUnits } from '../../core/amounts/money.ts'
import { digitsOf } from '../../core/shares/statement.ts'
import {
  arrangementsTitle,
  comparedWords,
  quoteWords,
  rateTitle,
  skillWords,
  toleranceWords,
} from '../arrangementText.ts'
import { dayWords } from '../day.ts'
import { moneyWords, typedMoneyWords } from '../money.ts'
import type { Block } from './block.ts'
import { householdStart, typedSentence } from './names.ts'
import { unbroken } from './unbroken.ts'

/** What is agreed about money and hours beside the shares; nothing where the households left it open. */
export function arrangementBlocks(notebook: Notebook): Block[] {
  const { arrangements } = notebook
  if (arrangements === undefined) return []
  const { tolerance, notes } = arrangements
  return [
    { kind: 'heading', level: 1, id: 'arrangements', text: arrangementsTitle },
    ...rateBlocks(notebook, arrangements),
    {
      kind: 'paragraph',
      text: [toleranceWords(tolerance), typedSentence(notes)].filter(Boolean).join(' '),
    },
    ...instalmentBlocks(notebook, arrangements),
  ]
}

function rateBlocks(notebook: Notebook, { rates }: Arrangements): Block[] {
  const agreed = (['skilled', 'plain'] as const).flatMap((skill) => {
    const rate = rates[skill]
    return rate === undefined || rate.rate === '' ? [] : [{ skill, rate }]
  })
  if (agreed.length === 0) return [{ kind: 'paragraph', text: 'No rate for an hour of work is agreed.' }]
  return [
    {
      kind: 'table',
      caption: 'Agreed rates for an hour of work, held against local quotes',
      columns: [
        { title: 'For' },
        { title: rateTitle, figure: true },
        { title: 'Local quote' },
        { title: 'The rate is' },
      ],
      rows: agreed.map(({ skill, rate }) => ({
        cells: [
          skillWords[skill],
          typedMoneyWords(rate.rate, notebook.currency),
          quoteWords(rate, notebook.currency),
          comparedWords(rate) ?? '–',
        ],
      })),
    },
  ]
}

function instalmentBlocks(notebook: Notebook, { instalments }: Arrangements): Block[] {
  if (instalments === undefined) return []
  const money = (typed: string) => moneyWords(minorUnits(typed, digitsOf(notebook)), notebook.currency)
  return [
    {
      kind: 'table',
      caption: `${householdStart(notebook, instalments.from)} pays in instalments`,
      columns: [{ title: 'Due on' }, { title: 'Amount', figure: true }],
      rows: instalments.parts.map(({ on, amount }) => ({ cells: [unbroken(dayWords(on)), money(amount)] })),
      foot: ['In all', money(instalments.total)],
    },
  ]
}
