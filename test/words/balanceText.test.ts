import { describe, expect, test } from 'vitest'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { planBesideBalance, standingOfBooks } from '../../lib/words/balanceText.ts'
import { shareNames } from '../../lib/words/shareText.ts'
import { notebookWith, sectionOf } from '../core/madeNotebook.ts'

const notebook = notebookWith({
  households: { a: { name: 'No. 1' }, b: { name: 'No. 2' } },
  sections: [sectionOf('100.00', { principle: 'equal' })],
})
const names = shareNames(notebook)
const draft = statementOf(notebook)

describe('what the books are held against', () => {
  test('is said to bind nobody while nothing is signed', () => {
    expect(standingOfBooks(undefined, undefined, names).join(' ')).toContain('bind nobody')
  })

  test('is the signed revision, with nothing about a draft that says the same', () => {
    expect(standingOfBooks(2, undefined, names)).toEqual([
      'These are the figures of revision 2, as all have signed it.',
    ])
  })

  test('is said to have what both marked in the books in it, where there is any', () => {
    expect(standingOfBooks(2, undefined, names, true)).toEqual([
      'These are the figures of revision 2, which all have signed, with what both have marked as bought, worked or kept in the place of what was planned.',
    ])
  })

  test('is the signed revision even where the draft asks for something else', () => {
    const words = standingOfBooks(1, draft, names).join(' ')
    expect(words).toContain('revision 1')
    expect(words).toContain(
      'It would ask No. 1 for $50.00 and No. 2 for $50.00, but only once all have signed it.',
    )
  })
})

describe('the payment plan beside the balance', () => {
  test('says what of it is still to pay, and why the balance says nothing of it', () => {
    const words = planBesideBalance({ from: 'b', to: 'a', rest: 192625n }, names)
    expect(words).toContain('By the payment plan, No. 2 has still to pay $1,926.25 to No. 1')
    expect(words).toContain('the balance only by what was given until today')
  })

  test('is not spoken of once nothing of it is left', () => {
    expect(planBesideBalance({ from: 'b', to: 'a', rest: 0n }, names)).toBeUndefined()
  })
})
