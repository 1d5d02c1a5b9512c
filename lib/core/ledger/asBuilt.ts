import type { CostLine, LabourLine, Notebook } from '../agreement/notebook.ts'
import { actualAmount } from '../amounts/lineAmount.ts'
import { type Minor, moneyText } from '../amounts/money.ts'
import { marksByLine } from './lineMarks.ts'
import { type CountedThing, countedThings } from './things.ts'

/** The notebook with what was actually spent in the place of what was planned, where both households marked it. */
export type AsBuilt = {
  readonly notebook: Notebook
  /** Things whose value was taken off their item's materials. */
  readonly things: readonly CountedThing[]
}

/**
 * Puts what both marked last of every line in the place of what was planned for it, and takes the values of the things
 * that both marked off the materials of their items. What one household alone enters or marks moves nothing. The hours of
 * a labour line stay as planned. Where the books hold no mark of both it is the same notebook.
 */
export function asBuilt(notebook: Notebook, digits: number): AsBuilt {
  const things = countedThings(notebook, digits)
  const amounts = heldAmounts(notebook, digits)
  if (amounts.size === 0 && things.length === 0) return { notebook, things }
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

/** By the path of the line, what both marked last of it. */
function heldAmounts(notebook: Notebook, digits: number): ReadonlyMap<string, Minor> {
  if (notebook.books.bought.length === 0) return new Map()
  return new Map(
    [...marksByLine(notebook, digits)].flatMap(([path, { held }]) =>
      held === undefined ? [] : [[path, held.amount] as const],
    ),
  )
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
