import type { CommonCost, CostLine, Gate, Notebook, Section } from '../agreement/notebook.ts'

/** What can set two plans apart, in the order in which one is turned into the other. */
export const distanceCauses = ['quantities', 'prices', 'hours', 'principle'] as const
export type DistanceCause = (typeof distanceCauses)[number]

type Item = Section | Gate | CommonCost

/**
 * The plans on the way from one plan to another, each with one more kind of difference taken over, the last being the
 * other plan itself. In this order: what is built and how much of it (dimensions, build-up, quantities, cost lines that
 * only one of them has); unit prices and tax; hours and rates (labour lines that only one has too); how it is shared, with
 * the numbers for that. A cost line is the same line in both where it has the same words, the first with these words for
 * the first. An item that only one plan has comes, or goes, with the quantities.
 */
export function plansBetween(
  from: Notebook,
  to: Notebook,
): readonly { readonly cause: DistanceCause; readonly plan: Notebook }[] {
  const before = new Map<string, Item>(
    [...from.sections, ...from.gates, ...from.common].map((item) => [item.id, item]),
  )
  const on = (turn: (was: Item, is: Item) => Item): Notebook => {
    const turned = <One extends Item>(item: One): One => {
      const was = before.get(item.id)
      return was === undefined ? item : (turn(was, item) as One)
    }
    return {
      ...from,
      sections: to.sections.map(turned),
      gates: to.gates.map(turned),
      common: to.common.map(turned),
    }
  }
  return [
    {
      cause: 'quantities',
      plan: on((was, is) => ({
        ...sharedAs(was, is),
        materials: atPricesOf(was.materials, is.materials),
        labour: was.labour,
      })),
    },
    { cause: 'prices', plan: on((was, is) => ({ ...sharedAs(was, is), labour: was.labour })) },
    { cause: 'hours', plan: on((was, is) => sharedAs(was, is)) },
    { cause: 'principle', plan: to },
  ]
}

/** Keys of an item that say how it is shared, or hold the numbers for that. */
const sharingKeys: readonly string[] = ['share', 'uses', 'passages', 'spread', 'basicFence']

/** An item as it is, shared as it was. */
function sharedAs(was: Item, is: Item): Item {
  const others = Object.entries(is).filter(([key]) => !sharingKeys.includes(key))
  const sharing = Object.entries(was).filter(([key]) => sharingKeys.includes(key))
  return Object.fromEntries([...others, ...sharing]) as Item
}

/** The cost lines as they are, priced as they were where they were there before. */
function atPricesOf(was: readonly CostLine[], is: readonly CostLine[]): readonly CostLine[] {
  const left = [...was]
  return is.map((line) => {
    const at = left.findIndex((one) => one.what === line.what)
    const [old] = at < 0 ? [] : left.splice(at, 1)
    return old === undefined ? line : { ...line, unitPrice: old.unitPrice, taxPercent: old.taxPercent }
  })
}
