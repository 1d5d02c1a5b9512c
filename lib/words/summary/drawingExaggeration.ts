/** How much larger or smaller than to scale something is drawn: "Heights are drawn 2 times higher than to scale." */
export function exaggeration(what: string, more: string, less: string, times: number): string {
  if (times === 1) return `${what} are to scale.`
  return times > 1
    ? `${what} are drawn ${times.toLocaleString('en-US')} times ${more} than to scale.`
    : `${what} are drawn ${less} than to scale.`
}

/** Under a drawing whose key is folded away: what of it is not to scale, in one line. */
export function scaleLine({
  setbacksDrawnWider: wider,
  heightsDrawnHigher: higher,
}: {
  readonly setbacksDrawnWider: number
  readonly heightsDrawnHigher: number
}): string {
  const across = wider === 1 ? '' : `distances off the line ${timesWords(wider, 'wider', 'narrower')}`
  const upward = higher === 1 ? '' : `heights ${timesWords(higher, 'higher', 'lower')}`
  const apart = [across, upward].filter((words) => words !== '').join(', ')
  return apart === '' ? 'To scale in every direction.' : `To scale along the line; ${apart}.`
}

function timesWords(times: number, more: string, less: string): string {
  return times > 1 ? `${times.toLocaleString('en-US')} times ${more}` : `drawn ${less}`
}
