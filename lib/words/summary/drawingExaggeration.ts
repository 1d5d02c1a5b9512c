/** How much larger or smaller than to scale something is drawn: "Heights are drawn 2 times higher than to scale." */
export function exaggeration(what: string, more: string, less: string, times: number): string {
  if (times === 1) return `${what} are to scale.`
  return times > 1
    ? `${what} are drawn ${times.toLocaleString('en-US')} times ${more} than to scale.`
    : `${what} are drawn ${less} than to scale.`
}
