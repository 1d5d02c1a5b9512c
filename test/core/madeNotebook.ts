import type { Notebook } from '../../lib/core/agreement/notebook.ts'
import type { Fault } from '../../lib/core/faults.ts'
import { type Statement, statementOf } from '../../lib/core/shares/statement.ts'
import { type NotebookDocument, readDocument } from '../../lib/forms/readNotebook.ts'

/** The least that a notebook file may be, with what a test adds. */
export function documentWith(parts: Record<string, unknown> = {}): NotebookDocument {
  return {
    format: 'mearing-notebook',
    version: 1,
    currency: 'USD',
    households: { a: { name: 'no. 12' }, b: { name: 'no. 14' } },
    ...parts,
  }
}

export const halves = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }

/** One bought line that comes to the price. */
export function bought(price: string, more: Record<string, unknown> = {}): Record<string, unknown> {
  return { what: 'wire', quantity: '1', unitPrice: price, suppliedBy: 'bought', ...more }
}

/** A section with one bought line; its labour is halved. */
export function sectionOf(price: string, materials: unknown, id = 's1'): Record<string, unknown> {
  return { id, materials: [bought(price)], share: { materials, labour: { principle: 'equal' } } }
}

export function notebookWith(parts: Record<string, unknown> = {}): Notebook {
  const read = readDocument(documentWith(parts))
  if (!read.ok) throw new Error(`the test's notebook does not hold: ${JSON.stringify(read.faults)}`)
  return read.value.notebook
}

export function statementWith(parts: Record<string, unknown> = {}): Statement {
  const statement = statementOf(notebookWith(parts))
  if (!statement.ok) throw new Error(`the test's shares do not hold: ${JSON.stringify(statement.faults)}`)
  return statement.value
}

/** The faults for which the notebook, or its statement, is refused; none where it holds. */
export function faultsWith(parts: Record<string, unknown>): readonly Fault[] {
  const read = readDocument(documentWith(parts))
  if (!read.ok) return read.faults
  const statement = statementOf(read.value.notebook)
  return statement.ok ? [] : statement.faults
}
