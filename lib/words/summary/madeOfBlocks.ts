import type { ItemKind, Notebook } from '../../core/agreement/notebook.ts'
import type { ItemAt } from '../../core/takeoff/postLayout.ts'
import type { Quantity } from '../../core/takeoff/quantity.ts'
import { anythingOfSite } from '../../core/takeoff/siteFigures.ts'
import type { TakeOff } from '../../core/takeoff/takeOff.ts'
import { weightsOf } from '../../core/takeoff/weights.ts'
import { quantityWords } from '../quantityWords.ts'
import { many, percentWords, roughWeightWords } from '../takeoff/figures.ts'
import { quantityText } from '../takeoff/quantityText.ts'
import { frostSentence, windCatching, windCaution, windOutcome } from '../takeoff/windText.ts'
import type { Block } from './block.ts'
import { itemTitle } from './names.ts'
import { figuresJoined, unbroken } from './unbroken.ts'

/**
 * What sections and gates are made of, with weights, and what the look at wind found. Nothing where no build-up is said: such
 * a paper stays as it always was.
 */
export function madeOfBlocks(notebook: Notebook, found: TakeOff | undefined): Block[] {
  if (found === undefined || found.sections.length + found.gates.length === 0) return []
  const items = [
    ...found.sections.map(({ parts, quantities }) => ({ item: parts.item, quantities })),
    ...found.gates,
  ]
  return [
    { kind: 'heading', level: 1, id: 'made-of', text: 'What it is made of' },
    {
      kind: 'paragraph',
      text: 'This is worked out from the sizes in this notebook. It is for planning and is no design. Each weight is rounded once.',
    },
    ...items.flatMap(({ item, quantities }) => itemBlocks(notebook, item, quantities)),
    { kind: 'paragraph', text: figuresJoined(weightWords(notebook, found)) },
    ...windBlocks(notebook, found),
  ]
}

function itemBlocks(notebook: Notebook, item: ItemAt, quantities: readonly Quantity[]): Block[] {
  const { title, kind } = titleOf(notebook, item)
  const heading: Block = { kind: 'heading', level: 2, id: `made-of-${kind}-${item.index + 1}`, text: title }
  if (quantities.length === 0)
    return [heading, { kind: 'paragraph', text: 'Nothing can be worked out for it yet.' }]
  return [heading, quantityTable(notebook, quantities)]
}

function quantityTable({ units }: Notebook, quantities: readonly Quantity[]): Block {
  const { kilograms } = weightsOf(quantities)
  return {
    kind: 'table',
    caption: 'What it takes',
    columns: [{ title: 'What' }, { title: 'Quantity', figure: true }, { title: 'Weight', figure: true }],
    rows: quantities.map((quantity) => ({
      cells: [
        whatWords(quantity),
        unbroken(quantityWords(quantity.quantity, quantity.unit)),
        quantity.kilograms === undefined ? '–' : unbroken(roughWeightWords(quantity.kilograms, units)),
      ],
    })),
    ...(kilograms === 0
      ? {}
      : { foot: ['Total of what has a weight', '', unbroken(roughWeightWords(kilograms, units))] }),
  }
}

function whatWords({ name, reclaimed }: Quantity): string {
  const what = quantityText(name)
  return reclaimed && !/reclaimed/i.test(what) ? `${what} (reclaimed)` : what
}

function weightWords({ units }: Notebook, { weights }: TakeOff): string {
  const { kilograms, reclaimedKilograms, reclaimedShare, unknown } = weights
  if (kilograms === 0) return 'No weight is known yet.'
  return [
    `All that has a weight comes to ${roughWeightWords(kilograms, units)}.`,
    reclaimedKilograms === 0
      ? 'None of it is reclaimed.'
      : `Of this ${roughWeightWords(reclaimedKilograms, units)} is reclaimed, ${percentWords(reclaimedShare)} by weight.`,
    unknown === 0 ? '' : `For ${many(unknown, 'line')} no weight is known.`,
  ]
    .filter(Boolean)
    .join(' ')
}

/** Only where something is said of wind, soil or frost. */
function windBlocks(notebook: Notebook, { wind }: TakeOff): Block[] {
  if (!anythingOfSite(notebook) || wind.length === 0) return []
  return [
    { kind: 'heading', level: 2, id: 'wind-and-posts', text: 'Wind and posts' },
    ...wind.map(
      (check): Block => ({
        kind: 'paragraph',
        text: figuresJoined(
          [
            `${titleOf(notebook, check.item).title}.`,
            windOutcome(notebook, check),
            ...windCatching(check),
            frostSentence(notebook, check),
          ]
            .filter(Boolean)
            .join(' '),
        ),
      }),
    ),
    { kind: 'caution', title: 'A rough look, no approval', text: windCaution },
  ]
}

function titleOf(
  notebook: Notebook,
  { list, index }: ItemAt,
): { readonly title: string; readonly kind: ItemKind } {
  const kind = list === 'sections' ? 'section' : 'gate'
  return { title: itemTitle(kind, index, notebook[list][index]?.name ?? ''), kind }
}
