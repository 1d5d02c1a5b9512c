import { type AskedSoFar, type ItemShares, nothingAsked, placesOf } from '../../core/shares/itemShares.ts'
import { sharedUses } from '../../core/shares/passages.ts'
import { itemSteps, type StepGroup, wholeSteps } from '../shareSteps.ts'
import { shareNames } from '../shareText.ts'
import type { Block } from './block.ts'
import { itemsShared } from './costBlocks.ts'
import { itemTitle } from './names.ts'
import type { SummaryInput } from './summaryInput.ts'

/**
 * The appendix: how every figure comes about, from the cost lines to what the whole fence asks for, in the same steps as
 * on screen. Items with nothing to share have none.
 */
export function stepsBlocks(input: SummaryInput): Block[] {
  const { notebook, statement } = input
  const places = new Map(placesOf(notebook).map((place) => [place.path, place]))
  const shared = itemsShared(input)
  let asked: AskedSoFar = nothingAsked
  const ofItems = shared.flatMap((item): Block[] => {
    const before = asked
    asked = {
      money: { a: asked.money.a + item.a, b: asked.money.b + item.b },
      hours: { a: asked.hours.a + item.hours.a, b: asked.hours.b + item.hours.b },
    }
    const place = places.get(item.path)
    if (place === undefined || (item.total === 0n && item.hours.hours === 0n)) return []
    const names = shareNames(notebook, sharedUses(place.item))
    const id = `steps-${item.kind}-${item.index + 1}`
    return stepsUnder(id, titleOf(item), itemSteps(place.item, item, names, before))
  })
  if (ofItems.length === 0) return []
  const whole = statement.ok
    ? wholeSteps(statement.value, statement.value.items.map(titleOf), shareNames(notebook))
    : []
  return [
    { kind: 'heading', level: 1, id: 'steps', text: 'Appendix: how each figure comes about' },
    {
      kind: 'paragraph',
      text: 'Whoever doubts a figure can redo it here with a pencil, from the cost lines on. A pot is what is shared in one go: the materials of a part, its work, or both together.',
    },
    ...ofItems,
    ...(whole.length === 0 ? [] : stepsUnder('steps-whole', 'All parts together', whole)),
  ]
}

function titleOf({ kind, index, name }: ItemShares): string {
  return itemTitle(kind, index, name)
}

function stepsUnder(id: string, text: string, groups: readonly StepGroup[]): Block[] {
  return [
    { kind: 'heading', level: 2, id, text },
    { kind: 'steps', groups },
  ]
}
