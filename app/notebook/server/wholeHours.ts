import type { Hundredths } from '../../../lib/core/amounts/hours.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'
import type { Statement } from '../../../lib/core/shares/statement.ts'

/** The planned hours that fall to each household by the shares of all items. */
export function wholeHours({ items }: Statement): ForBoth<Hundredths> {
  return items.reduce((sum, { hours }) => ({ a: sum.a + hours.a, b: sum.b + hours.b }), { a: 0n, b: 0n })
}
