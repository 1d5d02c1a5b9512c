import { describe, expect, test } from 'vitest'
import { plannedStatement, statementOf } from '../../lib/core/shares/statement.ts'
import { booksCsv } from '../../lib/words/booksCsv.ts'
import { differenceOf } from '../../lib/words/booksText.ts'
import { linesLeftWords, valuationSentence } from '../../lib/words/entryFieldWords.ts'
import type { Block } from '../../lib/words/summary/block.ts'
import { summaryContent } from '../../lib/words/summary/summaryContent.ts'
import { cash, markedBy, notebookOf, on, wire } from '../core/ledger/madeBooks.ts'

const receipt = cash('b', '118.00', { ...wire, amount: '112.40' })
const marks = markedBy('a', 'b')
const kept = notebookOf([{ ...receipt, for: 's1' }], {
  bought: [{ ...wire, amount: '112.40', marks }],
  things: [{ kind: 'leftover', what: 'wire', item: 's1', household: 'a', value: '3.00', marks, on }],
})
const plain = notebookOf()

test('planned against actual is a table for a spreadsheet, with what is on no line', () => {
  const rows = booksCsv(kept).split('\r\n')
  expect(rows[0]).toContain('"paid by no. 12","paid by no. 14","marked by both","in the balance"')
  expect(rows[1]).toBe('"West side","wire","materials",100.00,112.40,12.40,0.00,112.40,"yes",112.40,"USD"')
  expect(rows[2]).toBe('"West side","pipe","materials",60.00,,,,,"no",60.00,"USD"')
  expect(rows.at(-2)).toBe('"West side","(on no line)",,,5.60,,,,"no",,"USD"')
})

test('a text that a spreadsheet would run is led by an apostrophe', () => {
  const section = { ...plain.sections[0], name: '=1+1' } as (typeof plain.sections)[number]
  expect(booksCsv({ ...plain, sections: [section] })).toContain(`"'=1+1"`)
})

describe('the paper', () => {
  const blocksOf = (notebook: typeof kept) =>
    summaryContent({
      notebook,
      statement: plannedStatement(notebook),
      actual: statementOf(notebook),
      standing: { kind: 'draft', sha256: '0'.repeat(64) },
      signatures: [],
    })
  const chapter = (blocks: readonly Block[], id: string) => {
    const from = blocks.findIndex((block) => block.kind === 'heading' && block.id === id)
    const after = blocks.slice(from + 1)
    const to = after.findIndex((block) => block.kind === 'heading' && block.level === 1)
    return JSON.stringify(to < 0 ? after : after.slice(0, to))
  }

  test.each(['costs', 'shares'])('says the same under its chapter “%s”, whatever the books say', (id) => {
    expect(chapter(blocksOf(kept), id)).toBe(chapter(blocksOf(plain), id))
  })

  test('sets planned against actual in its chapter of the books, and the balance by what counts', () => {
    const books = chapter(blocksOf(kept), 'books')
    expect(books).toContain(
      '["Section 1: West side: wire","$100.00","$112.40","$12.40 more","no. 14 $112.40","actual"]',
    )
    expect(books).toContain('["Left over: wire","no. 12","$3.00"]')
    // 250.00 + 12.40 − 3.00 = 259.40, halves.
    expect(books).toContain('["Asked for","$129.70","$129.70"]')
    expect(books).toContain('["Given so far","−$3.00","$118.00"]')
    expect(chapter(blocksOf(plain), 'books')).not.toContain('Planned against actual')
  })
})

test('differences are told in words', () => {
  expect(differenceOf(1200n, 1000n, 'USD')).toBe('$2.00 more')
  expect(differenceOf(1000n, 1200n, 'USD')).toBe('$2.00 less')
  expect(differenceOf(1000n, 1000n, 'USD')).toBe('as planned')
})

test('what is on no line is told while it is typed', () => {
  expect(linesLeftWords(0n, 'USD', true)).toBe('The whole amount is on these lines.')
  expect(linesLeftWords(150n, 'USD', false)).toBe('$1.50 is on no line: it is for the fence as a whole.')
  expect(linesLeftWords(-150n, 'USD', true)).toBe('The lines are $1.50 more than the whole amount.')
})

test('both values of goods are told, and what counts', () => {
  const values = { documented: 8000n, byWeight: 6100n, lower: 6100n }
  expect(valuationSentence(values, 9000n, 'USD')).toBe(
    'By its paper $80.00, by weight $61.00: the lower one is $61.00. Of $90.00 only $61.00 counts, until both households mark the whole.',
  )
  expect(valuationSentence({ ...values, byWeight: undefined, lower: 8000n }, 8000n, 'USD')).toBe(
    'By its paper $80.00.',
  )
  expect(valuationSentence({ documented: undefined, byWeight: undefined, lower: undefined }, 1n, 'USD')).toBe(
    '',
  )
})
