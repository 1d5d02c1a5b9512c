/**
 * THE rounding of amounts: a quotient of whole numbers to the nearest whole number, half away from zero (rule 1 of the
 * file format). `over` is zero or more, `under` is more than zero.
 */
export function roundHalfUp(over: bigint, under: bigint): bigint {
  return (2n * over + under) / (2n * under)
}
