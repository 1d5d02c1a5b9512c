import { scaleLinear, scaleUtc } from 'd3-scale'
import type { StepsFigure } from '../../core/figures/figure.ts'
import { households } from '../../core/people/household.ts'
import type { Shape } from '../drawing.ts'
import { fitted, textWidth } from '../textRoom.ts'
import { amountTicks, countWithMostLabels, labelsBelow } from './axisLabels.ts'
import { daysShown, dayTicks } from './dayAxis.ts'
import type { DrawnFigure, FigureLook } from './figureDrawing.ts'
import { againstStroke, dueShape, type KeyEntry, keyRows, sumStroke } from './keyRows.ts'
import { stackedSteps, stepLine } from './stackedSteps.ts'
import { level, upright } from './upright.ts'

/** Steps over time: a's sums from the axis up, b's on them, the line of both, and what they are held against. */
export function stepsDrawing(figure: StepsFigure, { width, text: size, words }: FigureLook): DrawnFigure {
  const key = keyRows(keyOf(figure), width, size)
  const top = key.bottom + size
  const bottom = top + Math.max(size * 10, Math.min(width * 0.36, size * 15))
  const steps = figure.steps.map(({ on, parts }) => ({ on: new Date(on), parts }))
  const sums = steps.map(({ parts }) => parts.a + parts.b)
  const ends = steps.flatMap(({ parts }) => {
    const { a, b } = parts
    return [Math.min(0, a) + Math.min(0, b), Math.max(0, a) + Math.max(0, b)]
  })
  const reach = [0, figure.against, ...ends]
  const [least, most] = [Math.min(...reach), Math.max(...reach)]
  const up = scaleLinear()
    .domain(least === most ? [0, 1] : [least, most])
    .range([bottom, top])
    .nice(4)
  const amounts = amountTicks(up, 4, (places) => words.amounts(places, figure.unit))
  const left = Math.min(
    width / 2,
    Math.max(0, ...amounts.map(({ text }) => textWidth(text, size))) + size * 0.6,
  )
  const right = width - 4
  const days = scaleUtc().domain(daysShown(figure)).range([left, right])
  const room = { from: left - size, to: width, size }
  const count = countWithMostLabels((tried) => dayTicks(days, tried, words.day), room)
  const ticks = dayTicks(days, count, words.day)
  const dueRow = figure.dues.length === 0 ? 0 : size * 1.1
  // Nobody knows what will have been spent on a day to come.
  const shortest = Math.min(right, days(steps.at(-1)?.on ?? 0) + size / 2)
  const end = figure.until === undefined ? right : Math.max(shortest, days(new Date(figure.until)))
  const stacked = stackedSteps(steps, (on) => days(on), up, end)
  const sumPoints = stepLine(
    steps.map(({ on }, index) => ({ x: days(on), y: up(sums[index] ?? 0) })),
    { x: left, y: up(0) },
    end,
  )
  return {
    width,
    height: bottom + dueRow + size * 1.9,
    shapes: [
      ...key.shapes,
      ...amounts.map(({ at }) => level(at, left, right, { ink: 'rule', width: 0.8 })),
      ...households.flatMap((household): Shape[] =>
        stacked[household].length === 0 ? [] : [{ kind: 'patterned', household, boxes: stacked[household] }],
      ),
      { kind: 'polyline', points: sumPoints, stroke: sumStroke },
      level(up(figure.against), left, right, againstStroke),
      level(up(0), left, right, { ink: 'ink', width: 1.2 }),
      ...ticks.map(({ at }) => upright(at, bottom, bottom + 4, { ink: 'ink', width: 1 })),
      ...figure.dues.map(({ on, met }) => dueShape(days(new Date(on)), bottom + size * 0.75, size, met)),
      ...amounts.map(
        ({ at, text }): Shape => ({
          kind: 'text',
          text: fitted(text, size, left - size * 0.4),
          at: { x: left - size * 0.4, y: at + size * 0.34 },
          anchor: 'end',
          size,
          ink: 'quiet',
          room: left - size * 0.4,
        }),
      ),
      ...labelsBelow(ticks, bottom + dueRow + size * 1.4, room),
    ],
  }
}

function keyOf({ steps, dues, texts }: StepsFigure): KeyEntry[] {
  return [
    ...households
      .filter((household) => steps.some(({ parts }) => parts[household] !== 0))
      .map((household) => ({ sign: household, text: texts[household] })),
    { sign: 'line', text: texts.both },
    { sign: 'dashes', text: texts.against },
    ...(dues.some(({ met }) => !met) ? [{ sign: 'due' as const, text: texts.due }] : []),
    ...(dues.some(({ met }) => met) ? [{ sign: 'met' as const, text: texts.met }] : []),
  ]
}
