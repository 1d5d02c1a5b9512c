import { never } from '../../core/assert.ts'
import type { ItemShares } from '../../core/shares/itemShares.ts'
import type { PotPart, PotShare } from '../../core/shares/potShare.ts'
import { kindWords, principleWords } from '../labels.ts'
import { moneyWords } from '../money.ts'
import type { ShareNames } from '../shareText.ts'
import { spokenList } from '../summary/names.ts'
import { clipped } from './clipped.ts'

/** So many ways to share, and so many items under each, are told in a letter of one page; of the rest only how many. */
const [mostWays, mostItems] = [6, 5]

/**
 * Why each household is asked for its part, one short sentence for each way to share: "Halves: Lane to the gates and
 * Auger hire." Items that have nothing to share yet are left out.
 */
export function splitReasons(items: readonly ItemShares[], namesOf: (id: string) => ShareNames): string[] {
  const ways = new Map<string, string[]>()
  for (const item of items) {
    for (const { way, pot } of waysOf(item, namesOf(item.id))) {
      const title = clipped(item.name) || `${kindWords[item.kind]} ${item.index + 1}`
      ways.set(way, [...(ways.get(way) ?? []), `${title}${pot}`])
    }
  }
  const told = [...ways].slice(0, mostWays).map(([way, titles]) => `${way}: ${titlesWords(titles)}.`)
  const rest = ways.size - told.length
  return rest === 0 ? told : [...told, `The notebook shows ${rest} more ${rest === 1 ? 'way' : 'ways'}.`]
}

function titlesWords(titles: readonly string[]): string {
  const rest = titles.length - mostItems
  return spokenList(rest > 1 ? [...titles.slice(0, mostItems), `${rest} more`] : titles)
}

function waysOf({ pots }: ItemShares, names: ShareNames): { way: string; pot: string }[] {
  if (pots.form === 'together') return wayOf(pots.together, names).map((way) => ({ way, pot: '' }))
  const [materials, labour] = [wayOf(pots.materials, names), wayOf(pots.labour, names)]
  if (materials[0] === labour[0]) return materials.map((way) => ({ way, pot: '' }))
  return [
    ...materials.map((way) => ({ way, pot: labour.length === 0 ? '' : ' (materials)' })),
    ...labour.map((way) => ({ way, pot: materials.length === 0 ? '' : ' (work)' })),
  ]
}

type Way = PotPart['principle']

/** How one pot is shared; nothing where it is empty. */
function wayOf(pot: PotShare, names: ShareNames): string[] {
  const [first, ...others] = pot.parts
  if (first === undefined || pot.total === 0n) return []
  if (pot.principle.principle !== 'difference') return [wayWords(first.principle, names)]
  const basic =
    first.pot === 0n
      ? 'no basic fence to pay for'
      : `a basic fence of ${moneyWords(first.pot, names.currency)} ${wayInside(first.principle, names)}`
  const above = others.filter((part) => part.pot > 0n)
  const rest = above.map((part) => {
    const what = part.part === 'named upgrade' ? clipped(part.what) || 'an upgrade' : 'what is above it'
    return `${what}, ${moneyWords(part.pot, names.currency)}, ${wayInside(part.principle, names)}`
  })
  return [`${principleWords.difference} (${[basic, ...rest].join('; ')})`]
}

function wayInside(principle: Way, names: ShareNames): string {
  if (principle.principle === 'one') return `by ${clipped(names[principle.household])}`
  return principle.principle === 'equal' ? 'by halves' : `by: ${wayWords(principle, names)}`
}

function wayWords(principle: Way, names: ShareNames): string {
  const [a, b] = [clipped(names.a), clipped(names.b)]
  if (principle.principle === 'laid') return 'As the sections and gates that it serves'
  const name = principleWords[principle.principle]
  switch (principle.principle) {
    case 'equal':
      return name
    case 'percent':
      return `${name} (${principle.a} percent ${a}, ${principle.b} percent ${b})`
    case 'one':
      return `${name} (${principle.household === 'a' ? a : b})`
    case 'length':
      return `${name} (${principle.a} of ${a}, ${principle.b} of ${b})`
    case 'use':
      if (names.uses?.apart) return `${name} (halves until both take one count of the passages)`
      return `${name} (passages a week: ${names.uses?.a || '0'} of ${a}, ${names.uses?.b || '0'} of ${b})`
    case 'benefit':
      return `${name} (points: ${principle.a} for ${a}, ${principle.b} for ${b})`
    case 'saving':
      return `${name} (each would have paid more alone, and keeps half of what building together saves)`
    default:
      return never(principle)
  }
}
