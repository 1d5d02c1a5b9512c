import { assert } from '../core/assert.ts'
import type { CutPiece, CutRequest, CutStock, Nanometres } from './cutRequest.ts'

/**
 * A request as the search sees it. Every cut takes a kerf, the last one of a length may fall into its end: so a length
 * holds what fits when the kerf is added to each piece and to the length.
 */
export type CuttingProblem = {
  /** Pieces of one length taken together, longest first. */
  readonly items: readonly Item[]
  /** Stock of one length taken together, what is there before what is bought, shortest first. */
  readonly bins: readonly Bin[]
  readonly kerf: Nanometres
  readonly tooLong: readonly CutPiece[]
}

export type Item = {
  readonly length: Nanometres
  /** Length and kerf. */
  readonly size: Nanometres
  readonly demand: number
  /** Places in the request's `pieces`. */
  readonly sources: readonly number[]
}

export type Bin = {
  readonly length: Nanometres
  /** Length and kerf. */
  readonly capacity: Nanometres
  /** Infinity where there are as many as needed. */
  readonly count: number
  readonly bought: boolean
  /** Places in the request's `stock`. */
  readonly sources: readonly number[]
}

/** Throws on lengths and counts that are not what `CutRequest` says they are. */
export function cuttingProblem(request: CutRequest): CuttingProblem {
  const { pieces, stock, kerf } = request
  assert(Number.isSafeInteger(kerf) && kerf >= 0, 'a kerf in whole units')
  for (const { length, count } of [...pieces, ...stock]) {
    assert(Number.isSafeInteger(length) && length > 0, 'a length in whole units above zero')
    assert(count === undefined || (Number.isSafeInteger(count) && count >= 0), 'a whole count')
  }
  const longest = Math.max(0, ...stock.map(({ length }) => length))
  const tooLong = pieces.filter(({ length, count }) => stock.length > 0 && count > 0 && length > longest)
  return { items: itemsOf(pieces, tooLong, kerf), bins: binsOf(stock, kerf), kerf, tooLong }
}

function itemsOf(pieces: readonly CutPiece[], tooLong: readonly CutPiece[], kerf: Nanometres): Item[] {
  const byLength = new Map<Nanometres, Item>()
  pieces.forEach((piece, index) => {
    const { length, count } = piece
    if (count === 0 || tooLong.includes(piece)) return
    const known = byLength.get(length) ?? { length, size: length + kerf, demand: 0, sources: [] }
    byLength.set(length, { ...known, demand: known.demand + count, sources: [...known.sources, index] })
  })
  return [...byLength.values()].sort((left, right) => right.length - left.length)
}

function binsOf(stock: readonly CutStock[], kerf: Nanometres): Bin[] {
  const byKind = new Map<string, Bin>()
  stock.forEach(({ length, count = Number.POSITIVE_INFINITY, bought }, index) => {
    if (count === 0) return
    const kind = `${bought} ${length}`
    const known = byKind.get(kind) ?? { length, capacity: length + kerf, count: 0, bought, sources: [] }
    byKind.set(kind, { ...known, count: known.count + count, sources: [...known.sources, index] })
  })
  return [...byKind.values()].sort(
    (left, right) => Number(left.bought) - Number(right.bought) || left.length - right.length,
  )
}
