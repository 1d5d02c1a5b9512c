import { inFormatOrder, isFormatKey } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'

/** Lists whose rows go on record one by one, so that their order does not, each by the key that names it. */
const ordered = { sections: 'id', gates: 'id', common: 'id', decisions: 'text' } as const
const lists = Object.keys(ordered) as (keyof typeof ordered)[]

/** What no item of the record stands for: the order of items and decisions, and keys that the format does not know. */
export type RestOfFile = {
  readonly order: Readonly<Record<string, readonly string[]>>
  readonly other: Readonly<Record<string, unknown>>
}

export function restOfFile(document: NotebookDocument): RestOfFile {
  return {
    order: Object.fromEntries(
      lists.map((list) => [list, rowsOf(document[list]).map((row) => nameOf(list, row))]),
    ),
    other: Object.fromEntries(Object.entries(document).filter(([key]) => !isFormatKey(key))),
  }
}

/** The document with its rows in this order, those that it does not name last, and with these other keys alone. */
export function withRestOfFile(document: NotebookDocument, { order, other }: RestOfFile): NotebookDocument {
  const known = Object.entries(document).filter(([key]) => isFormatKey(key))
  const inOrder = known.map(([key, value]) => {
    const list = lists.find((one) => one === key)
    const names = list === undefined ? undefined : order[list]
    if (list === undefined || names === undefined || !Array.isArray(value)) return [key, value]
    const rank = (row: unknown) => {
      const place = isObject(row) ? names.indexOf(nameOf(list, row)) : -1
      return place < 0 ? names.length : place
    }
    return [key, value.toSorted((one, next) => rank(one) - rank(next))]
  })
  return inFormatOrder({ ...Object.fromEntries(inOrder), ...other })
}

function rowsOf(list: unknown): readonly Readonly<Record<string, unknown>>[] {
  return Array.isArray(list) ? list.filter(isObject) : []
}

function nameOf(list: keyof typeof ordered, row: Readonly<Record<string, unknown>>): string {
  return String(row[ordered[list]] ?? '')
}
