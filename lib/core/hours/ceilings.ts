import type { LabourLine, Notebook } from '../agreement/notebook.ts'
import { type ExactHours, exactHours, sameTask } from './ownHours.ts'

/**
 * The most hours that count for a task of an item. Lines of the same words add their ceilings; where one of them has
 * none, there is none. `undefined`: no ceiling. Gifts have none, since they are in no sum.
 */
export function ceilingOf(labour: readonly LabourLine[], task: string): ExactHours | undefined {
  const lines = labour.filter((line) => line.counts && sameTask(line.task, task))
  if (lines.length === 0 || lines.some(({ ceiling }) => ceiling === '')) return undefined
  return lines.reduce((sum, { ceiling }) => sum + exactHours(ceiling), 0n)
}

/** Where ceilings are said: what all have signed, if anything, and the draft with the ids of items that both marked in it. */
export type AgreedCeilings = {
  readonly signed: Notebook | undefined
  readonly draft: Notebook
  readonly markedByBoth: ReadonlySet<string>
}

/**
 * The ceiling that holds for a task now: the one that all have signed; more than that once both have marked the item
 * with a higher one, or with none; the draft's where nothing is signed, or the task is new. Nobody lowers it alone.
 */
export function ceilingThatHolds(
  { signed, draft, markedByBoth }: AgreedCeilings,
  itemId: string,
  task: string,
): ExactHours | undefined {
  const inDraft = labourOf(draft, itemId)
  const inSigned = signed === undefined ? [] : labourOf(signed, itemId)
  if (!inSigned.some((line) => sameTask(line.task, task))) return ceilingOf(inDraft, task)
  const agreed = ceilingOf(inSigned, task)
  if (agreed === undefined || !markedByBoth.has(itemId)) return agreed
  if (!inDraft.some((line) => sameTask(line.task, task))) return agreed
  const more = ceilingOf(inDraft, task)
  return more === undefined || more > agreed ? more : agreed
}

function labourOf(notebook: Notebook, itemId: string): readonly LabourLine[] {
  const items = [...notebook.sections, ...notebook.gates, ...notebook.common]
  return items.find(({ id }) => id === itemId)?.labour ?? []
}
