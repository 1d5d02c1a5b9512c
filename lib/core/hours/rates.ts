import type { Arrangements, LabourLine } from '../agreement/notebook.ts'
import { type Ratio, ratio } from '../amounts/ratio.ts'
import { scaledInteger } from '../amounts/typedNumber.ts'

/**
 * A rate held against a local quote: by how many percent it lies above it, exact; below zero where it lies below.
 * `undefined` where either is not said, or the quote is nothing.
 */
export function againstQuote({
  rate,
  quote,
}: {
  readonly rate: string
  readonly quote: string
}): Ratio | undefined {
  if (rate === '' || quote === '') return undefined
  const [own, local] = [scaledInteger(rate, 6), scaledInteger(quote, 6)]
  return local === 0n ? undefined : ratio(100n * (own - local), local)
}

/** The rate that was agreed for a kind of work, as it was typed; empty where there is none. */
export function agreedRate(arrangements: Arrangements | undefined, skill: LabourLine['skill']): string {
  return skill === '' ? '' : (arrangements?.rates[skill]?.rate ?? '')
}

/** Both agreed rates, as typed. */
export function agreedRates(
  arrangements: Arrangements | undefined,
): Readonly<Record<'skilled' | 'plain', string>> {
  return { skilled: agreedRate(arrangements, 'skilled'), plain: agreedRate(arrangements, 'plain') }
}

/** The agreed rate that a line departs from; `undefined` where it keeps to it, has no rate yet, or none was agreed. */
export function departsFrom(
  { skill, rate }: Pick<LabourLine, 'skill' | 'rate'>,
  arrangements: Arrangements | undefined,
): string | undefined {
  const agreed = agreedRate(arrangements, skill)
  if (agreed === '' || rate === '') return undefined
  return scaledInteger(agreed, 6) === scaledInteger(rate, 6) ? undefined : agreed
}
