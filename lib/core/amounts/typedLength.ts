import { parseLength } from './length.ts'

/**
 * The length that is meant by one that can't be read: `5'6` and "5 ft 6" want the inches named, "1,83 m" a point.
 * Undefined where nothing near it is a length.
 */
export function lengthMeant(typed: string): string | undefined {
  const size = typed.trim()
  if (parseLength(size) !== undefined) return undefined
  const tries = [
    size.replace(/^([0-9]+)\s*(?:'|′|’|ft)\s*([0-9][0-9 ./-]*)$/, '$1 ft $2 in'),
    size.replace(/^([0-9]+),([0-9]+)\s*([a-z]+)$/, '$1.$2 $3'),
  ]
  return tries.find((one) => one !== size && parseLength(one) !== undefined)
}
