import type { Fault } from './saveAnswer.ts'

/**
 * Faults after the rows of the list at `path` changed places: `newIndex` says where a row went, undefined that it is
 * gone. A fault stays with the row it was found in; faults outside the list are left alone.
 */
export function moveRowFaults(
  faults: readonly Fault[],
  path: string,
  newIndex: (index: number) => number | undefined,
): readonly Fault[] {
  const head = `${path}[`
  return faults.flatMap((fault) => {
    if (!fault.path.startsWith(head)) return [fault]
    const close = fault.path.indexOf(']', head.length)
    const moved = newIndex(Number(fault.path.slice(head.length, close)))
    return moved === undefined ? [] : [{ ...fault, path: `${head}${moved}${fault.path.slice(close)}` }]
  })
}

/** Whether a path names a thing or something inside it. */
export function isWithin(path: string, whole: string): boolean {
  return path === whole || path.startsWith(`${whole}.`) || path.startsWith(`${whole}[`)
}

/** The registered path that a fault's link should lead to: its own, else the first field inside what it names. */
export function nearestField(path: string, fields: Iterable<string>): string | undefined {
  if (path === '') return undefined
  let inside: string | undefined
  for (const field of fields) {
    if (field === path) return field
    if (inside === undefined && isWithin(field, path)) inside = field
  }
  return inside
}
