import loadHighs from 'highs'
import { cutPlan } from '../../lib/cutting/cutPlan.ts'
import type { CutRequest } from '../../lib/cutting/cutRequest.ts'
import { instances } from '../published/cuttingInstances.ts'

type Row = { readonly what: string; readonly figure: number; readonly limit: number; readonly unit: string }

const millimetre = 1_000_000

/** Sixty pieces, all different, by a fixed generator of whole numbers (Lehmer's, from memory). */
function sixtyPieces(seed: number, stock: CutRequest['stock']): CutRequest {
  let state = seed
  const pieces = Array.from({ length: 60 }, (_, at) => {
    state = (state * 48_271) % 2_147_483_647
    return { label: `piece ${at + 1}`, length: (500 + (state % 2600)) * millimetre, count: 1 }
  })
  return { pieces, stock, kerf: 3 * millimetre }
}

const bought = (millimetres: number) => ({
  label: `${millimetres} mm`,
  length: millimetres * millimetre,
  bought: true,
})
const reclaimed = [2700, 3350, 4120, 5055].map((millimetres) => ({
  label: `reclaimed ${millimetres} mm`,
  length: millimetres * millimetre,
  count: 2,
  bought: false,
}))

/** Milliseconds of processor time. */
async function timeOf(work: () => unknown): Promise<number> {
  const before = process.cpuUsage()
  await work()
  const spent = process.cpuUsage(before)
  return (spent.user + spent.system) / 1000
}

async function worst(requests: readonly CutRequest[]): Promise<number> {
  let most = 0
  for (const request of requests) most = Math.max(most, await timeOf(() => cutPlan(request)))
  return most
}

/** Two published instances: 73 lengths of 5600, and Chvátal's 453 of 100; as whole units of any kind. */
const published = instances.slice(0, 2)

/** The integer programme over every pattern, for HiGHS alone. */
function everyPatternModel(length: number, pieces: readonly (readonly [number, number])[]): string {
  let patterns: number[][] = [[]]
  const size = (counts: readonly number[]) =>
    counts.reduce((sum, count, at) => sum + count * (pieces[at]?.[0] ?? 0), 0)
  for (const [piece] of pieces) {
    patterns = patterns.flatMap((counts) =>
      Array.from({ length: Math.floor((length - size(counts)) / piece) + 1 }, (_, count) => [
        ...counts,
        count,
      ]),
    )
  }
  const used = patterns.filter((counts) => counts.some((count) => count > 0))
  const names = used.map((_, at) => `x${at}`)
  const rows = pieces.map(([, count], piece) => {
    const terms = used.flatMap((counts, at) => ((counts[piece] ?? 0) > 0 ? [`${counts[piece]} x${at}`] : []))
    return ` d${piece}: ${terms.join(' + ')} >= ${count}`
  })
  return `Minimize\n n: ${names.join(' + ')}\nSubject To\n${rows.join('\n')}\nGenerals\n ${names.join(' ')}\nEnd`
}

/** Figures for cut plans against their limits. */
export async function cuttingRows(): Promise<Row[]> {
  const highs = await loadHighs()
  // The first plan loads the solver.
  await cutPlan(sixtyPieces(1, [bought(6000), bought(6400)]))
  const seeds = [11, 12, 13, 14, 15]
  const oneKind = await worst(seeds.map((seed) => sixtyPieces(seed, [bought(6000)])))
  const withReclaimed = await worst(seeds.map((seed) => sixtyPieces(seed, [...reclaimed, bought(6400)])))
  let [own, alone] = [0, 0]
  for (const { length, pieces } of published) {
    const request = {
      pieces: pieces.map(([piece, count]) => ({ label: `${piece}`, length: piece, count })),
      stock: [{ label: 'roll', length, bought: true }],
      kerf: 0,
    }
    const options = { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 }
    for (let run = 0; run < 5; run += 1) {
      own += await timeOf(() => cutPlan(request))
      alone += await timeOf(() => highs.solve(everyPatternModel(length, pieces), options))
    }
  }
  const unit = 'ms of one core'
  return [
    {
      what: 'Cut plan of 60 different pieces from one length, the slowest of 5',
      figure: oneKind,
      limit: 1000,
      unit,
    },
    {
      what: 'Cut plan of 60 different pieces from eight reclaimed lengths and one to buy, the slowest of 5',
      figure: withReclaimed,
      limit: 1000,
      unit,
    },
    {
      // HiGHS alone is asked for the least length only; a plan is also asked for the fewest cuts.
      what: 'Cut plans of two published tasks, proven least, against HiGHS alone over every pattern',
      figure: own / alone,
      limit: 2,
      unit: 'times',
    },
  ]
}
