import type { Units } from '../agreement/notebook.ts'
import { compareLengths, type Millimetres } from '../amounts/length.ts'
import { addRatios, ratio } from '../amounts/ratio.ts'
import type { InfillLayer } from './buildUp.ts'
import {
  asNumber,
  ceilingOf,
  divideRatios,
  lowestTerms,
  multiplied,
  nothing,
  subtractRatios,
  sumOf,
  times,
  withPercent,
} from './exact.ts'
import type { Found } from './finding.ts'
import { type Amount, lengthStep } from './infillAmount.ts'
import { type InfillArea, layerArea, layerHeight, layerLength } from './infillArea.ts'
import { aboveZero, lengthOrNothing, neededLength } from './neededLength.ts'
import {
  lengthIn,
  measuredQuantity,
  type Quantity,
  type QuantityName,
  quantityUnits,
  wholeQuantity,
} from './quantity.ts'
import type { Step } from './step.ts'
import { stripAmount } from './stripAmount.ts'
import { stripKilograms } from './stripWeight.ts'
import { kilogramsOf } from './weighed.ts'

/** Rolls, panels, boards and strips of one section or one gate, layer by layer. */
export function infillQuantities(area: InfillArea, units: Units, found: Found): readonly Quantity[] {
  return area.layers.flatMap((layer, index) => {
    const path = `${area.path}.infill[${index}]`
    const height = layerHeight(area, layer, index, found)
    const amount = amountOf(area, layer, height, path, quantityUnits(units).length, found)
    if (amount === undefined || amount.amount.over === 0n) return []
    const needed = multiplied(amount.amount, withPercent(layer.waste))
    const name: QuantityName = { kind: layer.kind, what: layer.what, size: amount.size }
    return [
      {
        item: area.item,
        part: `infill ${index + 1}`,
        name,
        quantity: amount.whole ? wholeQuantity(needed) : measuredQuantity(needed),
        unit: amount.unit,
        kilograms:
          kilogramsOf(layer.weight, {
            pieces: amount.pieces,
            metres: asNumber(amount.length) / 1000,
            squareMetres: asNumber(layerArea(area, layer.kind, height)) / 1e6,
          }) ?? stripKilograms(layer, amount.length),
        reclaimed: layer.reclaimed,
        workings: withWaste(amount, layer.waste),
      },
    ]
  })
}

/** Waste is added before whole rolls and coils are counted, and so it stands before that step. */
function withWaste({ workings }: Amount, percent: string): readonly Step[] {
  if (percent === '') return workings
  const last = workings.findIndex(({ step }) => step === 'rolls' || step === 'coils')
  return workings.toSpliced(last < 0 ? workings.length : last, 0, { step: 'waste', percent })
}

function amountOf(
  area: InfillArea,
  layer: InfillLayer,
  height: Millimetres | undefined,
  path: string,
  unit: 'ft' | 'm',
  found: Found,
): Amount | undefined {
  switch (layer.kind) {
    case 'roll':
      return rollAmount(area, layer, path, unit, found)
    case 'panel':
      return panelAmount(area, layer, path, found)
    case 'board':
      return boardAmount(area, layer, height, path, found)
    case 'strip':
      return stripAmount(area, layer, height, path, unit, found)
  }
}

