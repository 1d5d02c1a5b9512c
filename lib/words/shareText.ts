import type { Notebook } from '../core/agreement/notebook.ts'
import { currencyDigits } from '../core/amounts/currency.ts'
import { minorUnits } from '../core/amounts/money.ts'
import { never } from '../core/assert.ts'
import { type Household, otherHousehold } from '../core/people/household.ts'
import type { Capped, WaitingCap } from '../core/shares/caps.ts'
import type { ItemShares } from '../core/shares/itemShares.ts'
import type { SharedUses } from '../core/shares/passages.ts'
import type { PotPart, PotShare } from '../core/shares/potShare.ts'
import { householdNames } from './labels.ts'
import { moneyWords } from './money.ts'
import { laidClause } from './spreadText.ts'

/** What a sentence about shares needs to know besides the figures. */
export type ShareNames = {
  readonly currency: string
  readonly a: string
  readonly b: string
  /** Passages a week, on a gate, or that they are counted apart. */
  readonly uses?: SharedUses | undefined
}

export function shareNames(notebook: Notebook, uses?: ShareNames['uses']): ShareNames {
  return {
    currency: notebook.currency,
    ...householdNames(notebook),
    uses,
  }
}

/**
 * The result of one pot in plain words, with the figures that lead to it: "Pay the difference: the basic fence of
 * $900.00 is halved; the $412.35 above it is asked of no. 12. That asks …".
 */
export function potSentence(pot: PotShare, names: ShareNames): string {
  if (pot.total === 0n) return 'Nothing to share yet.'
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const [first, ...above] = pot.parts
  const result = `${names.a} is asked for ${money(pot.a)}, ${names.b} for ${money(pot.b)}`
  if (pot.principle.principle !== 'difference' || !first) {
    return first
      ? `${sentenceStart(first, names, money(pot.total))}: ${result}.${oddWords([first], names)}`
      : `${result}.`
  }
  const clauses = aboveClauses(pot.total - first.pot, above, names)
  return `Pay the difference: the basic fence of ${money(first.pot)} ${partClause(first, names)}; ${clauses}. So ${result}.${oddWords(pot.parts, names)}`
}

/** What lies above the basic fence: each upgrade with its household and its amount, then the rest. */
function aboveClauses(above: bigint, parts: readonly PotPart[], names: ShareNames): string {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  if (above === 0n) return 'nothing is spent above it'
  const named = parts.flatMap((part) => (part.part === 'named upgrade' ? [upgradeClause(part, names)] : []))
  const rest = parts.find(({ part }) => part === 'upgrade')
  if (named.length === 0 || rest === undefined)
    return `the ${money(above)} above it ${rest ? partClause(rest, names) : ''}`
  return [
    ...named,
    rest.pot === 0n ? 'nothing is left above that' : `the ${money(rest.pot)} left ${partClause(rest, names)}`,
  ].join('; ')
}

/** What an upgrade is called, in quotation marks as it was typed. */
export function upgradeName(part: Extract<PotPart, { part: 'named upgrade' }>): string {
  const what = part.what.trim()
  return what === '' ? 'an upgrade without a name' : `“${what}”`
}

/** "“one foot more height” for $120.00 is asked of no. 14", and how much of it there is to ask for. */
function upgradeClause(part: Extract<PotPart, { part: 'named upgrade' }>, names: ShareNames): string {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const name = upgradeName(part)
  if (part.pot === part.amount) return `${name} for ${money(part.pot)} ${partClause(part, names)}`
  return part.pot === 0n
    ? `for ${name} nothing is left to ask for`
    : `of ${name} at ${money(part.amount)} only ${money(part.pot)} is spent, which ${partClause(part, names)}`
}

function sentenceStart(part: PotPart, names: ShareNames, pot: string): string {
  const principle = part.principle
  switch (principle.principle) {
    case 'equal':
      return `Halves: ${pot} is halved`
    case 'percent':
      return `Agreed parts: ${principle.a} percent of ${pot} is asked of ${names.a} and ${principle.b} percent of ${names.b}`
    case 'one':
      return `One household: all of ${pot} is asked of ${names[principle.household]}`
    case 'length':
    case 'use':
    case 'benefit':
    case 'laid':
      return `${pot} ${partClause(part, names)}`
    case 'saving':
      return `Share the saving: ${savingWords(part, names)}`
    default:
      return never(principle)
  }
}

