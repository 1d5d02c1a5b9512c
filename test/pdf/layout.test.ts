import { describe, expect, test } from 'vitest'
import { breakLines, shortened } from '../../lib/pdf/breakLines.ts'
import { columnWidths } from '../../lib/pdf/columnWidths.ts'
import type { Mark } from '../../lib/pdf/mark.ts'
import { type Piece, paginate } from '../../lib/pdf/paginate.ts'
import { printer } from '../../lib/pdf/printable.ts'

/** A face in which every character is one unit wide. */
const oneEach = (text: string) => [...text].length

describe('a text is broken into lines', () => {
  test('at spaces, as late as it fits', () => {
    expect(breakLines('the fence on the line', 9, oneEach)).toEqual(['the fence', 'on the', 'line'])
  })

  test('never at a no-break space, so that a figure keeps its unit', () => {
    expect(breakLines('it is 6\u00A0ft high', 7, oneEach)).toEqual(['it is', '6\u00A0ft', 'high'])
  })

  test('inside a word only where the word is wider than the line', () => {
    expect(breakLines('a abcdefgh b', 3, oneEach)).toEqual(['a', 'abc', 'def', 'gh', 'b'])
  })

  test('without losing or adding a letter', () => {
    const text = 'one two three fourteen five sixteenhundred'
    for (let width = 1; width < 45; width += 1) {
      const lines = breakLines(text, width, oneEach)
      expect(lines.every((line) => oneEach(line) <= width)).toBe(true)
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''))
    }
  })

  test('into one empty line where there is no text', () => {
    expect(breakLines('', 10, oneEach)).toEqual([''])
  })

  test('cut with an ellipsis where it has to be short', () => {
    expect(shortened('a long title', 7, oneEach)).toBe('a long…')
    expect(shortened('short', 7, oneEach)).toBe('short')
  })
})

describe('the columns of a table', () => {
  const words = { natural: 300, least: 60, figure: false }
  const figure = { natural: 50, least: 50, figure: true }

  test.each([
    ['few', [words, figure]],
    ['many', [words, figure, figure, figure, figure, words]],
    ['too many to fit', Array.from({ length: 14 }, () => figure)],
    ['narrow ones', [{ natural: 10, least: 10, figure: false }, figure]],
  ])('add to the width: %s', (_, wishes) => {
    const widths = columnWidths(wishes, 480)
    expect(widths.reduce((sum, one) => sum + one, 0)).toBeCloseTo(480, 6)
    expect(widths.every((one) => one > 0)).toBe(true)
  })

  test('give figures the room they need before words', () => {
    const [, ...figures] = columnWidths([words, figure, figure], 300)
    expect(figures.every((width) => width >= 50)).toBe(true)
  })
})

describe('pieces on pages', () => {
  const mark = (text: string): Mark => ({
    kind: 'text',
    text,
    at: { x: 0, y: 0 },
    size: 8,
    weight: 'regular',
    ink: 'ink',
  })
  const piece = (name: string, height: number, more: Partial<Piece> = {}): Piece => ({
    height,
    before: 0,
    keepWithNext: false,
    marks: [mark(name)],
    ...more,
  })
  const names = (pages: readonly (readonly Mark[])[]) =>
    pages.map((page) => page.map((one) => (one.kind === 'text' ? `${one.text}@${one.at.y}` : '')))

  test('stand under one another, with the gaps between them', () => {
    expect(names(paginate([piece('a', 10), piece('b', 10, { before: 5 })], 100))).toEqual([['a@0', 'b@15']])
  })

  test('go on on the next page, without the gap at its head', () => {
    expect(names(paginate([piece('a', 60), piece('b', 60, { before: 5 })], 100))).toEqual([['a@0'], ['b@0']])
  })

  test('take a heading with them', () => {
    const pieces = [piece('a', 60), piece('heading', 20, { keepWithNext: true }), piece('b', 30)]
    expect(names(paginate(pieces, 100))).toEqual([['a@0'], ['heading@0', 'b@20']])
  })

  test('stand under the head of their table on a new page', () => {
    const head = piece('head', 10, { keepWithNext: true })
    const pieces = [head, piece('row 1', 60), piece('row 2', 60, { head })]
    expect(names(paginate(pieces, 100))).toEqual([
      ['head@0', 'row 1@10'],
      ['head@0', 'row 2@10'],
    ])
  })

  test('that have to stay together but are longer than a page are parted', () => {
    const pieces = Array.from({ length: 5 }, (_, index) => piece(`${index}`, 40, { keepWithNext: index < 4 }))
    expect(names(paginate(pieces, 100))).toEqual([['0@0', '1@40'], ['2@0', '3@40'], ['4@0']])
  })

  const table = (rows: number) =>
    Array.from({ length: rows }, (_, index) =>
      piece(`${index + 1}`, 10, { keepWithNext: index < rows - 1, mayPart: index > 0 && index < rows - 2 }),
    )

  test('that had better stay together are parted rather than leave a hole at the foot of a page', () => {
    expect(names(paginate([piece('a', 60), ...table(6)], 100))).toEqual([
      ['a@0', '1@60', '2@70', '3@80', '4@90'],
      ['5@0', '6@10'],
    ])
  })

  test('that had better stay together do so where little of the page is left', () => {
    expect(names(paginate([piece('a', 80), ...table(4)], 100))).toEqual([
      ['a@0'],
      ['1@0', '2@10', '3@20', '4@30'],
    ])
  })

  test('that are parted leave no row alone, neither before nor after', () => {
    const pages = paginate([piece('a', 65), ...table(5)], 100)
    expect(names(pages)).toEqual([
      ['a@0', '1@65', '2@75', '3@85'],
      ['4@0', '5@10'],
    ])
    expect(names(paginate([piece('a', 75), ...table(4)], 100))).toEqual([
      ['a@0', '1@75', '2@85'],
      ['3@0', '4@10'],
    ])
  })

  test('are a little lower where only that keeps them on the page, and as they were on the next', () => {
    const figure = piece('figure', 40, { lower: piece('lower', 30) })
    expect(names(paginate([piece('a', 70), figure], 100))).toEqual([['a@0', 'lower@70']])
    expect(names(paginate([piece('a', 80), figure], 100))).toEqual([['a@0'], ['figure@0']])
    expect(names(paginate([piece('a', 50), figure], 100))).toEqual([['a@0', 'figure@50']])
  })

  test('make one empty page where there are none', () => {
    expect(paginate([], 100)).toEqual([[]])
  })
})

describe('a text is made printable', () => {
  const ascii = (codePoint: number) => codePoint < 0x2000 || codePoint === 0xfffd

  test('with a mark for what the face lacks, which is remembered once', () => {
    const print = printer(ascii)
    expect(print.text('a界b界')).toBe('a\uFFFDb\uFFFD')
    expect(print.marked()).toEqual([0x754c])
  })

  test('without control characters and signs that turn the writing', () => {
    expect(printer(ascii).text('a\u0000b\u202Ec\u200Bd\uFEFF')).toBe('abcd')
  })

  test('with blanks of every kind as one space, but no-break ones kept', () => {
    expect(printer(ascii).text('  a \n\t b\u202F6\u00A0ft\u3000c ')).toBe('a b\u00A06\u00A0ft c')
  })

  test('with letters and their accents as one sign', () => {
    expect(printer(ascii).text('e\u0301')).toBe('é')
  })
})
