import fc from 'fast-check'
import { costLineAmount, labourAmount } from '../../lib/core/amounts/lineAmount.ts'

/** Plain JSON, as a file holds it. */
export type Json = Record<string, unknown>

export const house = fc.constantFrom('a', 'b')

/** A typed number with up to so many digits after the point. */
export function typedNumber(largest: number, digits: number): fc.Arbitrary<string> {
  return fc
    .tuple(fc.nat(largest), fc.nat(10 ** digits - 1), fc.integer({ min: 0, max: digits }))
    .map(([whole, fraction, kept]) =>
      kept === 0 ? `${whole}` : `${whole}.${String(fraction).padStart(digits, '0').slice(0, kept)}`,
    )
}

/** Few and small figures, so that odd units and ties are common, with some large ones. */
const quantity = fc.oneof(fc.constantFrom('0', '1', '1', '3', '0.5'), typedNumber(500, 6))
const price = fc.oneof(fc.constantFrom('', '0.01', '0.03', '1', '2.5'), typedNumber(2000, 6))

const costLine = fc.record(
  {
    what: fc.constantFrom('pipe', 'wire', 'Pfähle ½″'),
    quantity,
    unitPrice: price,
    suppliedBy: fc.constantFrom('bought', 'bought', 'a', 'b'),
    taxPercent: fc.constantFrom('0', '7.25', '100', '0.0001'),
    credit: fc.constantFrom(false, false, false, true),
  },
  { requiredKeys: ['quantity', 'suppliedBy'] },
)

const labourLine = fc
  .record(
    {
      task: fc.constant('dig'),
      hours: quantity,
      rate: price,
      by: fc.constantFrom('a', 'b', 'hired'),
      counts: fc.constantFrom(true, true, false),
    },
    { requiredKeys: ['hours', 'by'] },
  )
  .map((line) => (line.counts === false && line.by === 'hired' ? { ...line, by: 'a' } : line))

export type RandomLines = { readonly materials: Json[]; readonly labour: Json[] }

/** Lines of one item whose materials are worth nothing or more. */
export function randomLines(digits: number): fc.Arbitrary<RandomLines> {
  return fc
    .record({
      materials: fc.array(costLine, { maxLength: 4 }),
      labour: fc.array(labourLine, { maxLength: 3 }),
    })
    .map(({ materials, labour }) =>
      materialsWorth(materials, digits) < 0n
        ? { materials: materials.map(({ credit: _credit, ...line }) => line), labour }
        : { materials, labour },
    )
}

export function materialsWorth(lines: readonly Json[], digits: number): bigint {
  return lines.reduce((sum, { quantity, unitPrice, taxPercent, credit }) => {
    const line = {
      quantity: String(quantity),
      unitPrice: String(unitPrice ?? ''),
      taxPercent: String(taxPercent ?? '0'),
    }
    const amount = costLineAmount(line, digits)
    return credit === true ? sum - amount : sum + amount
  }, 0n)
}

export function labourWorth(lines: readonly Json[], digits: number): bigint {
  return lines
    .filter(({ counts }) => counts !== false)
    .reduce(
      (sum, { hours, rate }) =>
        sum + labourAmount({ hours: String(hours), rate: String(rate ?? '') }, digits),
      0n,
    )
}
