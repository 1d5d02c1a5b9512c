/** Rows merged, with those that both sides changed; `apart` where rows of one side cannot be told from those of the other. */
export type RowsMerge =
  | {
      readonly rows: readonly unknown[]
      readonly clashes: readonly { readonly at: number; readonly mine: unknown; readonly theirs: unknown }[]
    }
  | 'apart'

/** The old rows `from` up to `to` and what stands in their place. */
type Hunk = { readonly from: number; readonly to: number; readonly rows: readonly unknown[] }

/**
 * Two lists that were made from the same third. Rows have no names, so they are told by what they say: what is the same
 * in both lists stays, and between such rows stand the changes. Changes at different places are taken over; rows that
 * both added stand one after the other, theirs first.
 *
 * @param text the same for rows that say the same
 */
export function mergeRows(
  opened: readonly unknown[],
  mine: readonly unknown[],
  theirs: readonly unknown[],
  text: (row: unknown) => string,
): RowsMerge {
  const [old, own, other] = [opened, mine, theirs].map((rows) => rows.map(text)) as [
    string[],
    string[],
    string[],
  ]
  const [ownHunks, otherHunks] = [hunks(old, own, mine), hunks(old, other, theirs)]
  const rows: unknown[] = []
  const clashes: { at: number; mine: unknown; theirs: unknown }[] = []
  let done = 0
  while (ownHunks.length > 0 || otherHunks.length > 0) {
    const region = nextRegion(ownHunks, otherHunks)
    rows.push(...opened.slice(done, region.from))
    done = region.to
    const before = opened.slice(region.from, region.to)
    const [ours, new_] = [inRegion(opened, region, region.mine), inRegion(opened, region, region.theirs)]
    if (region.mine.length === 0 || region.theirs.length === 0) {
      rows.push(...(region.mine.length === 0 ? new_ : ours))
    } else if (before.length === 0) {
      const known = new Set(new_.map(text))
      rows.push(...new_, ...ours.filter((row) => !known.has(text(row))))
    } else if (ours.length === before.length && new_.length === before.length) {
      for (const [at, row] of ours.entries()) {
        const [was, now] = [text(before[at]), text(new_[at])]
        if (text(row) === was) rows.push(new_[at])
        else {
          if (now !== was && now !== text(row)) clashes.push({ at: rows.length, mine: row, theirs: new_[at] })
          rows.push(row)
        }
      }
    } else if (ours.map(text).join('\n') === new_.map(text).join('\n')) rows.push(...ours)
    else return 'apart'
  }
  return { rows: [...rows, ...opened.slice(done)], clashes }
}

/** Takes the next changes off both lists: one, or all that touch the same old rows. */
function nextRegion(mine: Hunk[], theirs: Hunk[]) {
  const first = [mine[0], theirs[0]]
    .filter((hunk) => hunk !== undefined)
    .reduce((one, other) =>
      other.from < one.from || (other.from === one.from && other.to < one.to) ? other : one,
    )
  const region = { from: first.from, to: first.to, mine: [] as Hunk[], theirs: [] as Hunk[] }
  for (let grew = true; grew; ) {
    grew = false
    for (const [list, taken] of [
      [mine, region.mine],
      [theirs, region.theirs],
    ] as const) {
      const [next] = list
      if (next === undefined || !(next === first || overlap(next, region))) continue
      list.shift()
      taken.push(next)
      region.to = Math.max(region.to, next.to)
      grew = true
    }
  }
  return region
}

function overlap(one: { from: number; to: number }, other: { from: number; to: number }): boolean {
  if (one.from === one.to && other.from === other.to) return one.from === other.from
  return one.from < other.to && other.from < one.to
}

/** What one side has in place of the old rows of a region. */
function inRegion(
  opened: readonly unknown[],
  region: { from: number; to: number },
  own: readonly Hunk[],
): unknown[] {
  const rows: unknown[] = []
  let at = region.from
  for (const hunk of own) {
    rows.push(...opened.slice(at, hunk.from), ...hunk.rows)
    at = hunk.to
  }
  return [...rows, ...opened.slice(at, region.to)]
}

/** Where a list differs from the old one, by the longest run of rows that are in both. */
function hunks(old: readonly string[], now: readonly string[], rows: readonly unknown[]): Hunk[] {
  const longest = old.map(() => new Array<number>(now.length + 1).fill(0))
  longest.push(new Array<number>(now.length + 1).fill(0))
  const length = (left: number, right: number) => longest[left]?.[right] ?? 0
  for (let left = old.length - 1; left >= 0; left -= 1) {
    for (let right = now.length - 1; right >= 0; right -= 1) {
      const best =
        old[left] === now[right]
          ? length(left + 1, right + 1) + 1
          : Math.max(length(left + 1, right), length(left, right + 1))
      const row = longest[left]
      if (row !== undefined) row[right] = best
    }
  }
  const found: Hunk[] = []
  let [left, right] = [0, 0]
  while (left < old.length || right < now.length) {
    const [from, begin] = [left, right]
    while (left < old.length || right < now.length) {
      if (left < old.length && right < now.length && old[left] === now[right]) break
      if (right >= now.length || (left < old.length && length(left + 1, right) >= length(left, right + 1)))
        left += 1
      else right += 1
    }
    if (left > from || right > begin) found.push({ from, to: left, rows: rows.slice(begin, right) })
    while (left < old.length && right < now.length && old[left] === now[right]) {
      left += 1
      right += 1
    }
  }
  return found
}
