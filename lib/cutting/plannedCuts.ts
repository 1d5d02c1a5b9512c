import type { CutPiece, CutRequest, Nanometres } from './cutRequest.ts'
import type { CuttingProblem } from './cuttingProblem.ts'
import { cutsOf, type Packing, spareOf, standingOf, unplacedCounts } from './packing.ts'

/** Stock lengths that are cut alike. */
export type CutLength = {
  /** Place in the request's `stock`. */
  readonly stockIndex: number
  readonly label: string
  readonly length: Nanometres
  readonly bought: boolean
  /** How many lengths are cut like this. */
  readonly times: number
  /** What comes out of each of them, longest first; `pieceIndex` is the place in the request's `pieces`. */
  readonly pieces: readonly (CutPiece & { readonly pieceIndex: number })[]
  /** Saw cuts on each of them. */
  readonly cuts: number
  /** What is left of each of them beside the kerfs. */
  readonly rest: Nanometres
}

export type CutPlan = {
  /** In the order of the request's stock. */
  readonly lengths: readonly CutLength[]
  /** Pieces longer than every stock length of the request. */
  readonly tooLong: readonly CutPiece[]
  /** Pieces for which the stock, being limited in number, does not suffice: as little length of them as was found. */
  readonly unplaced: readonly CutPiece[]
  /** Whether no plan leaves out less length. */
  readonly unplacedProvenLeast: boolean
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
  /** `least` where less can't be bought for these pieces; else the bound, and by how much of the bought length it is lower. */
  readonly proven: Proof
  /** Whether, buying no more than this, there is no plan of fewer cuts. */
  readonly cutsProvenFewest: boolean
}

export type Proof = 'least' | { readonly gapPercent: number; readonly lowerBound: Nanometres }

/** Gives a packing's lengths and pieces back their labels, in the order of the request. */
export function plannedCuts(
  request: CutRequest,
  problem: CuttingProblem,
  packing: Packing,
  proof: Pick<CutPlan, 'proven' | 'cutsProvenFewest' | 'unplacedProvenLeast'>,
): CutPlan {
  const { boughtLength, usedLength, cuts } = standingOf(problem, packing)
  const pieces = problem.items.map(({ sources }) => queue(sources, (at) => request.pieces[at]?.count ?? 0))
  const stock = problem.bins.map(({ sources }) =>
    queue(sources, (at) => request.stock[at]?.count ?? Number.POSITIVE_INFINITY),
  )
  const lengths = packing
    .flatMap((pattern) => {
      const parts: CutLength[] = []
      let left = pattern.times
      while (left > 0) {
        const part = nextAlike(left, stock[pattern.bin] ?? [], pattern.takes, pieces)
        left -= part.times
        const source = request.stock[part.stockIndex]
        const spare = spareOf(problem, pattern)
        parts.push({
          ...part,
          label: source?.label ?? '',
          length: source?.length ?? 0,
          bought: source?.bought ?? false,
          pieces: part.pieces.map(({ pieceIndex, count }) => ({
            pieceIndex,
            label: request.pieces[pieceIndex]?.label ?? '',
            length: request.pieces[pieceIndex]?.length ?? 0,
            count,
          })),
          cuts: cutsOf(problem, pattern),
          // The last cut takes a kerf, or what is left where that is less.
          rest: Math.max(0, spare - problem.kerf),
        })
      }
      return parts
    })
    .sort((left, right) => left.stockIndex - right.stockIndex)
  const piecesLength = placedLength(problem, packing)
  const wasteLength = usedLength - piecesLength
  return {
    lengths,
    tooLong: problem.tooLong,
    unplaced: pieces.flatMap((sources) =>
      sources
        .filter(({ left }) => left > 0)
        .map(({ at, left }) => ({
          label: request.pieces[at]?.label ?? '',
          length: request.pieces[at]?.length ?? 0,
          count: left,
        })),
    ),
    boughtLength,
    usedLength,
    piecesLength,
    wasteLength,
    wastePercent: usedLength === 0 ? 0 : (wasteLength / usedLength) * 100,
    cuts,
    ...proof,
  }
}

function placedLength(problem: CuttingProblem, packing: Packing): Nanometres {
  const left = unplacedCounts(problem, packing)
  return problem.items.reduce(
    (sum, { length, demand }, item) => sum + length * (demand - (left[item] ?? 0)),
    0,
  )
}

type Queue = { readonly at: number; left: number }[]

function queue(sources: readonly number[], countAt: (at: number) => number): Queue {
  return sources.map((at) => ({ at, left: countAt(at) })).filter(({ left }) => left > 0)
}

/** Takes from the queues what the next lengths need, as many lengths as come out with the same labels. */
function nextAlike(
  most: number,
  stock: Queue,
  takes: Packing[number]['takes'],
  pieces: readonly Queue[],
): Pick<CutLength, 'stockIndex' | 'times'> & { pieces: { pieceIndex: number; count: number }[] } {
  const first = firstLeft(stock)
  let times = Math.min(most, first.left)
  const parts: { source: Queue[number]; count: number }[] = []
  for (const { item, count } of takes) {
    let needed = count
    for (const source of pieces[item] ?? []) {
      if (needed === 0) break
      const part = Math.min(needed, source.left)
      if (part === 0) continue
      parts.push({ source, count: part })
      times = Math.min(times, Math.floor(source.left / part))
      needed -= part
    }
  }
  first.left -= times
  for (const { source, count } of parts) source.left -= count * times
  return {
    stockIndex: first.at,
    times,
    pieces: parts.map(({ source, count }) => ({ pieceIndex: source.at, count })),
  }
}

function firstLeft(stock: Queue): Queue[number] {
  const first = stock.find(({ left }) => left > 0)
  if (!first) throw new Error('a plan that cuts more lengths than there are')
  return first
}
