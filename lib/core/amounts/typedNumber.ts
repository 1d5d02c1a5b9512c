/** The form of every number in a notebook file. */
const numberForm = /^(0|[1-9][0-9]{0,11})(?:\.([0-9]+))?$/

/** Whether `text` is a number of the file format with at most `fractionDigits` digits after the point. */
export function isNumber(text: string, fractionDigits: number): boolean {
  const match = numberForm.exec(text)
  return match !== null && (match[2]?.length ?? 0) <= fractionDigits
}

/**
 * A number of the file format as a whole count of its `fractionDigits`-th decimal place: ("1.5", 6) is 1500000n.
 * For text that `isNumber` has accepted; throws on most other text, since the file was then not checked.
 */
export function scaledInteger(text: string, fractionDigits: number): bigint {
  const point = text.indexOf('.')
  const integer = point < 0 ? text : text.slice(0, point)
  const fraction = point < 0 ? '' : text.slice(point + 1)
  if (integer === '' || fraction.length > fractionDigits) throw new Error(`not a checked number: ${text}`)
  return BigInt(integer + fraction.padEnd(fractionDigits, '0'))
}

/** The way back, without idle zeros: (1500000n, 6) is "1.5". `count` is zero or more. */
export function plainNumber(count: bigint, fractionDigits: number): string {
  const figures = count.toString().padStart(fractionDigits + 1, '0')
  const point = figures.length - fractionDigits
  const fraction = figures.slice(point).replace(/0+$/, '')
  return fraction === '' ? figures.slice(0, point) : `${figures.slice(0, point)}.${fraction}`
}
