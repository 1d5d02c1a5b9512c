/** Where text stops being JSON (RFC 8259): counted from 1. `found` is the character there, empty at the end of the text. */
export type JsonBreak = { readonly line: number; readonly column: number; readonly found: string }

/** What may come next: a value, a value or the end of its list, a key, a key or the end of its object, and so on. */
type Awaited = 'value' | 'first value' | 'key' | 'first key' | 'colon' | 'next' | 'end'

const blank = /[ \t\n\r]*/y
const word = /true|false|null/y
const number = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y
/** All but the control characters, the quotation mark and the backslash. */
const plain = /[ !#-[\]-\uffff]+/y
const escaped = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y

/**
 * The place from which text that JSON.parse refuses can't be read; undefined where all of it is JSON. JSON.parse tells it
 * only at times, and in words of its own. Keeps its own stack, so that deep nesting cannot overflow the program's.
 */
export function jsonBreak(text: string): JsonBreak | undefined {
  const open: ('{' | '[')[] = []
  let awaited: Awaited = 'value'
  let at = 0
  const take = (pattern: RegExp) => {
    pattern.lastIndex = at
    const taken = pattern.exec(text)?.[0].length ?? 0
    at += taken
    return taken > 0
  }
  const after = (): Awaited => (open.length === 0 ? 'end' : 'next')
  for (;;) {
    take(blank)
    const character: string = text.charAt(at)
    if (at >= text.length) return awaited === 'end' ? undefined : placeOf(text, at)
    const value: boolean = awaited === 'value' || awaited === 'first value'
    const key: boolean = awaited === 'key' || awaited === 'first key'
    if (character === '"' && (value || key)) {
      at += 1
      for (let more = true; more; ) more = take(plain) || take(escaped)
      if (text.charAt(at) !== '"') return placeOf(text, at)
      at += 1
      awaited = key ? 'colon' : after()
    } else if (value && (character === '{' || character === '[')) {
      open.push(character)
      awaited = character === '{' ? 'first key' : 'first value'
      at += 1
    } else if (closes(character, open.at(-1), awaited)) {
      open.pop()
      awaited = after()
      at += 1
    } else if (awaited === 'colon' && character === ':') {
      awaited = 'value'
      at += 1
    } else if (awaited === 'next' && character === ',') {
      awaited = open.at(-1) === '{' ? 'key' : 'value'
      at += 1
    } else if (value && (take(word) || take(number))) {
      awaited = after()
    } else return placeOf(text, at)
  }
}

function closes(character: string, open: '{' | '[' | undefined, awaited: Awaited): boolean {
  if (character === '}') return open === '{' && (awaited === 'first key' || awaited === 'next')
  return character === ']' && open === '[' && (awaited === 'first value' || awaited === 'next')
}

function placeOf(text: string, at: number): JsonBreak {
  const lines = text.slice(0, at).split(/\r\n|\n|\r/)
  const column = [...(lines.at(-1) ?? '')].length + 1
  const code = text.codePointAt(at)
  return { line: lines.length, column, found: code === undefined ? '' : String.fromCodePoint(code) }
}
