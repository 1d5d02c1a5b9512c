import { describe, expect, test } from 'vitest'
import { hasEntered, standsAgain } from '../../lib/forms/enteredTwice.ts'
import { documentWith } from '../core/madeNotebook.ts'

const cash = { household: 'a', kind: 'cash', amount: '5.00', date: '2027-03-02', enteredBy: 'a' }
const struck = { ...cash, struck: { on: '2027-03-04', by: 'a', why: 'by mistake' } }
const book = (...contributions: unknown[]) => documentWith({ contributions })

describe('an entry that was taken back stands again', () => {
  test.each<[string, object]>([
    ['the same was entered after it', cash],
    ['the file did not say yet who wrote it', { ...cash, note: '' }],
    ['the other household has confirmed it since', { ...cash, confirmed: { on: '2027-03-05', by: 'b' } }],
    ['the other household has marked its value since', { ...cash, valuation: { marks: { b: '5.00' } } }],
  ])('where %s', (_how, later) => {
    const { enteredBy: _by, ...unsaid } = struck
    expect(standsAgain(book(struck, later), 0)).toBe(true)
    expect(standsAgain(book(unsaid, later), 0)).toBe(true)
  })

  test.each<[string, readonly unknown[]]>([
    ['nothing came after it', [struck]],
    ['what came after it was taken back too', [struck, struck]],
    ['what came after it is of another amount', [struck, { ...cash, amount: '6.00' }]],
    ['what came after it was written by the other household', [struck, { ...cash, enteredBy: 'b' }]],
  ])('but not where %s', (_how, entries) => {
    expect(standsAgain(book(...entries), 0)).toBe(false)
  })

  test('not for an equal one that stood before it', () => {
    expect(standsAgain(book(cash, struck), 1)).toBe(false)
  })
})

describe('an entry that is sent twice', () => {
  test('is known from the place on that its form was opened at, even if it was taken back in between', () => {
    expect(hasEntered(book(struck, cash), book(struck), 0)).toBe(true)
    expect(hasEntered(book(struck, cash), book(struck), 1)).toBe(false)
  })
})
