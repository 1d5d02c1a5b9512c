import type {
  PassageCounts,
  Principle,
  PrincipleName,
  Share,
  SimplePrinciple,
} from '../agreement/notebook.ts'
import { never } from '../assert.ts'
import type { ForBoth } from '../people/household.ts'

/** The ways to share that are held side by side: every principle once, and "one household" for each of the two. */
export const wayNames = [
  'equal',
  'percent',
  'length',
  'use',
  'benefit',
  'saving',
  'difference',
  'one-a',
  'one-b',
] as const
export type Way = (typeof wayNames)[number]

/** The principle that a way stands for. */
export function principleOfWay(way: Way): PrincipleName {
  return way === 'one-a' || way === 'one-b' ? 'one' : way
}

/** Why a way can't be used on an item. */
export type NoShare = 'no gate' | 'no passages' | 'no figures'

/** A pot that stays as it is chosen, since the way's amounts were given for the other pot alone. */
export type StandingPot = 'materials' | 'labour'

export type ShareUnder =
  | { readonly share: Share; readonly stays: StandingPot | undefined }
  | { readonly missing: NoShare }

/** What a way looks at: the share as it stands and, on a gate, the passages a week. */
type SharedItem = {
  readonly share: Share
  readonly uses?: ForBoth<string>
  /** There while the passages are counted apart: by use is then by halves. */
  readonly passages?: PassageCounts
}

/**
 * An item's share if it followed this way, from figures that stand in the item already and no others. Parts, lengths and
 * points that were given for one pot serve the other as well. Amounts of money (building alone, the basic fence) belong
 * to the pot they were given for: the other pot then stays as it is chosen.
 */
export function shareUnder(item: SharedItem, way: Way): ShareUnder {
  const { share } = item
  const given = 'together' in share ? [share.together] : [share.materials, share.labour]
  if (way === 'use' && item.uses === undefined) return { missing: 'no gate' }
  const anyPassages = item.passages !== undefined || counted(item.uses?.a) || counted(item.uses?.b)
  if (way === 'use' && !anyPassages) return { missing: 'no passages' }
  if ('together' in share) {
    const together = principleFor(way, [share.together], given)
    return together === undefined ? { missing: 'no figures' } : { share: { together }, stays: undefined }
  }
  const materials = principleFor(way, [share.materials], given)
  const labour = principleFor(way, [share.labour], given)
  if (materials === undefined && labour === undefined) return { missing: 'no figures' }
  return {
    share: { materials: materials ?? share.materials, labour: labour ?? share.labour },
    stays: materials === undefined ? 'materials' : labour === undefined ? 'labour' : undefined,
  }
}

function principleFor(
  way: Way,
  own: readonly Principle[],
  given: readonly Principle[],
): Principle | undefined {
  switch (way) {
    case 'equal':
    case 'use':
      return { principle: way }
    case 'one-a':
      return { principle: 'one', household: 'a' }
    case 'one-b':
      return { principle: 'one', household: 'b' }
    case 'percent':
    case 'length':
    case 'benefit':
      return [...own, ...given].flatMap(withParts).find((one) => one.principle === way)
    case 'saving':
    case 'difference':
      return own.find((one) => one.principle === way)
    default:
      return never(way)
  }
}

/** A principle and, under `difference`, the two inside it, whose parts and lengths can serve a whole pot. */
function withParts(principle: Principle): readonly (Principle | SimplePrinciple)[] {
  return principle.principle === 'difference'
    ? [principle, principle.basicShare, principle.upgradeShare]
    : [principle]
}

function counted(typed: string | undefined): boolean {
  return typed !== undefined && /[1-9]/.test(typed)
}
