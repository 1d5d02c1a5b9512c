import type { CutPiece, CutRequest, Nanometres } from './cutRequest.ts'

/** Stock lengths that are cut alike. */
export type CutLength = {
  /** Place in the request's `stock`. */
  readonly stockIndex: number
  readonly label: string
  readonly length: Nanometres
  readonly bought: boolean
  /** How many lengths are cut like this. */
  readonly times: number
  /** What comes out of one of them, longest first; `pieceIndex` is the place in the request's `pieces`. */
  readonly pieces: readonly (CutPiece & { readonly pieceIndex: number })[]
  /** Saw cuts on one of them. */
  readonly cuts: number
  /** What is left of one of them beside the kerfs. */
  readonly rest: Nanometres
}

export type CutPlan = {
  readonly lengths: readonly CutLength[]
  /** Pieces longer than every stock length of the request. */
  readonly tooLong: readonly CutPiece[]
  /** Pieces for which the stock of limited number does not reach; the least length of them that was found. */
  readonly unplaced: readonly CutPiece[]
  /** Length to buy in all. */
  readonly boughtLength: Nanometres
  /** Length of all stock that is cut, bought or there already. */
  readonly usedLength: Nanometres
  /** Length of the pieces that come out. */
  readonly piecesLength: Nanometres
  /** What is used and does not become a piece: rests and kerfs. */
  readonly wasteLength: Nanometres
  /** `wasteLength` in percent of `usedLength`; 0 where nothing is used. */
  readonly wastePercent: number
  readonly cuts: number
  /** Whether less cannot be bought, or how far from the lower bound the plan may be at most (percent of the bound). */
  readonly proven: 'least' | { readonly gapPercent: number; readonly lowerBound: Nanometres }
  /** Whether, buying no more than that, there is no plan of fewer cuts. */
  readonly cutsProvenFewest: boolean
}

export declare function cutPlan(request: CutRequest): Promise<CutPlan>
