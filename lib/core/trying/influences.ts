import type { CommonCost, Gate, Notebook, Section } from '../agreement/notebook.ts'
import { parseLength } from '../amounts/length.ts'
import { exactCostLine, exactLabour } from '../amounts/lineAmount.ts'
import type { Minor } from '../amounts/money.ts'
import { addRatios, compareRatios, multiplyRatios, type Ratio, ratio } from '../amounts/ratio.ts'
import type { Household } from '../people/household.ts'
import { nothingAsked, placesOf, shareItem, spreadOf } from '../shares/itemShares.ts'
import { digitsOf, layingIn, statementOf } from '../shares/statement.ts'
import { subtractRatios } from '../takeoff/exact.ts'
import { fromTakeOff } from '../takeoff/offeredLines.ts'
import { applyTried, millimetresText, movedLength, type TryingWith } from './applyTried.ts'
import { movedNumber } from './movedNumber.ts'
import { nothingTried, type TriedEdit } from './tried.ts'

/** What ten percent of one input do to what a household is asked for, after caps. In minor units. */
export type Influence = {
  /** The input as it stands. Its `text` is the plan's own. */
  readonly input: TriedEdit
  /** What is asked of the household more (or less, below zero) where the input is ten percent more, and less. */
  readonly more: Minor
  readonly less: Minor
  /** The same before caps: what a cap keeps from the household is asked of the other. */
  readonly beforeCaps: { readonly more: Minor; readonly less: Minor }
}

type Item = Section | Gate | CommonCost

const tenMore = ratio(11n, 10n)
const tenLess = ratio(9n, 10n)

/**
 * The inputs that move a household's share most, each varied alone by ten percent up and down: quantities, prices, hours,
 * rates, and of sections and gates length, opening and height. Those that move most on their own item are worked out
 * anew over the whole fence, caps and odd units included, and ranked by that; where a cap holds the share, what they move
 * before it decides. Empty where the fence can't be shared, or nothing moves it.
 */
export function influences(
  notebook: Notebook,
  household: Household,
  using: TryingWith,
  count = 3,
): readonly Influence[] {
  const now = statementOf(notebook)
  if (!now.ok) return []
  const candidates = placesOf(notebook)
    .flatMap((place) => movesOfItem(notebook, place, household, using, count))
    .filter(({ size }) => size > 0n)
    .sort((left, right) => (left.size === right.size ? 0 : left.size > right.size ? -1 : 1))
    .slice(0, 4 * count)
  const { asked, beforeCaps } = now.value
  return candidates
    .map(({ input, size }) => {
      const by = (factor: Ratio) => {
        const varied = statementOf(variedBy(notebook, input, factor, using))
        return varied.ok
          ? [
              varied.value.asked[household] - asked[household],
              varied.value.beforeCaps[household] - beforeCaps[household],
            ]
          : []
      }
      const [[more = 0n, moreBefore = 0n], [less = 0n, lessBefore = 0n]] = [by(tenMore), by(tenLess)]
      return { input, more, less, beforeCaps: { more: moreBefore, less: lessBefore }, size }
    })
    .sort((left, right) => compare(largest(right), largest(left)) || compare(right.size, left.size))
    .slice(0, count)
    .map(({ size: _itsOwn, ...influence }) => influence)
}

function largest({ more, less }: { readonly more: Minor; readonly less: Minor }): Minor {
  return larger(sizeOf(more), sizeOf(less))
}

function larger(left: Minor, right: Minor): Minor {
  return compare(left, right) < 0 ? right : left
}

function compare(left: bigint, right: bigint): number {
  return left < right ? -1 : left > right ? 1 : 0
}

function sizeOf(amount: Minor): Minor {
  return amount < 0n ? -amount : amount
}

/** Every input of the plan that can be varied by a percentage: what is empty or zero can't. */
export function inputsOf(notebook: Notebook): readonly TriedEdit[] {
  return placesOf(notebook).flatMap(({ item }) => inputsOfItem(item))
}

function inputsOfItem(item: Item): readonly TriedEdit[] {
  return [...dimensionsOf(item), ...lineInputs(item).map(({ input }) => input)].filter(({ text }) =>
    /[1-9]/.test(text),
  )
}

/** The inputs of an item's lines, with the exact amount of the line that each stands on. */
function lineInputs(
  item: Item,
): { readonly input: TriedEdit; readonly pot: string; readonly amount: Ratio }[] {
  return [
    ...item.materials.flatMap((cost, line) =>
      (['quantity', 'unitPrice'] as const).map((field) => ({
        input: { item: item.id, field, line, text: cost[field] },
        pot: 'materials',
        amount: exactCostLine(cost),
      })),
    ),
    ...item.labour.flatMap((task, line) =>
      (task.counts ? (['hours', 'rate'] as const) : []).map((field) => ({
        input: { item: item.id, field, line, text: task[field] },
        pot: 'labour',
        amount: exactLabour(task),
      })),
    ),
  ]
}

