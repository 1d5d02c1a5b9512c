import type { ScaleTime } from 'd3-scale'
import { utcDay } from 'd3-time'
import type { StepsFigure } from '../../core/figures/figure.ts'
import type { Tick } from './axisLabels.ts'

const day = 24 * 60 * 60 * 1000
/** Fewer days than this are not spread over the whole axis. */
const fewestDays = 14

/** From the first day of the figure to its last, with room on both sides; a single day stands near the beginning. */
export function daysShown({ steps, dues, until }: StepsFigure): [Date, Date] {
  const moments = [...steps, ...dues, ...(until === undefined ? [] : [{ on: until }])].map(({ on }) =>
    Date.parse(on),
  )
  const [first, last] = [Math.min(...moments), Math.max(...moments)]
  const span = Math.max(last - first, fewestDays * day)
  return [new Date(first - span * 0.04), new Date(first + span * 1.04)]
}

/** About so many days of the axis, at round places of the calendar, each called by as much as tells it apart. */
export function dayTicks(
  days: ScaleTime<number, number>,
  count: number,
  words: (day: string, upTo: 'day' | 'month' | 'year') => string,
): Tick[] {
  const round = days.ticks(count).filter((tick) => tick.getTime() % day === 0)
  // No round place lies within a short time: its first day is named.
  const ticks = round.length > 0 ? round : [utcDay.ceil(days.domain()[0] ?? new Date(0))]
  const inYears = ticks.length > 1 && ticks.every((tick) => isFirst(tick) && tick.getUTCMonth() === 0)
  const upTo = inYears ? 'year' : ticks.every(isFirst) ? 'month' : 'day'
  return ticks.flatMap((tick) => {
    const iso = tick.toISOString()
    // Years that the calendar of the notebook does not have begin with a sign.
    return /^\d{4}-/.test(iso) ? [{ at: days(tick), text: words(iso.slice(0, 10), upTo) }] : []
  })
}

function isFirst(tick: Date): boolean {
  return tick.getUTCDate() === 1
}
