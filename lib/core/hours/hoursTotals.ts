import type { ForBoth, Household } from '../people/household.ts'
import type { ItemHours, TaskHours } from './hoursByTask.ts'
import type { ExactHours } from './ownHours.ts'

/** A household's hours in millionths. Hired work is asked for too, and is not still to give: it is met in money. */
export type HoursTotals = Readonly<
  Record<'asked' | 'hired' | 'given' | 'turned' | 'still' | 'own' | 'gifts', ExactHours>
>

/** What a household's hours come to over all items, and over those that were entered for none. */
export function hoursTotals(
  items: readonly ItemHours[],
  forNoItem: ForBoth<ExactHours>,
): ForBoth<HoursTotals> {
  const of = (household: Household): HoursTotals => {
    const tasks = items.flatMap((item) => item.tasks)
    const sum = (figure: (task: TaskHours) => ExactHours) =>
      tasks.reduce((added, task) => added + figure(task), 0n)
    const isGift = ({ kind }: TaskHours) => kind === 'gift'
    return {
      asked: sum((task) => task.asked[household]),
      hired: sum((task) => (task.kind === 'hired' ? task.asked[household] : 0n)),
      given: sum((task) => (isGift(task) ? 0n : task.given[household])) + forNoItem[household],
      turned: items.reduce((added, item) => added + item.turned[household], 0n),
      still: items.reduce((added, item) => added + item.stillToGive[household], 0n) - forNoItem[household],
      own: sum((task) => task.own[household]),
      gifts: sum((task) => (isGift(task) ? task.given[household] : 0n)),
    }
  }
  return { a: of('a'), b: of('b') }
}
