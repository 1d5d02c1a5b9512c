import type { Spread } from '../core/agreement/notebook.ts'
import type { Minor } from '../core/amounts/money.ts'
import { multiplyRatios, ratio } from '../core/amounts/ratio.ts'
import { never } from '../core/assert.ts'
import type { PotPart } from '../core/shares/potShare.ts'
import type { Laid, LaidPart, SpreadTarget } from '../core/shares/spread.ts'
import { exactMoneyWords, fractionWords } from './exactWords.ts'
import { kindWords } from './labels.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'

/** How a common cost is laid on sections and gates, within a sentence. */
export const spreadWords: Readonly<Record<Spread, string>> = {
  length: 'by length',
  cost: 'by direct cost',
  equal: 'equally',
}

/** The choices, '' for a cost that is shared by itself. */
export const spreadLabels: Readonly<Record<Spread | '', string>> = {
  '': 'Shared by itself',
  length: 'Laid on sections and gates, by length',
  cost: 'Laid on sections and gates, by direct cost',
  equal: 'Laid on sections and gates, equally',
}

/** One sentence each, for whoever chooses. */
export const spreadMeaning: Readonly<Record<Spread | '', string>> = {
  '': 'It follows a way to share of its own.',
  length: 'Each section bears it by its length, each gate by its opening.',
  cost: 'Each section and gate bears it by what its own materials and work cost.',
  equal: 'Each section and gate bears the same part.',
}

/** Why no way to share can be chosen for a common cost that is laid on the others. */
export function waysRestWords(by: Spread): string {
  return `This cost is laid on the sections and gates ${spreadWords[by]}. Each of them shares its part its own way, so no way is chosen here. To choose one, let the cost be shared by itself.`
}

/** How a pot is laid, as the end of a sentence that began with the pot. */
export function laidClause({ by, parts }: Laid): string {
  const on = parts.length === 1 ? 'the one section or gate' : `the ${parts.length} sections and gates`
  return `is laid on ${on} ${spreadWords[by]}, and each shares its part its own way`
}

/** What a section or gate is called where it bears a part. */
export function targetTitle({ kind, index, name }: Pick<SpreadTarget, 'kind' | 'index' | 'name'>): string {
  return name.trim() || `${kindWords[kind]} ${index + 1}`
}

/** The arithmetic of a pot that is laid: each part, what a bears of it, and the sum. */
export function laidSteps(part: PotPart, laid: Laid, names: ShareNames): string[] {
  const pot = moneyWords(part.pot, names.currency)
  const exactB = ratio(part.pot * part.exactA.under - part.exactA.over, part.exactA.under)
  const [a, b] = [exactMoneyWords(part.exactA, names.currency), exactMoneyWords(exactB, names.currency)]
  return [
    `Laid on the sections and gates ${spreadWords[laid.by]}. ${levelledWords(laid)}`.trim(),
    ...laid.parts.map((one) => partStep(one, laid, names)),
    `The parts of ${names.a} add to ${fractionWords(laid.fractionA)}.`,
    `${pot} × ${fractionWords(laid.fractionA)} = ${a} for ${names.a}. The rest is ${b} for ${names.b}.`,
  ]
}

function levelledWords({ levelled, by }: Laid): string {
  if (!levelled) return ''
  return by === 'length'
    ? 'No length is said yet, so the parts are equal.'
    : 'Nothing on them has a price yet, so the parts are equal.'
}

function partStep({ target, part, fractionA }: LaidPart, laid: Laid, names: ShareNames): string {
  const [bears, own] = [fractionWords(part), fractionWords(fractionA)]
  const product = fractionWords(multiplyRatios(part, fractionA))
  return `${targetTitle(target)}${weightWords(target, laid, names)} bears ${bears}. ${own} of that is the part of ${names.a}: ${bears} × ${own} = ${product}.`
}

function weightWords(target: SpreadTarget, { by, levelled }: Laid, names: ShareNames): string {
  if (levelled) return ''
  switch (by) {
    case 'length':
      return `, ${target.typed === '' ? 'without a length' : target.typed},`
    case 'cost':
      return `, ${money(target.cost, names)},`
    case 'equal':
      return ''
    default:
      return never(by)
  }
}

function money(minor: Minor, names: ShareNames): string {
  return moneyWords(minor, names.currency)
}
