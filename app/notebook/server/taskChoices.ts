import { plainNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { workableTasks } from '../../../lib/core/hours/workable.ts'
import type { TaskChoice } from '../forms/HoursFields.tsx'
import { agreedCeilings } from './agreedCeilings.ts'
import type { Opened } from './opened.ts'

/** The tasks that hours can be entered for, as the form is given them. */
export function taskChoices(opened: Opened): readonly TaskChoice[] {
  return workableTasks(agreedCeilings(opened)).map(({ item, task, rate, gift, ceiling, counted }) => ({
    item,
    task,
    rate,
    gift,
    ...(ceiling === undefined
      ? {}
      : { ceiling: { hours: plainNumber(ceiling, 6), counted: plainNumber(counted, 6) } }),
  }))
}
