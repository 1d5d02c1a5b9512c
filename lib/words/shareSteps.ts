import type { CostLine, LabourLine } from '../core/agreement/notebook.ts'
import { hoursText } from '../core/amounts/hours.ts'
import type { ForBoth } from '../core/people/household.ts'
import type { AskedSoFar, ItemShares } from '../core/shares/itemShares.ts'
import type { PotPart, PotShare } from '../core/shares/potShare.ts'
import type { Statement } from '../core/shares/statement.ts'
import { fractionWords } from './exactWords.ts'
import { labourSteps, materialSteps } from './lineSteps.ts'
import { moneyWords } from './money.ts'
import { partSteps } from './partSteps.ts'
import { capSentence, type ShareNames, upgradeName } from './shareText.ts'
import { capitalised } from './summary/names.ts'

/** Steps that belong together, under a heading of their own. */
export type StepGroup = { readonly heading: string; readonly steps: readonly string[] }

/** An item's lines as they were typed. */
type PricedLines = { readonly materials: readonly CostLine[]; readonly labour: readonly LabourLine[] }

/**
 * How an item's figures come about, so that a doubter can redo them with a pencil: every line, both sums, each pot's
 * arithmetic with its odd unit, and the hours. Every figure is one that the statement was made of.
 *
 * @param asked what both were asked for by the items before this one
 */
export function itemSteps(
  item: PricedLines,
  shares: ItemShares,
  names: ShareNames,
  asked: AskedSoFar,
): readonly StepGroup[] {
  const { pots } = shares
  return [
    { heading: 'Materials', steps: materialSteps(item.materials, shares.materialsTotal, names.currency) },
    { heading: 'Work', steps: labourSteps(item.labour, shares.labourTotal, names.currency) },
    ...(pots.form === 'together'
      ? [
          {
            heading: 'Sharing both together',
            steps: [bothPots(shares, names), ...potSteps(pots.together, names, asked.money)],
          },
        ]
      : [
          { heading: 'Sharing the materials', steps: potSteps(pots.materials, names, asked.money) },
          {
            heading: 'Sharing the work',
            steps: potSteps(pots.labour, names, added(asked.money, pots.materials)),
          },
          { heading: 'The item in all', steps: sumSteps([pots.materials, pots.labour], shares, names) },
        ]),
    ...hoursSteps(shares, names),
  ]
}

/** How the figures of the whole fence come about from those of its items, caps included. */
export function wholeSteps(
  statement: Statement,
  titles: readonly string[],
  names: ShareNames,
): readonly StepGroup[] {
  const money = (minor: bigint) => moneyWords(minor, statement.currency)
  const both = ({ a, b }: ForBoth<bigint>) => `${money(a)} of ${names.a}, ${money(b)} of ${names.b}`
  const { asked, beforeCaps, items, total } = statement
  const moved = capSentence(asked, names)
  const lines = items.map((item, at) => `${titles[at] ?? item.name} asks for ${both(item)}.`)
  const before = `All items together ask for ${both(beforeCaps)}. That is ${money(total)} in all.`
  const after = moved ? [moved, `After caps, the fence asks for ${both(asked)}.`] : []
  return [{ heading: 'The whole fence', steps: [...lines, before, ...after] }]
}

function bothPots(shares: ItemShares, names: ShareNames): string {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  return `Materials and work are one pot: ${money(shares.materialsTotal)} + ${money(shares.labourTotal)} = ${money(shares.total)}.`
}

function potSteps(pot: PotShare, names: ShareNames, asked: ForBoth<bigint>): string[] {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const [first, ...above] = pot.parts
  if (first === undefined) return []
  if (above.length === 0) return partSteps(first, names, asked)
  let before = added(asked, first)
  let left = pot.total - first.pot
  const stepsAbove = above.flatMap((part) => {
    const steps = partSteps(part, names, before)
    before = added(before, part)
    if (part.part !== 'named upgrade') return steps.map((step) => `${restName(above)}. ${step}`)
    const taken = upgradeStep(part, left, names)
    left -= part.pot
    return part.pot === 0n
      ? [taken]
      : [taken, ...steps.map((step) => `${capitalised(upgradeName(part))}. ${step}`)]
  })
  return [
    `Pay the difference: of ${money(pot.total)}, the basic fence takes ${money(first.pot)}. Above it lies ${money(pot.total - first.pot)}.`,
    ...partSteps(first, names, asked).map((step) => `The basic fence. ${step}`),
    ...stepsAbove,
    ...sumSteps(pot.parts, pot, names),
  ]
}

/** How much an upgrade takes of what is left, and what is left after it. */
function upgradeStep(
  part: Extract<PotPart, { part: 'named upgrade' }>,
  left: bigint,
  names: ShareNames,
): string {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const start = `${capitalised(upgradeName(part))} is put at ${money(part.amount)}`
  if (left === 0n) return `${start}. Nothing is left to ask for.`
  return part.pot < part.amount
    ? `${start}, but only ${money(left)} is left: it takes that. Nothing is left.`
    : `${start}: ${money(left)} − ${money(part.pot)} = ${money(left - part.pot)} is left.`
}

function restName(above: PotShare['parts']): string {
  return above.length > 1 ? 'What is left' : 'Above it'
}

function sumSteps(parts: readonly ForBoth<bigint>[], sum: ForBoth<bigint>, names: ShareNames): string[] {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  return (['a', 'b'] as const).map(
    (household) =>
      `${names[household]}: ${parts.map((part) => money(part[household])).join(' + ')} = ${money(sum[household])}.`,
  )
}

function hoursSteps({ hours, pots }: ItemShares, names: ShareNames): StepGroup[] {
  if (hours.hours === 0n) return []
  const { fractionA } = pots.form === 'together' ? pots.together : pots.labour
  return [
    {
      heading: 'Hours',
      steps: [
        `The hours follow the same shares. The part of ${names.a} is ${fractionWords(fractionA)}.`,
        `${hoursText(hours.hours)} hours × ${fractionWords(fractionA)}, to the nearest hundredth: ${hoursText(hours.a)} for ${names.a}. The rest is ${hoursText(hours.b)} for ${names.b}. A tie goes to whoever has fewer hours up to here.`,
      ],
    },
  ]
}

function added(left: ForBoth<bigint>, right: ForBoth<bigint>): ForBoth<bigint> {
  return { a: left.a + right.a, b: left.b + right.b }
}