/**
 * The inputs of an item that can be among the first `count`: of each pot those on its largest lines, since no principle
 * asks less of a household where a pot grows, and ten percent of a larger line move the pot further.
 */
function inputsInQuestion(item: Item, count: number): readonly TriedEdit[] {
  const lines = lineInputs(item).filter(({ input, amount }) => /[1-9]/.test(input.text) && amount.over > 0n)
  const largest = (pot: string) =>
    lines
      .filter((one) => one.pot === pot)
      .sort((left, right) => compareRatios(right.amount, left.amount))
      .slice(0, count)
      .map(({ input }) => input)
  const dimensions = dimensionsOf(item).filter(({ text }) => /[1-9]/.test(text))
  return [...dimensions, ...largest('materials'), ...largest('labour')]
}

function dimensionsOf(item: Item): TriedEdit[] {
  if ('from' in item) {
    return [
      { item: item.id, field: 'to', text: item.to },
      { item: item.id, field: 'height', text: item.height.agreed },
    ]
  }
  return 'opening' in item ? [{ item: item.id, field: 'opening', text: item.opening }] : []
}

/** How far each input of an item moves a household's share of that item, before caps: the larger of both ways. */
function movesOfItem(
  notebook: Notebook,
  place: ReturnType<typeof placesOf>[number],
  household: Household,
  using: TryingWith,
  count: number,
): { readonly input: TriedEdit; readonly size: Minor }[] {
  const digits = digitsOf(notebook)
  const alone = aloneWith(notebook, place.item)
  const laying = spreadOf(place.item) === undefined ? undefined : layingIn(notebook)
  const shareOf = (one: Notebook): Minor | undefined => {
    const [only] = placesOf(one).filter(({ item }) => item.id === place.item.id)
    const shared = only && shareItem({ ...place, item: only.item }, digits, nothingAsked, laying)
    return shared?.ok ? shared.value[household] : undefined
  }
  const planned = shareOf(alone)
  const takenOff = place.item.materials.some(fromTakeOff)
  return inputsInQuestion(place.item, count).flatMap((input) => {
    // What follows the take-off is held against the take-off of the same stretch alone, not against the plan's own lines.
    const follows = takenOff && !('line' in input)
    const before = follows ? shareOf(variedBy(alone, input, ratio(1n, 1n), using)) : planned
    if (before === undefined) return []
    const moves = [tenMore, tenLess].map((factor) => {
      const after = shareOf(variedBy(alone, input, factor, using))
      return after === undefined ? 0n : sizeOf(after - before)
    })
    return [{ input, size: moves.reduce(larger, 0n) }]
  })
}

/** The notebook with one item alone, and the gates in it where it is a section: enough to take it off. */
function aloneWith(notebook: Notebook, item: Item): Notebook {
  return {
    ...notebook,
    sections: notebook.sections.filter((one) => one.id === item.id),
    gates: notebook.gates.filter((one) => one.id === item.id),
    common: notebook.common.filter((one) => one.id === item.id),
    caps: {},
  }
}

/** The notebook with one input times a factor. A section is made longer at its end. */
export function variedBy(notebook: Notebook, input: TriedEdit, factor: Ratio, using: TryingWith): Notebook {
  const text = variedText(notebook, input, factor)
  return text === undefined
    ? notebook
    : applyTried(notebook, { ...nothingTried, edits: [{ ...input, text }] }, using)
}

function variedText(notebook: Notebook, input: TriedEdit, factor: Ratio): string | undefined {
  switch (input.field) {
    case 'quantity':
    case 'unitPrice':
    case 'hours':
    case 'rate':
      return movedNumber(input.text, factor)
    case 'height':
    case 'opening':
      return movedLength(input.text, factor)
    case 'to': {
      const section = notebook.sections.find(({ id }) => id === input.item)
      return section && stretchedEnd(section, factor)
    }
    default:
      return undefined
  }
}

/** Where a section would end were it so many times as long; undefined where its ends are not both said. */
function stretchedEnd({ from, to }: Section, factor: Ratio): string | undefined {
  const [begin, end] = [parseLength(from), parseLength(to)]
  if (begin === undefined || end === undefined) return undefined
  const length = subtractRatios(end, begin)
  if (length.over <= 0n) return undefined
  return millimetresText(addRatios(begin, multiplyRatios(length, factor)))
}
