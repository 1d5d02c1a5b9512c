import type { Contribution, LabourLine } from '../agreement/notebook.ts'
import type { ForBoth, Household } from '../people/household.ts'
import { placesOf } from '../shares/itemShares.ts'
import { type AgreedCeilings, ceilingThatHolds } from './ceilings.ts'
import { rowKindOf } from './hoursByTask.ts'
import { countedSoFar, type ExactHours, ownHours, sameTask } from './ownHours.ts'

/** A task that hours can be entered for. */
export type WorkableTask = {
  readonly item: string
  readonly task: string
  /** The rate of each household's own line, else of any line that counts; empty: none, or a gift. */
  readonly rate: ForBoth<string>
  readonly gift: ForBoth<boolean>
  readonly ceiling: ExactHours | undefined
  /** What of the ceiling is taken up. */
  readonly counted: ExactHours
}

/** Every named task of the draft, with the ceiling that holds for it now. */
export function workableTasks(ceilings: AgreedCeilings): readonly WorkableTask[] {
  const { draft } = ceilings
  return placesOf(draft).flatMap(({ item }) => {
    const names = new Set(item.labour.map(({ task }) => task.trim()).filter((task) => task !== ''))
    return [...names].map((task) => {
      const gift = (household: Household) => rowKindOf(item.labour, { household, task }) === 'gift'
      const rate = (household: Household) => (gift(household) ? '' : rateFor(item.labour, task, household))
      return {
        item: item.id,
        task,
        rate: { a: rate('a'), b: rate('b') },
        gift: { a: gift('a'), b: gift('b') },
        ceiling: ceilingThatHolds(ceilings, item.id, task),
        counted: countedSoFar(draft.contributions, item.id, task),
      }
    })
  })
}

function rateFor(labour: readonly LabourLine[], task: string, household: Household): string {
  const lines = labour.filter((line) => line.counts && sameTask(line.task, task))
  const own = lines.find((line) => line.by === household && line.rate !== '')
  return (own ?? lines.find((line) => line.rate !== ''))?.rate ?? ''
}

/** What is to be said of a new hours entry before it is made. */
export type EntryStanding =
  | { readonly kind: 'counts'; readonly own: ExactHours; readonly task: WorkableTask | undefined }
  | { readonly kind: 'no such task' }
  | { readonly kind: 'gift with a rate' }

/** How a new hours entry stands to the tasks of its item. A gift has no ceiling, and no rate. */
export function standingOfEntry(
  ceilings: AgreedCeilings,
  entry: Pick<Contribution, 'household' | 'for' | 'task' | 'rate'>,
  hours: ExactHours,
): EntryStanding {
  if (entry.task.trim() === '') return { kind: 'counts', own: 0n, task: undefined }
  const task = workableTasks(ceilings).find((one) => one.item === entry.for && sameTask(one.task, entry.task))
  if (task === undefined) return { kind: 'no such task' }
  if (task.gift[entry.household])
    return entry.rate === '' ? { kind: 'counts', own: 0n, task } : { kind: 'gift with a rate' }
  return { kind: 'counts', own: ownHours(hours, task.ceiling, task.counted), task }
}
