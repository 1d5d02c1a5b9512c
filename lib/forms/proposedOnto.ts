import { mergeDrafts, saysTheSame } from './mergeDrafts.ts'

type Item = Readonly<Record<string, unknown>>

/** What a proposal comes to on an item that may have been changed since. */
export type Onto =
  /** What it proposes, and nothing else, on the item as it is now. */
  | { readonly kind: 'fits'; readonly item: Item }
  /** Keys of the item that were changed since and that it proposes something for. */
  | { readonly kind: 'touched'; readonly keys: readonly string[] }

/**
 * Keys that one thing proposed stands on together: a way to share with how a common cost is laid out; and the dimensions,
 * since quantities and hours that are moved with one of them were worked out from the others.
 */
const standTogether: readonly (readonly string[])[] = [
  ['share', 'spread'],
  ['from', 'to', 'at', 'opening', 'height', 'buildUp', 'measured'],
]

/**
 * Takes what is proposed for an item, the difference between `was` and `proposed`, over onto the item as it is now. What
 * else was changed in the item since stays as it is now. Where both changed the same thing, each in its own way, nothing
 * is taken over.
 */
export function proposedOnto(was: Item, proposed: Item, now: Item): Onto {
  const { draft, clashes } = mergeDrafts(was, proposed, now)
  const differing = (keys: readonly string[], one: Item, other: Item) =>
    keys.filter((key) => !saysTheSame(key, one[key], other[key]))
  const together = standTogether.flatMap((keys) => {
    const moved = differing(keys, was, now)
    const same = differing(keys, proposed, now).length === 0
    return differing(keys, was, proposed).length === 0 || same ? [] : moved
  })
  const touched = new Set([...clashes.map(({ path }) => topKey(path)), ...together])
  return touched.size > 0 ? { kind: 'touched', keys: [...touched] } : { kind: 'fits', item: draft as Item }
}

/** What a proposal proposes for, key by key. */
export function proposedKeys(was: Item, proposed: Item): readonly string[] {
  return [...new Set([...Object.keys(was), ...Object.keys(proposed)])].filter(
    (key) => !saysTheSame(key, was[key], proposed[key]),
  )
}

function topKey(path: string): string {
  return /^[^.[]+/.exec(path)?.[0] ?? path
}
