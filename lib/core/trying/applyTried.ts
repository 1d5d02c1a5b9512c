import type { CommonCost, CostLine, Gate, LabourLine, Notebook, Section } from '../agreement/notebook.ts'
import { lengthOf, parseLength } from '../amounts/length.ts'
import { type Ratio, ratio } from '../amounts/ratio.ts'
import { digitsOf } from '../shares/statement.ts'
import type { BuildUp, GateBuildUp } from '../takeoff/buildUp.ts'
import { divideRatios, subtractRatios } from '../takeoff/exact.ts'
import { fromTakeOff, mergeOffered, offeredLines } from '../takeoff/offeredLines.ts'
import type { QuantityName } from '../takeoff/quantity.ts'
import { takeOff } from '../takeoff/takeOff.ts'
import { type MovedBy, moveByHandTyped, moveHours } from './movedLines.ts'
import { movedNumber, moveFactor } from './movedNumber.ts'
import { type DimensionField, moveHolds, type Tried, type TriedEdit, triedTextHolds } from './tried.ts'
import { withShareAmounts } from './triedShare.ts'

/** Build-ups that can be tried, by name; and what a worked-out quantity is called, where one is new. */
export type TryingWith = {
  readonly sections: ReadonlyMap<string, BuildUp>
  readonly gates: ReadonlyMap<string, GateBuildUp>
  readonly nameOf: (name: QuantityName) => string
}

type Item = Section | Gate | CommonCost
type Dimensions = Partial<Record<DimensionField | 'buildUp', string>>

/**
 * The notebook as it would be with what is tried: first the lines and the amounts of the shares as they were typed anew, then the dimensions with what
 * follows them (the take-off's quantities, and by proportion what was typed by hand), then the moves of all prices, hours
 * and rates. An edit that does not hold, or of what is not in the plan, is left out. The plan itself stays as it is.
 */
export function applyTried(notebook: Notebook, tried: Tried, using: TryingWith): Notebook {
  const byItem = new Map<string, TriedEdit[]>()
  const digits = digitsOf(notebook)
  for (const edit of tried.edits) {
    if (!triedTextHolds(edit.field, edit.text, digits)) continue
    byItem.set(edit.item, [...(byItem.get(edit.item) ?? []), edit])
  }
  const changed = new Set<string>()
  const turn = <One extends Item>(item: One): One => {
    const edits = byItem.get(item.id)
    if (edits === undefined) return item
    const dimensions = dimensionsOf(edits)
    if (Object.keys(dimensions).length > 0) changed.add(item.id)
    return withDimensions(withShare(withLines(item, edits), edits), dimensions, edits, using)
  }
  const turned: Notebook = {
    ...notebook,
    sections: notebook.sections.map(turn),
    gates: notebook.gates.map(turn),
    common: notebook.common.map(turn),
  }
  return movedAltogether(followTakeOff(turned, changed, using.nameOf), tried, byItem)
}

function withShare<One extends Item>(item: One, edits: readonly TriedEdit[]): One {
  const amounts = edits.flatMap((edit) => ('pot' in edit ? [edit] : []))
  return amounts.length === 0 ? item : { ...item, share: withShareAmounts(item.share, amounts) }
}

function dimensionsOf(edits: readonly TriedEdit[]): Dimensions {
  return Object.fromEntries(edits.flatMap((edit) => ('line' in edit ? [] : [[edit.field, edit.text]])))
}

/** A quantity that is typed anew no longer follows the take-off. */
function withLines<One extends Item>(item: One, edits: readonly TriedEdit[]): One {
  const texts = (index: number, fields: readonly string[]) =>
    Object.fromEntries(
      edits.flatMap((edit) =>
        'line' in edit && edit.line === index && fields.includes(edit.field) ? [[edit.field, edit.text]] : [],
      ),
    )
  const materials = item.materials.map((line, index): CostLine => {
    const typed = texts(index, ['quantity', 'unitPrice'])
    const byHand = 'quantity' in typed && fromTakeOff(line)
    return { ...line, ...typed, ...(byHand ? { changed: true } : {}) }
  })
  const labour = item.labour.map(
    (line, index): LabourLine => ({ ...line, ...texts(index, ['hours', 'rate']) }),
  )
  return { ...item, materials, labour }
}

