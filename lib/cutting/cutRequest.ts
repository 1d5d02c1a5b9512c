import type { Millimetres } from '../core/amounts/length.ts'

/**
 * Lengths for cutting are whole nanometres (safe integers, up to 9,000 km in all): 1/64 in is 396,875 nm, so that whatever
 * a tape shows is exact and sums never drift. Any other unit works too if all lengths of a request are in it.
 */
export type Nanometres = number

/** Pieces of one length that are needed. */
export type CutPiece = {
  readonly label: string
  /** More than zero. */
  readonly length: Nanometres
  /** A whole number, zero or more. */
  readonly count: number
}

/** Lengths of one kind to cut from. */
export type CutStock = {
  readonly label: string
  /** More than zero. */
  readonly length: Nanometres
  /** How many there are; without it as many as needed. */
  readonly count?: number
  /** Bought for this, or there already: what is there is used before anything is bought. */
  readonly bought: boolean
}

export type CutRequest = {
  readonly pieces: readonly CutPiece[]
  readonly stock: readonly CutStock[]
  /** What a saw cut takes away, zero or more. */
  readonly kerf: Nanometres
}

const nanometresPerMillimetre = 1_000_000n

/** A piece or a kerf in nanometres, rounded up so that nothing comes out too short. */
export function pieceNanometres(length: Millimetres): Nanometres {
  const { over, under } = length
  return Number((over * nanometresPerMillimetre + under - 1n) / under)
}

/** A stock length in nanometres, rounded down so that nothing is promised that is not there. Of zero or more. */
export function stockNanometres(length: Millimetres): Nanometres {
  return Number((length.over * nanometresPerMillimetre) / length.under)
}
