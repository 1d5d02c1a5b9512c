import type { Hundredths } from '../../../lib/core/amounts/hours.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'
import type { Statement } from '../../../lib/core/shares/statement.ts'

/**
 * The planned hours that fall to each household by the shares of all items. Of one that is asked for nothing, after caps,
 * no hours are asked either: they fall to the other.
 */
export function wholeHours({ items, asked, total }: Statement): ForBoth<Hundredths> {
  const { a, b } = items.reduce((sum, { hours }) => ({ a: sum.a + hours.a, b: sum.b + hours.b }), {
    a: 0n,
    b: 0n,
  })
  if (total > 0n && asked.a === 0n) return { a: 0n, b: a + b }
  return total > 0n && asked.b === 0n ? { a: a + b, b: 0n } : { a, b }
}
