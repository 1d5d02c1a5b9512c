import type { Section, Share, SimplePrinciple } from '../agreement/notebook.ts'
import { parseLength } from '../amounts/length.ts'
import { isNumber } from '../amounts/typedNumber.ts'
import type { Fault, FaultFacts } from '../faults.ts'
import type { Household } from '../people/household.ts'
import { type Result, refusedAll } from '../result.ts'
import { type ItemShares, nothingAsked, shareItem } from './itemShares.ts'

/** What a first split is worked out from, as it was typed: one stretch of fence, one sum, one stint of work. */
export type FirstSplit = {
  readonly length: string
  readonly height: string
  /** Money for all materials; empty: none yet. */
  readonly materials: string
  /** Hours of all the work, and what an hour is worth; empty: none yet. */
  readonly hours: string
  readonly rate: string
  readonly by: Household | 'hired'
  readonly way: FirstWay
  /** The lengths that the households front, for `length`. */
  readonly frontA: string
  readonly frontB: string
  /** What a fence that would do for both costs, work included, and who wants more, for `difference`. */
  readonly basic: string
  readonly wants: Household
}

export const firstWays = ['equal', 'length', 'difference'] as const
export type FirstWay = (typeof firstWays)[number]

/** The section that a first split stands for, in the words of the file: it can be refined like any other. */
export type FirstSection = Pick<Section, 'name' | 'from' | 'to' | 'height' | 'materials' | 'labour' | 'share'>

type Naming = {
  readonly name: string
  readonly materials: string
  readonly work: string
  readonly unit: string
}

/**
 * @param naming what the section and its two lines are called
 * @param start the station at which the line starts, in the notebook's units: "0 ft"
 */
export function firstSection(typed: FirstSplit, naming: Naming, start: string): FirstSection {
  const { length, height, materials, hours, rate, by } = typed
  const none = { taxPercent: '0', credit: false, from: '', changed: false }
  return {
    name: naming.name,
    from: start,
    to: length,
    height: { agreed: height, measuredFrom: '' },
    materials:
      materials === ''
        ? []
        : [
            {
              ...none,
              what: naming.materials,
              quantity: '1',
              unit: naming.unit,
              unitPrice: materials,
              suppliedBy: 'bought',
            },
          ],
    labour:
      hours === '' ? [] : [{ task: naming.work, hours, rate, by, counts: true, skill: '', ceiling: '' }],
    share: shareOf(typed),
  }
}

/** Halves and lengths share materials and work each by itself; a basic fence has one price, so there the two are one pot. */
function shareOf({ way, frontA, frontB, basic, wants }: FirstSplit): Share {
  if (way === 'difference') {
    const basicShare = { principle: 'equal' } as const
    const upgradeShare = { principle: 'one', household: wants } as const
    return { together: { principle: 'difference', basic, basicShare, upgradeShare, upgrades: [] } }
  }
  const principle: SimplePrinciple =
    way === 'length' ? { principle: 'length', a: frontA, b: frontB } : { principle: 'equal' }
  return { materials: principle, labour: principle }
}

/** Everything that keeps a first split from being worked out, at the fields of its form. */
export function firstSplitFaults(typed: FirstSplit, currency: string, digits: number): readonly Fault[] {
  const { way, materials, hours } = typed
  const check = (path: keyof FirstSplit, facts: FaultFacts | undefined): Fault[] =>
    facts === undefined ? [] : [{ path, ...facts }]
  const money = (text: string, needed: boolean) =>
    text === ''
      ? emptyFault('money', needed)
      : isNumber(text, digits)
        ? undefined
        : isNumber(text, 1000)
          ? ({ kind: 'money-digits', found: text, currency, digits } as const)
          : ({ kind: 'number-form', found: text, fractionDigits: digits } as const)
  return [
    ...check('length', lengthFault(typed.length, true)),
    ...check('height', lengthFault(typed.height, false)),
    ...check('materials', money(materials, hours === '')),
    ...check('hours', numberFault(hours, false)),
    ...check('rate', hours === '' ? undefined : numberFault(typed.rate, true)),
    ...(way === 'length'
      ? [
          ...check('frontA', lengthFault(typed.frontA, true)),
          ...check('frontB', lengthFault(typed.frontB, true)),
        ]
      : []),
    ...(way === 'difference' ? check('basic', money(typed.basic, true)) : []),
  ]
}

/** What the section asks of each household; refused with every fault, where it can't be worked out. */
export function splitFirst(typed: FirstSplit, currency: string, digits: number): Result<ItemShares> {
  const faults = firstSplitFaults(typed, currency, digits)
  if (faults.length > 0) return refusedAll(faults)
  const naming = { name: '', materials: '', work: '', unit: '' }
  const item: Section = {
    ...firstSection(typed, naming, '0 ft'),
    id: 's1',
    owner: '',
    upkeep: '',
    face: '',
    infill: '',
    drainage: '',
    notes: '',
    measured: [],
    meets: [],
  }
  const shared = shareItem({ kind: 'section', index: 0, path: 'section', item }, digits, nothingAsked)
  return shared.ok ? shared : refusedAll(shared.faults.map((fault) => ({ ...fault, path: fieldOf(typed) })))
}

/** The one field that lengths which add to nothing can be mended at. */
function fieldOf({ way }: FirstSplit): keyof FirstSplit {
  return way === 'length' ? 'frontA' : 'materials'
}

function emptyFault(what: 'money' | 'length' | 'number', needed: boolean): FaultFacts | undefined {
  return needed ? { kind: 'needed', what } : undefined
}

function lengthFault(text: string, needed: boolean): FaultFacts | undefined {
  if (text === '') return emptyFault('length', needed)
  const size = parseLength(text)
  if (size === undefined) return { kind: 'length-form', found: text, mayBeNegative: false }
  return size.over < 0n ? { kind: 'length-negative', found: text } : undefined
}

function numberFault(text: string, needed: boolean): FaultFacts | undefined {
  if (text === '') return emptyFault('number', needed)
  return isNumber(text, 6) ? undefined : { kind: 'number-form', found: text, fractionDigits: 6 }
}
