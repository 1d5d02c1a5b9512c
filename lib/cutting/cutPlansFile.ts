import type { Notebook } from '../core/agreement/notebook.ts'
import type { CutJob, CutJobPiece } from '../core/takeoff/cutJobs.ts'
import { asNumber, lowestTerms } from '../core/takeoff/exact.ts'
import type { TakeOff } from '../core/takeoff/takeOff.ts'
import { lengthWords } from '../words/length.ts'
import { memberText } from '../words/takeoff/quantityText.ts'
import { cutPlan } from './cutPlan.ts'
import { type CutRequest, pieceNanometres, stockNanometres } from './cutRequest.ts'
import type { CutPlan } from './plannedCuts.ts'

/** A cut plan for each profile of the take-off that has a stock length or pieces at hand, as plain data. */
export async function cutPlansFile(notebook: Notebook, { cutJobs }: Pick<TakeOff, 'cutJobs'>) {
  const plans = []
  for (const job of cutJobs) {
    if (job.stock.length + job.inventory.length === 0) continue
    // One after the other: the solver takes a core for itself.
    plans.push(planFile(notebook, job, await cutPlan(requestOf(notebook, job))))
  }
  return plans
}

export function requestOf(notebook: Notebook, job: CutJob): CutRequest {
  return {
    pieces: job.pieces.map((piece) => ({
      label: labelOf(notebook, piece),
      length: pieceNanometres(piece.length),
      count: piece.count,
    })),
    stock: [
      ...job.inventory.map(({ index, length, count }) => ({
        label: notebook.inventory[index]?.what.trim() || `piece at hand ${index + 1}`,
        length: stockNanometres(length),
        count,
        bought: false,
      })),
      ...job.stock.map((length) => ({
        label: lengthWords(length, notebook.units),
        length: stockNanometres(length),
        bought: true,
      })),
    ],
    kerf: pieceNanometres(job.kerf),
  }
}

function labelOf(notebook: Notebook, { item, part }: CutJobPiece): string {
  return `${notebook[item.list][item.index]?.id ?? ''} ${part}`
}

function planFile(notebook: Notebook, job: CutJob, plan: CutPlan) {
  const long = (nanometres: number) => ({
    millimetres: nanometres / 1e6,
    text: lengthWords(
      lowestTerms({ over: BigInt(Math.round(nanometres)), under: 1_000_000n }),
      notebook.units,
    ),
  })
  return {
    what: memberText(job.member, 'stock'),
    kerf: { millimetres: asNumber(job.kerf), text: lengthWords(job.kerf, notebook.units) },
    lengths: plan.lengths.map((length) => ({
      from: length.label,
      length: long(length.length),
      bought: length.bought,
      times: length.times,
      pieces: length.pieces.map(({ label, length: piece, count }) => ({ label, length: long(piece), count })),
      cuts: length.cuts,
      rest: long(length.rest),
    })),
    tooLong: plan.tooLong.map(({ label, length, count }) => ({ label, length: long(length), count })),
    unplaced: plan.unplaced.map(({ label, length, count }) => ({ label, length: long(length), count })),
    bought: long(plan.boughtLength),
    waste: long(plan.wasteLength),
    wastePercent: Math.round(plan.wastePercent * 1000) / 1000,
    cuts: plan.cuts,
    leastBought: plan.proven === 'least' ? ('proven' as const) : { gapPercent: plan.proven.gapPercent },
  }
}
