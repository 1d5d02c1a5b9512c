import type { Notebook } from '../agreement/notebook.ts'
import { countsAlready } from '../hours/conversions.ts'
import { countingState } from './things.ts'
import { markedByBoth } from './valuation.ts'

/**
 * Whether the books hold anything that counts because both households said so: a line, a thing, the value of goods, a
 * conversion, a payment that its receiver confirmed. One household alone undoes none of it, nor puts other books in its
 * place.
 */
export function markedInBooks({ books, contributions }: Pick<Notebook, 'books' | 'contributions'>): boolean {
  return (
    books.bought.some(({ marks }) => markedByBoth(marks)) ||
    books.things.some((thing) => countingState(thing) !== undefined) ||
    books.conversions.some(countsAlready) ||
    contributions.some(
      ({ struck, valuation, confirmed, enteredBy, household }) =>
        struck === undefined &&
        ((valuation !== undefined && markedByBoth(valuation.marks)) ||
          (confirmed !== undefined && confirmed.by !== (enteredBy || household))),
    )
  )
}
