import type { Highs } from 'highs'
import { greatestCommonDivisor, lowerBoundOnBought } from './bounds.ts'
import type { CutRequest } from './cutRequest.ts'
import { type CuttingProblem, cuttingProblem } from './cuttingProblem.ts'
import { fewestCuts, mustCutForEveryPiece } from './fewestCuts.ts'
import type { Goal } from './goal.ts'
import { quickPacking } from './heuristics.ts'
import { leastCost } from './leastCost.ts'
import { betterPacking, type Packing, standingOf } from './packing.ts'
import { type CutPlan, type Proof, plannedCuts } from './plannedCuts.ts'
import { shorten } from './shorten.ts'
import { forgetSolver, solver } from './solver.ts'

/** Beyond this many different lengths of pieces or of stock a quick plan is given, with its distance to the bound. */
const mostItems = 120
const mostBins = 60

/**
 * Which piece comes from which length. As little as possible is left out, then as little as possible is bought, then it
 * takes the fewest cuts, then the fewest lengths, then the least length. Quick plans come first; where the best of them
 * does not meet the lower bound and the task is not too large, the solver looks for less within a counted number of steps.
 * The same request gets the same plan on every machine.
 *
 * Pieces that are too long and stock that does not suffice are told in the plan; throws only on lengths and counts that
 * are not what `CutRequest` says they are.
 */
export async function cutPlan(request: CutRequest): Promise<CutPlan> {
  const problem = cuttingProblem(request)
  const tooLarge = problem.items.length > mostItems || problem.bins.length > mostBins
  const packing = quickPacking(problem)
  const found = quickFound(problem, packing, tooLarge)
  const settled = found.unplacedProvenLeast && found.bought === 'least' && found.cutsProvenFewest
  const oneKind = problem.bins.length <= 1
  const nothing = problem.items.length === 0 || problem.bins.length === 0
  const best = nothing || tooLarge || (settled && oneKind) ? found : await searched(problem, found)
  return plannedCuts(request, problem, best.packing, {
    proven: best.bought,
    cutsProvenFewest: best.cutsProvenFewest,
    unplacedProvenLeast: best.unplacedProvenLeast,
  })
}

type Found = {
  readonly packing: Packing
  readonly unplacedProvenLeast: boolean
  readonly bought: Proof
  readonly cutsProvenFewest: boolean
}

function quickFound(problem: CuttingProblem, packing: Packing, tooLarge: boolean): Found {
  const { boughtLength, unplacedLength } = standingOf(problem, packing)
  const bought = proofOf(boughtLength, lowerBoundOnBought(problem, packing))
  const unplacedProvenLeast = unplacedLength === 0 || problem.bins.length === 0
  const cutsProvenFewest =
    bought === 'least' && (packing.length === 0 || (!tooLarge && mustCutForEveryPiece(problem, packing)))
  return { packing, unplacedProvenLeast, bought, cutsProvenFewest }
}

async function searched(problem: CuttingProblem, quick: Found): Promise<Found> {
  try {
    return search(await solver(), problem, quick)
  } catch {
    // A solver that breaks down costs the proof, not the plan. Its memory can't be trusted any more.
    forgetSolver()
    return quick
  }
}

function search(highs: Highs, problem: CuttingProblem, quick: Found): Found {
  let packing = quick.packing
  const take = (found: Packing) => {
    packing = betterPacking(problem, packing, shorten(problem, found))
  }
  let unplacedProvenLeast = quick.unplacedProvenLeast
  if (standingOf(problem, packing).unplacedLength > 0) {
    const placed = leastCost(highs, problem, placeMost(problem), packing)
    take(placed.packing)
    unplacedProvenLeast = standingOf(problem, packing).unplacedLength <= placed.lowerBound
  }
  const { unplacedLength, boughtLength } = standingOf(problem, packing)
  let lowerBound = lowerBoundOnBought(problem, packing)
  if (boughtLength > lowerBound) {
    const bought = leastCost(highs, problem, buyLeast(problem, unplacedLength), packing)
    take(bought.packing)
    lowerBound = Math.max(lowerBound, bought.lowerBound)
  }
  const cut = fewestCuts(highs, problem, packing)
  packing = cut.packing
  const bought = proofOf(standingOf(problem, packing).boughtLength, lowerBound)
  const cutsProvenFewest = bought === 'least' && (cut.proven || mustCutForEveryPiece(problem, packing))
  return { packing, unplacedProvenLeast, bought, cutsProvenFewest }
}

/** Leave out as little length as possible, whatever it costs. */
function placeMost({ items, bins }: CuttingProblem): Goal {
  return {
    binCosts: bins.map(() => 0),
    unplacedCosts: items.map(({ length }) => length),
    unplacedAtMost: Number.POSITIVE_INFINITY,
    each: items.reduce((divisor, { length }) => greatestCommonDivisor(divisor, length), 0),
  }
}

/** Buy as little length as possible and leave out no more than that. */
function buyLeast({ items, bins }: CuttingProblem, unplacedAtMost: number): Goal {
  return {
    binCosts: bins.map(({ bought, length }) => (bought ? length : 0)),
    unplacedCosts: items.map(() => 0),
    unplacedAtMost,
    each: bins.reduce(
      (divisor, bin) => (bin.bought ? greatestCommonDivisor(divisor, bin.length) : divisor),
      0,
    ),
  }
}

function proofOf(boughtLength: number, lowerBound: number): Proof {
  if (boughtLength <= lowerBound) return 'least'
  return { lowerBound, gapPercent: ((boughtLength - lowerBound) / boughtLength) * 100 }
}
