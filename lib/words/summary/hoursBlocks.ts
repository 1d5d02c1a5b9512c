import type { Notebook } from '../../core/agreement/notebook.ts'
import { countsAlready } from '../../core/hours/conversions.ts'
import { hoursByTask, hoursForNoItem } from '../../core/hours/hoursByTask.ts'
import { hoursTotals } from '../../core/hours/hoursTotals.ts'
import { households } from '../../core/people/household.ts'
import { placesOf } from '../../core/shares/itemShares.ts'
import { hoursBars } from '../figures/hoursBars.ts'
import { beyondLabel, conversionWords, hoursAskedWords, hoursFigure, leftLabel } from '../hoursText.ts'
import { shareNames } from '../shareText.ts'
import type { Block } from './block.ts'
import { itemsShared } from './costBlocks.ts'
import { figureBlocks } from './figureBlocks.ts'
import { capitalised, householdStart, itemTitle } from './names.ts'
import type { SummaryInput } from './summaryInput.ts'

/** Hours asked, given and left of them, and what was turned into money; nothing before any were given or turned. */
export function hoursBlocks(input: SummaryInput): Block[] {
  const { notebook } = input
  const agreed = notebook.books.conversions.filter(countsAlready)
  const given = notebook.contributions.some(({ kind, struck }) => kind === 'hours' && struck === undefined)
  if (!given && agreed.length === 0) return []
  const items = hoursByTask(notebook, itemsShared(input), notebook.books.conversions)
  const totals = hoursTotals(items, hoursForNoItem(notebook))
  return [
    { kind: 'heading', level: 2, id: 'hours-given', text: 'Hours of work given so far' },
    ...figureBlocks(hoursBars(totals, shareNames(notebook))),
    {
      kind: 'table',
      caption: 'Hours asked, given and left',
      columns: [
        { title: '' },
        ...['Asked', 'Of it hired', 'Given', leftLabel, beyondLabel, 'Gifts'].map((title) => ({
          title,
          figure: true,
        })),
      ],
      rows: households.map((household) => {
        const { asked, hired, given, still, own, gifts } = totals[household]
        return {
          cells: [
            householdStart(notebook, household),
            ...[asked, hired, given, still, own, gifts].map(hoursFigure),
          ],
        }
      }),
    },
    {
      kind: 'paragraph',
      text: `${hoursAskedWords} Hired work is met in money, so nobody has to give it. Hours beyond a ceiling are those beyond what was agreed for a task. They count as nothing. A minus means that more was given than asked.`,
    },
    ...(agreed.length === 0
      ? []
      : [
          {
            kind: 'list' as const,
            items: agreed.map(
              (one) =>
                `${capitalised(conversionWords(notebook, one, titleOf(notebook, one.item)))}. Both agreed to it.`,
            ),
          },
        ]),
  ]
}

function titleOf(notebook: Notebook, id: string): string {
  const place = placesOf(notebook).find(({ item }) => item.id === id)
  return place === undefined ? id : itemTitle(place.kind, place.index, place.item.name)
}