function withDimensions<One extends Item>(
  item: One,
  dimensions: Dimensions,
  edits: readonly TriedEdit[],
  using: TryingWith,
): One {
  if (Object.keys(dimensions).length === 0) return item
  const kept = (field: string) => (index: number) =>
    edits.some((edit) => 'line' in edit && edit.field === field && edit.line === index)
  const moved = <Of extends Section | Gate>(before: Of, after: Of, by: MovedBy): Of => ({
    ...after,
    materials: moveByHandTyped(before.materials, by, kept('quantity')),
    labour: moveHours(before.labour, by, kept('hours')),
  })
  if ('from' in item) {
    const { from = item.from, to = item.to, height = item.height.agreed } = dimensions
    const buildUp = using.sections.get(dimensions.buildUp ?? '')
    const after: Section = {
      ...item,
      from,
      to,
      height: { ...item.height, agreed: height },
      ...(buildUp ? { buildUp, infill: buildUp.name } : {}),
    }
    const by = {
      length: factorOf(lengthBetween(item.from, item.to), lengthBetween(from, to)),
      height: factorOf(parseLength(item.height.agreed), parseLength(height)),
    }
    return moved<Section>(item, after, by) as One
  }
  if ('opening' in item) {
    const { opening = item.opening } = dimensions
    const buildUp = using.gates.get(dimensions.buildUp ?? '')
    const after: Gate = { ...item, opening, ...(buildUp ? { buildUp } : {}) }
    const length = factorOf(parseLength(item.opening), parseLength(opening))
    return moved<Gate>(item, after, { length, height: ratio(1n, 1n) }) as One
  }
  return item
}

function lengthBetween(from: string, to: string): Ratio | undefined {
  const [begin, end] = [parseLength(from), parseLength(to)]
  return begin && end ? subtractRatios(end, begin) : undefined
}

/** By how much a length was moved; one where there is none to go by, or where it would turn round. */
function factorOf(before: Ratio | undefined, after: Ratio | undefined): Ratio {
  if (before === undefined || after === undefined || before.over <= 0n || after.over < 0n)
    return ratio(1n, 1n)
  return divideRatios(after, before)
}

/** Lines that came from the take-off take its quantities for the new dimensions, on the items that were moved. */
function followTakeOff(
  notebook: Notebook,
  moved: ReadonlySet<string>,
  nameOf: TryingWith['nameOf'],
): Notebook {
  const follows = (item: Item) => moved.has(item.id) && item.materials.some(fromTakeOff)
  if (![...notebook.sections, ...notebook.gates].some(follows)) return notebook
  const offered = offeredLines(takeOff(notebook))
  const following = <One extends Section | Gate>(list: 'sections' | 'gates', items: readonly One[]): One[] =>
    items.map((item, index) => {
      if (!follows(item)) return item
      const lines = offered
        .filter(({ item: place }) => place.list === list && place.index === index)
        .map(({ from, name, quantity, unit }) => ({ from, what: nameOf(name), quantity, unit }))
      const merged = mergeOffered(item.materials, lines) as readonly Partial<CostLine>[]
      return { ...item, materials: merged.map((line) => ({ ...newLine, ...line })) }
    })
  return {
    ...notebook,
    sections: following('sections', notebook.sections),
    gates: following('gates', notebook.gates),
  }
}

/** A cost line with every default of the file in it. */
const newLine: CostLine = {
  what: '',
  quantity: '0',
  unit: '',
  unitPrice: '',
  taxPercent: '0',
  suppliedBy: 'bought',
  credit: false,
  from: '',
  changed: false,
}

function movedAltogether(
  notebook: Notebook,
  { moves }: Tried,
  byItem: ReadonlyMap<string, readonly TriedEdit[]>,
): Notebook {
  const factor = (percent: string) => (moveHolds(percent) ? moveFactor(percent) : undefined)
  const [prices, hours, rates] = [factor(moves.prices), factor(moves.hours), factor(moves.rates)]
  if (prices === undefined && hours === undefined && rates === undefined) return notebook
  const by = (typed: string, by: Ratio | undefined, kept: boolean) =>
    by === undefined || kept || typed === '' ? typed : movedNumber(typed, by)
  const turn = <One extends Item>(item: One): One => {
    const edits = byItem.get(item.id) ?? []
    const kept = (field: string, index: number) =>
      edits.some((edit) => 'line' in edit && edit.field === field && edit.line === index)
    return {
      ...item,
      materials: item.materials.map((line, index) => ({
        ...line,
        unitPrice: by(line.unitPrice, prices, kept('unitPrice', index)),
      })),
      labour: item.labour.map((line, index) => ({
        ...line,
        hours: by(line.hours, hours, kept('hours', index)),
        rate: by(line.rate, rates, kept('rate', index)),
      })),
    }
  }
  return {
    ...notebook,
    sections: notebook.sections.map(turn),
    gates: notebook.gates.map(turn),
    common: notebook.common.map(turn),
  }
}

/** Ids of the items that what is tried makes other than the plan. */
export function triedItems(plan: Notebook, tried: Notebook): readonly string[] {
  const texts = (notebook: Notebook) =>
    new Map(
      [...notebook.sections, ...notebook.gates, ...notebook.common].map((item) => [
        item.id,
        JSON.stringify(item),
      ]),
    )
  const before = texts(plan)
  return [...texts(tried)].flatMap(([id, text]) => (before.get(id) === text ? [] : [id]))
}

/** The exact length in millimetres as a text of the file, rounded to a thousandth. */
export function millimetresText(length: Ratio): string {
  return `${movedNumber('1', length)} mm`
}

/** A typed length times an exact factor. */
export function movedLength(typed: string, factor: Ratio): string {
  const { over, under } = lengthOf(typed)
  return millimetresText({ over: over * factor.over, under: under * factor.under })
}
