import { currencyDigits } from '../core/amounts/currency.ts'
import { minorUnits } from '../core/amounts/money.ts'
import { type Ratio, ratio } from '../core/amounts/ratio.ts'
import { never } from '../core/assert.ts'
import { type ForBoth, otherHousehold } from '../core/people/household.ts'
import type { PotPart } from '../core/shares/potShare.ts'
import { exactMoneyWords, fractionWords } from './exactWords.ts'
import { moneyWords } from './money.ts'
import { halvesMeanwhile } from './passageText.ts'
import { type ShareNames, sourceClause } from './shareText.ts'
import { laidSteps } from './spreadText.ts'

/** The arithmetic of one principle on one pot: how the exact shares come about, and where an odd unit goes. */
export function partSteps(part: PotPart, names: ShareNames, askedSoFar: ForBoth<bigint>): string[] {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  if (part.pot === 0n) return ['There is nothing here to share, so nobody is asked for anything.']
  const steps = exactSteps(part, names)
  if (part.odd === undefined) return [...steps, `${names.a}: ${money(part.a)}. ${names.b}: ${money(part.b)}.`]
  const { to } = part.odd
  const cut = { a: to === 'a' ? part.a - 1n : part.a, b: to === 'b' ? part.b - 1n : part.b }
  return [
    ...steps,
    `Both are cut down to whole units of ${money(1n)}: ${money(cut.a)} and ${money(cut.b)}. One ${money(1n)} is left over.`,
    `It goes to ${names[to]}, ${oddReason(part, names, askedSoFar)}`,
    `${names.a}: ${money(part.a)}. ${names.b}: ${money(part.b)}.`,
  ]
}

function exactSteps(part: PotPart, names: ShareNames): string[] {
  const pot = moneyWords(part.pot, names.currency)
  const exact = {
    a: exactMoneyWords(part.exactA, names.currency),
    b: exactMoneyWords(exactB(part), names.currency),
  }
  const rest = `${exact.a} for ${names.a}. The rest is ${exact.b} for ${names.b}.`
  const { principle } = part
  switch (principle.principle) {
    case 'equal':
      return [`Halves: ${pot} ÷ 2 = ${exact.a} for each.`]
    case 'percent':
      return [
        `Agreed parts: ${principle.a} percent for ${names.a}, ${principle.b} percent for ${names.b}.`,
        `${pot} × ${principle.a} ÷ 100 = ${rest}`,
      ]
    case 'one':
      return [`One household: all of ${pot} is asked of ${names[principle.household]}.`]
    case 'length':
      return weighed('By length', principle.a, principle.b, part, names, rest)
    case 'use':
      if (names.uses?.apart) return [`${halvesMeanwhile} ${pot} ÷ 2 = ${exact.a} for each.`]
      return weighed('By use, passages a week', names.uses?.a || '0', names.uses?.b || '0', part, names, rest)
    case 'benefit':
      return weighed('By benefit, in points', principle.a, principle.b, part, names, rest)
    case 'saving':
      return savingSteps(part, principle, names)
    case 'laid':
      return laidSteps(part, principle, names)
    default:
      return never(principle)
  }
}

function weighed(
  how: string,
  a: string,
  b: string,
  part: PotPart,
  names: ShareNames,
  rest: string,
): string[] {
  const fraction = fractionWords(ratio(part.exactA.over, part.exactA.under * part.pot))
  return [
    `${how}: ${a} for ${names.a} and ${b} for ${names.b}.`,
    `The part of ${names.a} is ${a} ÷ (${a} + ${b}) = ${fraction}.`,
    `${moneyWords(part.pot, names.currency)} × ${fraction} = ${rest}`,
  ]
}

function savingSteps(
  part: PotPart,
  typed: Extract<PotPart['principle'], { principle: 'saving' }>,
  names: ShareNames,
): string[] {
  const digits = currencyDigits(names.currency) ?? 2
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const alone = { a: minorUnits(typed.aloneA, digits), b: minorUnits(typed.aloneB, digits) }
  const exact = (of: Ratio) => exactMoneyWords(of, names.currency)
  const pot = money(part.pot)
  return [
    `Share the saving: alone, ${names.a} would pay ${money(alone.a)}${sourceClause(typed.sourceA)} and ${names.b} ${money(alone.b)}${sourceClause(typed.sourceB)}. Together it is ${pot}.`,
    `The saving is ${money(alone.a)} + ${money(alone.b)} − ${pot} = ${money(alone.a + alone.b - part.pot)}. Each keeps half of it.`,
    `${names.a}: (${pot} + ${money(alone.a)} − ${money(alone.b)}) ÷ 2 = ${exact(part.exactA)}.`,
    `${names.b}: (${pot} + ${money(alone.b)} − ${money(alone.a)}) ÷ 2 = ${exact(exactB(part))}.`,
  ]
}

function exactB(part: PotPart): Ratio {
  return ratio(part.pot * part.exactA.under - part.exactA.over, part.exactA.under)
}

function oddReason(part: PotPart, names: ShareNames, askedSoFar: ForBoth<bigint>): string {
  if (part.odd === undefined) return ''
  const { to, because } = part.odd
  const cutOff = (exact: Ratio) => fractionWords({ over: exact.over % exact.under, under: exact.under })
  const off = { a: cutOff(part.exactA), b: cutOff(exactB(part)) }
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const other = otherHousehold(to)
  switch (because) {
    case 'larger remainder':
      return `who had more cut off: ${off[to]} of a unit against ${off[other]}.`
    case 'asked for less so far':
      return `since both had as much cut off, and up to here it was asked for less: ${money(askedSoFar[to])} against ${money(askedSoFar[other])}.`
    case 'first on a full tie':
      return `the first household: both had as much cut off, and up to here both were asked for ${money(askedSoFar.a)}.`
    default:
      return never(because)
  }
}
