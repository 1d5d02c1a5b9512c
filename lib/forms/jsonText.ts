/** What a scan of JSON text finds that JSON.parse does not tell. */
export type JsonScan = {
  /** Path of the first key that stands twice in one object, at its later place; undefined where there is none. */
  readonly doubledKey: string | undefined
  /** How many lists and objects lie inside one another at the deepest place. */
  readonly depth: number
  /** Whether a string holds half of a surrogate pair, which no UTF-8 text can carry (RFC 8785 refuses it). */
  readonly halfCharacter: boolean
}

type Level = { readonly path: string; readonly keys: Set<string> | undefined; index: number; key: string }

/**
 * Scans text that JSON.parse has accepted. It keeps its own stack, so that deep nesting cannot overflow the program's.
 */
export function scanJson(text: string): JsonScan {
  const token = /"(?:[^"\\]|\\.)*"|[{}[\],:]/gs
  const levels: Level[] = []
  let doubledKey: string | undefined
  let depth = 0
  let halfCharacter = false
  let keyExpected = false
  const pathHere = () => {
    const level = levels.at(-1)
    if (!level) return ''
    if (!level.keys) return `${level.path}[${level.index}]`
    return joinPath(level.path, level.key)
  }
  for (const [found] of text.matchAll(token)) {
    const level = levels.at(-1)
    if (found === '{' || found === '[') {
      levels.push({ path: pathHere(), keys: found === '{' ? new Set() : undefined, index: 0, key: '' })
      depth = Math.max(depth, levels.length)
      keyExpected = found === '{'
    } else if (found === '}' || found === ']') {
      levels.pop()
      keyExpected = false
    } else if (found === ',') {
      if (level) level.index += 1
      keyExpected = level?.keys !== undefined
    } else if (found !== ':') {
      const value = found.includes('\\') ? (JSON.parse(found) as string) : found.slice(1, -1)
      if (!value.isWellFormed()) halfCharacter = true
      if (!keyExpected || !level?.keys) continue
      keyExpected = false
      level.key = value
      if (level.keys.has(value)) doubledKey ??= pathHere()
      level.keys.add(value)
    }
  }
  return { doubledKey, depth, halfCharacter }
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
    (value, key) => (value !== null && typeof value === 'object' ? (value as Record<PropertyKey, unknown>)[key] : undefined),
    data,
  )
}
