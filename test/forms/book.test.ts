import { describe, expect, test } from 'vitest'
import { addContribution, contributionPath, strikeContribution } from '../../lib/forms/book.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { documentWith } from '../core/madeNotebook.ts'

const cash = { household: 'a', kind: 'cash', amount: '5.00', date: '2027-03-02' }
const struck = { on: '2027-03-04', by: 'a' as const, why: 'entered twice' }
const withBook = (...contributions: unknown[]) => documentWith({ contributions })

describe('a new entry in the book', () => {
  test('comes last', () => {
    expect(addContribution(withBook(cash), { ...cash, amount: '6' }).contributions).toEqual([
      cash,
      { ...cash, amount: '6' },
    ])
  })

  test('begins a book that was not there', () => {
    expect(addContribution(documentWith(), cash).contributions).toEqual([cash])
  })

  test('of money loses hours that were typed before, and of hours the amount', () => {
    const draft = { ...cash, hours: '3', rate: '20', note: '', for: '' }
    expect(addContribution(documentWith(), draft).contributions).toEqual([cash])
    const { amount: _amount, ...rest } = cash
    expect(addContribution(documentWith(), { ...draft, kind: 'hours' }).contributions).toEqual([
      { ...rest, kind: 'hours', hours: '3', rate: '20' },
    ])
  })

  test('says who wrote it, whatever the form says', () => {
    const [entry] = addContribution(documentWith(), { ...cash, enteredBy: 'a' }, 'b')
      .contributions as unknown[]
    expect(entry).toEqual({ ...cash, enteredBy: 'b' })
  })

  test('cannot be one that was taken back already', () => {
    expect(addContribution(documentWith(), { ...cash, struck }).contributions).toEqual([cash])
  })

  test('that is faulty is refused at the path that was foretold', () => {
    const before = withBook(cash)
    const read = readDocument(addContribution(before, { ...cash, amount: 'x' }))
    expect(!read.ok && read.faults.map(({ path }) => path)).toEqual([`${contributionPath(before)}amount`])
  })
})

describe('taking an entry back', () => {
  const always = () => true

  test('is for the household that wrote it, whichever household it is of', () => {
    const written = withBook({ ...cash, enteredBy: 'b' })
    expect(strikeContribution(written, 0, { ...struck, by: 'a' }, always)).toBeUndefined()
    expect(strikeContribution(written, 0, { ...struck, by: 'b' }, always)).toBeDefined()
  })

  test('is for the household it is of, where the file does not say who wrote it', () => {
    expect(strikeContribution(withBook(cash), 0, { ...struck, by: 'b' }, always)).toBeUndefined()
    expect(strikeContribution(withBook(cash), 0, { ...struck, by: 'a' }, always)).toBeDefined()
  })

  test('leaves it in the book, with who, when and why', () => {
    const after = strikeContribution(withBook(cash, cash), 1, struck, always)
    expect(after?.contributions).toEqual([cash, { ...cash, struck }])
    expect(readDocument(after).ok).toBe(true)
  })

  test('is possible once', () => {
    const once = strikeContribution(withBook(cash), 0, struck, always)
    expect(once && strikeContribution(once, 0, struck, always)).toBeUndefined()
  })

  test('is refused where the entry is not the one that was meant, or not there', () => {
    expect(strikeContribution(withBook(cash), 0, struck, () => false)).toBeUndefined()
    expect(strikeContribution(withBook(cash), 1, struck, always)).toBeUndefined()
    expect(strikeContribution(documentWith(), 0, struck, always)).toBeUndefined()
  })
})