/** The length of all runs, wraps at both ends of each, and a lap wherever a new roll begins within a run. */
function rollAmount(
  area: InfillArea,
  layer: Extract<InfillLayer, { kind: 'roll' }>,
  path: string,
  unit: 'ft' | 'm',
  found: Found,
): Amount | undefined {
  const roll = aboveZero(layer.roll, `${path}.roll`, found)
  const [lap, wrap] = [lengthOrNothing(layer.lap), lengthOrNothing(layer.wrap)]
  if (roll && compareLengths(lap, roll) >= 0) {
    found(`${path}.lap`, { kind: 'lap-longer-than-roll', lap, roll })
    return undefined
  }
  const wraps = times(wrap, 2 * area.runs.length)
  const laps = roll
    ? area.runs.reduce((sum, run) => sum + lapsIn(addRatios(run, times(wrap, 2)), roll, lap), 0)
    : 0
  const total = lowestTerms(addRatios(addRatios(area.total, wraps), times(lap, laps)))
  const workings: Step[] = [
    lengthStep(area, area.total),
    ...(wrap.over === 0n ? [] : [{ step: 'wraps' as const, runs: area.runs.length, wrap, total: wraps }]),
    ...(laps === 0 || lap.over === 0n ? [] : [{ step: 'laps' as const, laps, lap, total: times(lap, laps) }]),
  ]
  const common = { pieces: 0, length: total, size: roll }
  if (roll === undefined) return { ...common, amount: lengthIn(unit, total), unit, whole: false, workings }
  const needed = divideRatios(total, roll)
  const rolls = ceilingOf(multiplied(needed, withPercent(layer.waste)))
  return {
    ...common,
    amount: needed,
    unit: 'roll',
    whole: true,
    pieces: rolls,
    workings: [...workings, { step: 'rolls', length: total, roll, rolls }],
  }
}

/** How often a new roll begins within a run: n rolls with n − 1 laps reach n·roll − (n − 1)·lap. */
export function lapsIn(run: Millimetres, roll: Millimetres, lap: Millimetres): number {
  if (compareLengths(run, roll) <= 0) return 0
  return ceilingOf(divideRatios(subtractRatios(run, lap), subtractRatios(roll, lap))) - 1
}

function panelAmount(
  area: InfillArea,
  layer: Extract<InfillLayer, { kind: 'panel' }>,
  path: string,
  found: Found,
): Amount | undefined {
  const width = aboveZero(layer.width, `${path}.width`, found)
  const sloping = area.raked && !layer.rakes ? area.bays.filter(({ rise }) => rise.over !== 0n) : []
  const steepest = sloping.reduce(
    (best, bay) => (asNumber(bay.rise) ** 2 > asNumber(best.rise) ** 2 ? bay : best),
    sloping[0] ?? { length: nothing, rise: nothing },
  )
  if (sloping.length > 0)
    found(path, { kind: 'panel-on-a-slope', rise: steepest.rise, bay: steepest.length, bays: sloping.length })
  const panels = area.bays.reduce(
    (sum, { length }) => sum + (width ? ceilingOf(divideRatios(length, width)) : 1),
    0,
  )
  return {
    amount: ratio(BigInt(panels), 1n),
    unit: 'each',
    whole: true,
    pieces: panels,
    length: layerLength(area, layer.kind),
    size: width,
    workings: [{ step: 'panels', bays: area.bays.length, width, panels }],
  }
}

/** ⌈(run + gap) ÷ (width + gap)⌉ boards for each run: n boards have n − 1 gaps between them. */
function boardAmount(
  area: InfillArea,
  layer: Extract<InfillLayer, { kind: 'board' }>,
  height: Millimetres | undefined,
  path: string,
  found: Found,
): Amount | undefined {
  const width = neededLength(layer.width, `${path}.width`, found)
  if (width === undefined) return undefined
  const gap = lengthOrNothing(layer.gap)
  const boards = area.flatRuns.reduce((sum, run) => sum + boardsIn(run, width, gap), 0)
  return {
    amount: ratio(BigInt(boards), 1n),
    unit: 'each',
    whole: true,
    pieces: boards,
    length: height === undefined ? nothing : times(height, boards),
    size: height,
    workings: [
      lengthStep({ ...area, runs: area.flatRuns }, sumOf(area.flatRuns)),
      { step: 'boards', width, gap, boards },
    ],
  }
}

export function boardsIn(run: Millimetres, width: Millimetres, gap: Millimetres): number {
  return ceilingOf(divideRatios(addRatios(run, gap), addRatios(width, gap)))
}
