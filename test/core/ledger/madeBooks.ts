import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { halves, notebookWith } from '../madeNotebook.ts'

export const on = '2027-04-01'
export const markedBy = (...households: readonly ('a' | 'b')[]) =>
  Object.fromEntries(households.map((household) => [household, { on }]))

/** A line of the plan of `notebookOf`, as the books call it. */
export const wire = { item: 's1', pot: 'materials', what: 'wire', place: '1' } as const
export const pipe = { item: 's1', pot: 'materials', what: 'pipe', place: '2' } as const
export const scrap = { item: 's1', pot: 'materials', what: 'old wire', place: '3' } as const
export const digging = { item: 's1', pot: 'labour', what: 'dig', place: '1' } as const

export const cash = (household: 'a' | 'b', amount: string, ...lines: readonly object[]) => ({
  household,
  kind: 'cash',
  amount,
  date: on,
  lines,
})

/**
 * One section, halved: wire 100.00, pipe 60.00, less old wire 10.00; digging 4 h at 25.00 by a. In all 250.00, of which
 * each household is asked for 125.00.
 */
export function documentOf(contributions: readonly object[] = [], books: object = {}) {
  return {
    sections: [
      {
        id: 's1',
        name: 'West side',
        materials: [
          { what: 'wire', quantity: '4', unitPrice: '25.00', suppliedBy: 'bought' },
          { what: 'pipe', quantity: '6', unitPrice: '10.00', suppliedBy: 'a' },
          { what: 'old wire', quantity: '1', unitPrice: '10.00', suppliedBy: 'bought', credit: true },
        ],
        labour: [{ task: 'dig', hours: '4', rate: '25.00', by: 'a' }],
        share: halves,
      },
    ],
    contributions,
    books,
  }
}

export function notebookOf(contributions: readonly object[] = [], books: object = {}): Notebook {
  return notebookWith(documentOf(contributions, books))
}
