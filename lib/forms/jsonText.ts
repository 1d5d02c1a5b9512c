/** What a scan of JSON text finds that JSON.parse does not tell. */
export type JsonScan = {
  /** Paths of keys that stand twice in one object, at the later place, in the order of the text. */
  readonly doubledKeys: readonly { readonly path: string; readonly key: string }[]
  /** How many lists and objects lie inside one another at the deepest place. */
  readonly depth: number
  /** Whether a string holds half of a surrogate pair, which no UTF-8 text can carry (RFC 8785 refuses it). */
  readonly halfCharacter: boolean
  /** Whether a number is too large for any program to keep (RFC 8785 refuses it): `1e999` is read as without end. */
  readonly endlessNumber: boolean
}

/** One open list or object: where the scan is inside it. */
type Level = { readonly keys: Set<string> | undefined; index: number; key: string }

const [quote, comma, backslash] = [0x22, 0x2c, 0x5c]
const [digitZero, digitNine] = [0x30, 0x39]
const [openObject, closeObject, openList, closeList] = [0x7b, 0x7d, 0x5b, 0x5d]

/**
 * Scans text that JSON.parse has accepted, character by character. It keeps its own stack, so that deep nesting cannot
 * overflow the program's.
 */
export function scanJson(text: string): JsonScan {
  const levels: Level[] = []
  const doubledKeys: { path: string; key: string }[] = []
  let depth = 0
  let halfCharacter = false
  let endlessNumber = false
  let keyExpected = false
  for (let position = 0; position < text.length; position += 1) {
    const character = text.charCodeAt(position)
    const level = levels.at(-1)
    if (character === openObject || character === openList) {
      levels.push({ keys: character === openObject ? new Set() : undefined, index: 0, key: '' })
      depth = Math.max(depth, levels.length)
      keyExpected = character === openObject
    } else if (character === closeObject || character === closeList) {
      levels.pop()
      keyExpected = false
    } else if (character === comma) {
      if (level) level.index += 1
      keyExpected = level?.keys !== undefined
    } else if (character === quote) {
      const end = endOfString(text, position)
      const raw = text.slice(position + 1, end)
      position = end
      const value = raw.includes('\\') ? (JSON.parse(`"${raw}"`) as string) : raw
      if (!value.isWellFormed()) halfCharacter = true
      if (!keyExpected || !level?.keys) continue
      keyExpected = false
      level.key = value
      if (level.keys.has(value))
        doubledKeys.push({
          path: pathText(levels.map(({ keys, key, index }) => (keys ? key : index))),
          key: value,
        })
      level.keys.add(value)
    } else if (character >= digitZero && character <= digitNine) {
      const figures = numberAt(text, position)
      if (!Number.isFinite(Number(figures))) endlessNumber = true
      position += figures.length - 1
    }
  }
  return { doubledKeys, depth, halfCharacter, endlessNumber }
}

function endOfString(text: string, start: number): number {
  let position = start + 1
  while (text.charCodeAt(position) !== quote) position += text.charCodeAt(position) === backslash ? 2 : 1
  return position
}

/** The number that begins here, without its sign. */
function numberAt(text: string, start: number): string {
  let end = start
  while (/[0-9.eE+-]/.test(text.charAt(end))) end += 1
  return text.slice(start, end)
}

/** Paths read like the file: `sections[0].share.materials`. */
export function joinPath(path: string, key: string | number): string {
  if (typeof key === 'number') return `${path}[${key}]`
  return path === '' ? key : `${path}.${key}`
}

export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, key) => joinPath(text, typeof key === 'number' ? key : String(key)), '')
}

/** The value at a path of keys, or undefined where the path leaves the data. */
export function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      value !== null && typeof value === 'object' ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    data,
  )
}