/** How one part of a pot is shared, as the end of a sentence that began with the part. */
function partClause(part: PotPart, names: ShareNames): string {
  const { principle } = part
  switch (principle.principle) {
    case 'equal':
      return 'is halved'
    case 'percent':
      return `is asked of ${names.a} at ${principle.a} percent and of ${names.b} at ${principle.b} percent`
    case 'one':
      return `is asked of ${names[principle.household]}`
    case 'length':
      return `is shared by length, ${principle.a} for ${names.a} to ${principle.b} for ${names.b}`
    case 'use':
      if (names.uses?.apart) return `is halved for now, by use: ${countedApart}`
      return `is shared by use, ${counted(names.uses?.a || '0', 'passage')} a week for ${names.a} to ${names.uses?.b || '0'} for ${names.b}`
    case 'benefit':
      return `is shared by benefit, ${counted(principle.a, 'point')} for ${names.a} to ${principle.b} for ${names.b}`
    case 'saving':
      return `is shared by the saving (${savingWords(part, names)})`
    case 'laid':
      return laidClause(principle)
    default:
      return never(principle)
  }
}

const countedApart = 'passages are counted apart and not settled, and until both take one count each has half'

function counted(figure: string, one: string): string {
  return `${figure} ${figure === '1' ? one : `${one}s`}`
}

function savingWords(part: PotPart, names: ShareNames): string {
  if (part.principle.principle !== 'saving') return ''
  const digits = currencyDigits(names.currency) ?? 2
  const money = (typed: string) => moneyWords(minorUnits(typed, digits), names.currency)
  const { aloneA, aloneB, sourceA, sourceB } = part.principle
  const together = moneyWords(part.pot, names.currency)
  return `alone ${names.a} would have paid ${money(aloneA)}${sourceClause(sourceA)} and ${names.b} ${money(aloneB)}${sourceClause(sourceB)}; together it is ${together}, and each keeps half of what that saves`
}

/** Where a figure for building alone comes from, behind it; nothing where nobody said. */
export function sourceClause(source: string): string {
  return source.trim() === '' ? '' : ` (source: ${source.trim()})`
}

/** Who was asked for the odd unit and why, for every part that had one. */
function oddWords(parts: readonly PotPart[], names: ShareNames): string {
  const odd = parts.flatMap((part) => (part.odd ? [part.odd] : []))
  return odd
    .map(({ to, because }) => {
      const why = {
        'larger remainder': 'whose exact share has the larger remainder',
        'asked for less so far': 'who had been asked for less up to here',
        'first on a full tie': 'because both had been asked for the same up to here',
      }[because]
      return ` The odd ${moneyWords(1n, names.currency)} goes to ${names[to]}, ${why}.`
    })
    .join('')
}

/** All sentences about the shares of an item: one for each pot. */
export function itemShareSentences(
  item: ItemShares,
  names: ShareNames,
): readonly { pot: string; sentence: string }[] {
  if (item.pots.form === 'together') {
    return [{ pot: 'Materials and work together', sentence: potSentence(item.pots.together, names) }]
  }
  return [
    { pot: 'Materials', sentence: potSentence(item.pots.materials, names) },
    { pot: 'Work', sentence: potSentence(item.pots.labour, names) },
  ]
}

/** What a cap moved, in words; undefined where none did. */
export function capSentence(asked: Capped, names: ShareNames): string | undefined {
  if (!asked.moved) return undefined
  const { from, amount } = asked.moved
  const to: Household = otherHousehold(from)
  return `The cap of ${names[from]} moves ${moneyWords(amount, names.currency)} to ${names[to]}.`
}

/** What a cap would move, and what it waits for. */
export function waitingCapSentence({ household, cap, amount }: WaitingCap, names: ShareNames): string {
  const [to, money] = [names[otherHousehold(household)], (minor: bigint) => moneyWords(minor, names.currency)]
  return `The cap of ${names[household]}, ${money(cap)}, would move ${money(amount)} to ${to} once ${to} marks the caps. Until then it moves nothing.`
}
