import type { Contribution, Notebook } from '../agreement/notebook.ts'
import { isNumber, scaledInteger } from '../amounts/typedNumber.ts'
import { placesOf } from '../shares/itemShares.ts'
import { sameTask } from './ownHours.ts'
import { agreedRates } from './rates.ts'

/** Hours that count in the book at another rate than was agreed. They count as they were entered: this is for a notice. */
export type OtherRate = {
  /** Place in the book. */
  readonly index: number
  readonly entry: Contribution
  /** The rate of the task's own lines, as typed; empty: the entry names no task that has one. */
  readonly ofTask: readonly string[]
}

/**
 * Entries of hours whose rate is neither that of their task in the plan nor, where they name no task that has a rate, one of
 * the agreed rates. None where nothing is agreed to hold them against. In the order of the book.
 */
export function hoursAtOtherRates(notebook: Notebook): readonly OtherRate[] {
  const { skilled, plain } = agreedRates(notebook.arrangements)
  return notebook.contributions.flatMap((entry, index): OtherRate[] => {
    if (entry.kind !== 'hours' || entry.struck !== undefined || !isNumber(entry.rate, 6)) return []
    const ofTask = ratesOfTask(notebook, entry)
    const agreed = (ofTask.length > 0 ? ofTask : [skilled, plain]).filter((rate) => rate !== '')
    const same = (rate: string) => scaledInteger(rate, 6) === scaledInteger(entry.rate, 6)
    return agreed.length === 0 || agreed.some(same) ? [] : [{ index, entry, ofTask }]
  })
}

/** The rates at which the plan has this task, those of the household's own lines where it has any. */
function ratesOfTask(notebook: Notebook, { for: itemId, task, household }: Contribution): readonly string[] {
  if (task.trim() === '') return []
  const labour = placesOf(notebook).find(({ item }) => item.id === itemId)?.item.labour ?? []
  const lines = labour.filter((line) => line.counts && line.rate !== '' && sameTask(line.task, task))
  const own = lines.filter(({ by }) => by === household)
  return [...new Set((own.length > 0 ? own : lines).map(({ rate }) => rate))]
}
