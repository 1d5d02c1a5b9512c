/**
 * A quantity with its unit as people say it: "1 bag", "8 bags". The file keeps the unit as it stands on the cost line;
 * one that is no trade word known here is shown as it was typed.
 */
export function quantityWords(quantity: string, unit: string): string {
  const typed = unit.trim()
  const several = quantity === '1' ? undefined : severalOf.get(typed)
  return `${quantity} ${several ?? typed}`.trim()
}

const counted =
  'bag board bundle can coil day hour job length load lot pack pair panel piece post rail roll set sheet trip tube'
const severalOf: ReadonlyMap<string, string> = new Map([
  ...counted.split(' ').map((one): [string, string] => [one, `${one}s`]),
  ['box', 'boxes'],
])
