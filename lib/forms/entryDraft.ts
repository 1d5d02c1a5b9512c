import { z } from 'zod'
import type { LineOf } from '../core/agreement/notebook.ts'
import { isObject } from './readNotebook.ts'

/** How a form names a line of the plan in one field. */
export function lineValue(line: LineOf): string {
  const { item, pot, what, place } = line
  return JSON.stringify({ item, pot, what, place })
}

const lineSchema = z.object({
  item: z.string(),
  pot: z.enum(['materials', 'labour']),
  what: z.string(),
  place: z.string(),
})

/** The line that a form's field names; undefined where it names none. */
export function lineOfValue(value: unknown): LineOf | undefined {
  if (typeof value !== 'string') return undefined
  try {
    const read = lineSchema.safeParse(JSON.parse(value))
    return read.success ? read.data : undefined
  } catch {
    return undefined
  }
}

/** An entry of the book as its form sends it: each row names its line in one field, and a tick says that a day is meant. */
export function entryOfDraft(draft: Record<string, unknown>): {
  readonly entry: Record<string, unknown>
  readonly earlierIsMeant: boolean
} {
  const { earlierIsMeant, lines, ...rest } = draft
  const rows = Array.isArray(lines) ? lines.map(rowOf) : lines
  return {
    entry: rows === undefined ? rest : { ...rest, lines: rows },
    earlierIsMeant: earlierIsMeant === true,
  }
}

function rowOf(row: unknown): unknown {
  if (!isObject(row) || !('line' in row)) return row
  const { line, ...rest } = row
  return { ...rest, ...lineOfValue(line) }
}

/** A fault's path in the form: what names a line stands in one field there. */
export function pathInForm(path: string): string {
  return path.replace(/^(lines\[[0-9]+\])\.(?:item|pot|what|place)$/, '$1.line')
}
