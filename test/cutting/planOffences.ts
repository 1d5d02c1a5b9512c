import type { CutRequest } from '../../lib/cutting/cutRequest.ts'
import type { CutPlan } from '../../lib/cutting/plannedCuts.ts'

/** What a sawyer would find wrong with a plan: pieces missing or made twice, lengths overdrawn, sums that don't add up. */
export function planOffences(request: CutRequest, plan: CutPlan): string[] {
  const offences: string[] = []
  const expectThat = (holds: boolean, what: string) => {
    if (!holds) offences.push(what)
  }
  const made = request.pieces.map(() => 0)
  const used = request.stock.map(() => 0)
  let [usedLength, boughtLength, piecesLength, cuts] = [0, 0, 0, 0]
  for (const cut of plan.lengths) {
    const stock = request.stock[cut.stockIndex]
    const pieces = cut.pieces.flatMap(({ pieceIndex, count }) =>
      Array.from({ length: count }, () => request.pieces[pieceIndex]?.length ?? Number.NaN),
    )
    const sum = pieces.reduce((total, length) => total + length, 0)
    const between = Math.max(0, pieces.length - 1) * request.kerf
    expectThat(cut.times >= 1 && pieces.length >= 1, 'a length that is cut for nothing')
    expectThat(
      stock !== undefined && stock.length === cut.length && stock.bought === cut.bought,
      'wrong stock',
    )
    expectThat(sum + between <= cut.length, `${sum} and kerfs out of ${cut.length}`)
    const usedUp = sum + between === cut.length
    expectThat(cut.cuts === (usedUp ? pieces.length - 1 : pieces.length), 'a wrong number of cuts')
    expectThat(cut.rest === Math.max(0, cut.length - sum - cut.cuts * request.kerf), 'a wrong rest')
    for (const { pieceIndex, count, length, label } of cut.pieces) {
      made[pieceIndex] = (made[pieceIndex] ?? 0) + count * cut.times
      const asked = request.pieces[pieceIndex]
      expectThat(asked?.label === label && asked.length === length, 'a piece with another label or length')
    }
    used[cut.stockIndex] = (used[cut.stockIndex] ?? 0) + cut.times
    usedLength += cut.length * cut.times
    if (cut.bought) boughtLength += cut.length * cut.times
    piecesLength += sum * cut.times
    cuts += cut.cuts * cut.times
  }
  const wanted = request.pieces.reduce((sum, { length, count }) => sum + length * count, 0)
  const leftOut = [...plan.tooLong, ...plan.unplaced].reduce(
    (sum, { length, count }) => sum + length * count,
    0,
  )
  expectThat(piecesLength + leftOut === wanted, 'pieces that are neither made nor left out')
  made.forEach((count, at) => {
    expectThat(count <= (request.pieces[at]?.count ?? 0), 'a piece made too often')
  })
  used.forEach((count, at) => {
    expectThat(count <= (request.stock[at]?.count ?? Number.POSITIVE_INFINITY), 'more stock than there is')
  })
  expectThat(plan.usedLength === usedLength && plan.boughtLength === boughtLength, 'wrong sums of stock')
  expectThat(plan.piecesLength === piecesLength && plan.cuts === cuts, 'wrong sums of pieces or cuts')
  expectThat(plan.wasteLength === usedLength - piecesLength, 'a wrong waste')
  return offences
}
