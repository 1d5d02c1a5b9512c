import type { BoughtLine, CostLine, LabourLine, Notebook } from '../agreement/notebook.ts'
import { actualAmount } from '../amounts/lineAmount.ts'
import { type Minor, minorUnits, moneyText } from '../amounts/money.ts'
import { type Actuals, actualsOf, nothingSpent } from './actual.ts'
import { lineFinder, type PlannedLine } from './findLine.ts'
import { type CountedThing, countedThings } from './things.ts'
import { markedByBoth } from './valuation.ts'

/** The notebook with what was actually spent in the place of what was planned, where both households marked it. */
export type AsBuilt = {
  readonly notebook: Notebook
  /** Things whose value was taken off their item's materials. */
  readonly things: readonly CountedThing[]
}

/**
 * Whether both marks on a line hold: its actual amount is still the one that they were set on. A line that was removed
 * has no marks that hold.
 */
export function boughtHolds(bought: BoughtLine, actual: Minor, digits: number): boolean {
  return markedByBoth(bought.marks) && minorUnits(bought.amount, digits) === actual
}

/**
 * Puts the actual amount of every line that both marked as bought in the place of its planned one, and takes the values
 * of the things that both marked off the materials of their items. The hours of a labour line stay as planned. Where the
 * books hold no such mark it is the same notebook.
 */
export function asBuilt(notebook: Notebook, digits: number): AsBuilt {
  const things = countedThings(notebook, digits)
  const marked = notebook.books.bought.filter(({ marks }) => markedByBoth(marks))
  if (marked.length === 0 && things.length === 0) return { notebook, things }
  const find = lineFinder(notebook)
  const actuals = actualsOf(notebook, digits, find)
  const amounts = new Map(
    marked.flatMap((bought) => {
      const line = find(bought)
      const actual = line && actualOf(line, actuals)
      return line !== undefined && actual !== undefined && boughtHolds(bought, actual, digits)
        ? [[line.path, actual] as const]
        : []
    }),
  )
  const linesOf = (item: Priced, path: string) => ({
    materials: [
      ...withActual<CostLine>(item.materials, `${path}.materials`, amounts),
      ...things.filter((thing) => thing.item === item.id).map((thing) => creditOf(thing, digits)),
    ],
    labour: withActual<LabourLine>(item.labour, `${path}.labour`, amounts),
  })
  const built = {
    ...notebook,
    sections: notebook.sections.map((item, at) => ({ ...item, ...linesOf(item, `sections[${at}]`) })),
    gates: notebook.gates.map((item, at) => ({ ...item, ...linesOf(item, `gates[${at}]`) })),
    common: notebook.common.map((item, at) => ({ ...item, ...linesOf(item, `common[${at}]`) })),
  }
  return { notebook: built, things }
}

type Priced = {
  readonly id: string
  readonly materials: readonly CostLine[]
  readonly labour: readonly LabourLine[]
}

/** What a line actually came to so far, in minor units. */
export function actualOf({ path }: PlannedLine, { byPath }: Actuals): Minor {
  return (byPath.get(path) ?? nothingSpent).amount
}

function withActual<Line extends CostLine | LabourLine>(
  lines: readonly Line[],
  path: string,
  amounts: ReadonlyMap<string, Minor>,
): readonly Line[] {
  return lines.map((line, at) => {
    const amount = amounts.get(`${path}[${at}]`)
    return amount === undefined ? line : { ...line, [actualAmount]: amount }
  })
}

/** The household holds the thing, or the money that it brought: like any credit of a household. */
function creditOf({ what, value, household }: CountedThing, digits: number): CostLine {
  return {
    what,
    quantity: '1',
    unit: '',
    unitPrice: moneyText(value, digits),
    taxPercent: '0',
    suppliedBy: household,
    credit: true,
    from: '',
    changed: false,
  }
}
