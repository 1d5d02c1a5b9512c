import { describe, expect, test } from 'vitest'
import { summaryPdf } from '../../lib/pdf/summaryPdf.ts'
import { checkRecord } from '../../lib/seal/checkRecord.ts'
import { sealPdf } from '../../lib/seal/sealPdf.ts'
import type { Block } from '../../lib/words/summary/block.ts'
import { largeNotebook } from '../bench/largeNotebook.ts'
import { oneKey, sealedAt } from '../seal/madeRecord.ts'
import { type Paper, paperMakers, signedExample, textsOf } from './madePapers.ts'
import { exampleNotebook, notebookWith, summaryInputFor } from './madeSummary.ts'
import { infoOf, plainTextOf, qpdfCheck } from './pdfTools.ts'
import {
  type Element,
  elementsIn,
  popplerElements,
  popplerStructure,
  readStructure,
  type Structure,
  textIn,
  textsOutside,
  unevenRows,
} from './readStructure.ts'

/** What may stand around an element of a role: ISO 32000-1, 14.8.4.2 to 14.8.4.4. */
const around: Readonly<Record<string, readonly string[]>> = {
  Document: ['Root'],
  H1: ['Document'],
  H2: ['Document'],
  H3: ['Document'],
  P: ['Document', 'Sect'],
  Sect: ['Document'],
  L: ['Document'],
  LI: ['L'],
  Lbl: ['LI'],
  LBody: ['LI'],
  Table: ['Document'],
  Caption: ['Table'],
  THead: ['Table'],
  TBody: ['Table'],
  TFoot: ['Table'],
  TR: ['THead', 'TBody', 'TFoot'],
  TH: ['TR'],
  TD: ['TR'],
  Figure: ['Document', 'Sect'],
}

function misplaced(element: Element): string[] {
  return element.kids.flatMap((kid) => {
    if (typeof kid === 'string') return []
    return [
      ...(around[kid.role]?.includes(element.role) ? [] : [`${kid.role} in ${element.role}`]),
      ...misplaced(kid),
    ]
  })
}

/** The title is of the first level, chapters of the second, their parts of the third. */
function headingsOf(blocks: readonly Block[]): { level: number; text: string }[] {
  return blocks.flatMap((one) => {
    if (one.kind === 'title') return [{ level: 1, text: plain(one.text) }]
    return one.kind === 'heading' ? [{ level: one.level + 1, text: plain(one.text) }] : []
  })
}

const wholeText = ({ pages }: Structure) => pages.map((page) => textIn(page.tree, page)).join(' ')

const plain = (text: string) => text.replace(/\s+/g, ' ').trim()

describe.each(Object.entries(paperMakers))('%s', { timeout: 120_000 }, (_, make) => {
  let made: Promise<Paper> | undefined
  const paper = () => {
    made ??= make()
    return made
  }

  test('has its title, its language and a structure, and is a sound file', async () => {
    const { bytes, title: expected } = await paper()
    const structure = await readStructure(bytes)
    expect(structure).toMatchObject({ title: expected, titleShown: true, language: 'en', marked: true })
    const info = await infoOf(bytes)
    expect(info.get('Tagged')).toBe('yes')
    expect(info.get('Title')).toBe(expected)
    expect(await qpdfCheck(bytes)).toContain('No syntax or stream encoding errors found')
  })

  test('has one title, and headings that leave no level out', async () => {
    const { bytes, blocks } = await paper()
    const headings = (await readStructure(bytes)).pages.flatMap((page) =>
      elementsIn(page.tree).flatMap((one) =>
        /^H[1-6]$/.test(one.role) ? [{ level: Number(one.role[1]), text: textIn(one, page) }] : [],
      ),
    )
    expect(headings).toEqual(headingsOf(blocks))
    const levels = headings.map(({ level }) => level)
    expect(levels[0]).toBe(1)
    expect(levels.filter((level) => level === 1)).toHaveLength(1)
    for (const [index, level] of levels.entries())
      expect(level).toBeLessThanOrEqual((levels[index - 1] ?? 0) + 1)
    // Poppler reads the text of a long paper's structure for half a minute.
    const short = headings.length < 15
    const root = await popplerStructure(bytes, short)
    for (const one of [1, 2, 3]) {
      const expected = headings.filter(({ level }) => level === one)
      const found = popplerElements(root, `H${one}`)
      expect(found).toHaveLength(expected.length)
      if (short)
        expect(found.map(({ texts }) => plain(texts.join(' ')))).toEqual(expected.map(({ text }) => text))
    }
  })

  test('has no text outside of its elements but ornament, and each piece of content once', async () => {
    const structure = await readStructure((await paper()).bytes)
    expect(textsOutside(structure)).toEqual([])
    for (const { tree, texts } of structure.pages) {
      expect(misplaced(tree)).toEqual([])
      const held = elementsIn(tree).flatMap(({ kids }) => kids.filter((kid) => typeof kid === 'string'))
      expect(new Set(held).size).toBe(held.length)
      for (const { content } of texts) if (content !== undefined) expect(held).toContain(content)
      expect(texts.some(({ artifact, text }) => artifact && text.startsWith('Page '))).toBe(true)
    }
    expect(wholeText(structure)).not.toMatch(/Page \d+ of \d+/)
  })

  test('is read in the order in which it was written, word for word, by two readers', async () => {
    const { bytes, blocks } = await paper()
    const texts = blocks.flatMap(textsOf).map(plain)
    expect(texts.length).toBeGreaterThan(0)
    let [read, at] = [wholeText(await readStructure(bytes)), 0]
    for (const text of texts) {
      const found = read.indexOf(text, at)
      expect(
        found,
        `“${text.slice(0, 80)}” after “${read.slice(Math.max(0, at - 60), at)}”`,
      ).toBeGreaterThanOrEqual(0)
      at = found + text.length
    }
    ;[read, at] = [plain(await plainTextOf(bytes)), 0]
    for (const { text } of headingsOf(blocks)) {
      at = read.indexOf(text, at)
      expect(at, text).toBeGreaterThanOrEqual(0)
    }
  })

  test('has as many cells in every row as in the head, and says what each head is for', async () => {
    const { bytes, blocks } = await paper()
    const tables = popplerElements(await popplerStructure(bytes), 'Table')
    const expected = blocks.filter((one) => one.kind === 'table')
    expect(tables).toHaveLength(expected.length)
    for (const [index, table] of tables.entries()) {
      const { columns = [], rows = [], foot, caption = '' } = expected[index] ?? {}
      expect(popplerElements(table, 'Caption')).toHaveLength(caption === '' ? 0 : 1)
      const scopes = popplerElements(table, 'TR').map((row) =>
        row.kids.map(({ role, attributes }) => [role, ...attributes].join(' ')),
      )
      const headed = columns.map((_, column) => (column === 0 ? 'TH /Scope /Row' : 'TD'))
      expect(scopes).toEqual([
        columns.map(() => 'TH /Scope /Column'),
        ...rows.map(() => headed),
        ...(foot ? [headed] : []),
      ])
    }
    // On every page by itself, as pdf.js reads it: rows that stand on one page are even there too.
    for (const { tree } of (await readStructure(bytes)).pages) {
      for (const table of elementsIn(tree).filter(({ role }) => role === 'Table')) {
        const counts = elementsIn(table).flatMap(({ role, kids }) => (role === 'TR' ? [kids.length] : []))
        expect(new Set(counts).size).toBeLessThanOrEqual(1)
      }
    }
  })

  test('describes every figure, and says where it is', async () => {
    const { bytes, blocks } = await paper()
    const { pages } = await readStructure(bytes)
    const figures = pages.flatMap(({ tree, width, height }) =>
      elementsIn(tree).flatMap((one) => (one.role === 'Figure' ? [{ ...one, width, height }] : [])),
    )
    const drawing = blocks.find((one) => one.kind === 'drawing')
    expect(figures.map(({ alternative }) => alternative).includes(drawing?.description)).toBe(
      drawing !== undefined,
    )
    for (const { alternative = '', box = [], width, height } of figures) {
      expect(alternative).toMatch(
        /^(The boundary line from above|Larger drawing, labelled: .{20}|Drawn signature of \p{L}|Bars of \d+ items|Steps from \d|[\d.]+ h asked of)/u,
      )
      const [left = -1, bottom = -1, right = Infinity, top = Infinity] = box
      expect([
        0 <= left,
        left < right,
        right <= width,
        0 <= bottom,
        bottom < top,
        top <= height,
      ]).not.toContain(false)
    }
  })
})

describe('the structure of a paper', { timeout: 120_000 }, () => {
  test('of a locked copy names the drawn signature, and only that', async () => {
    const root = (await readStructure(await summaryPdf(signedExample))).pages.flatMap(({ tree }) =>
      elementsIn(tree),
    )
    const drawn = root.flatMap(({ alternative = '' }) =>
      alternative.startsWith('Drawn') ? [alternative] : [],
    )
    expect(drawn).toEqual(['Drawn signature of Marnie Oakshott'])
  })

  test('keeps a list and a table that go on on another page in one piece', async () => {
    const text = `Alpha ${'and so on and on '.repeat(400)}omega.`
    const contributions = Array.from({ length: 60 }, (_, index) => ({
      household: 'a',
      kind: 'cash',
      amount: `${index + 1}.00`,
      date: '2027-01-02',
    }))
    const terms = [{ topic: 'Trees', text }]
    const bytes = await summaryPdf(summaryInputFor(notebookWith({ terms, contributions })))
    const root = await popplerStructure(bytes, true)
    const items = popplerElements(root, 'LBody').map(({ texts }) => plain(texts.join(' ')))
    expect(items).toContain(`Trees: ${text}`)
    const { pages } = await readStructure(bytes)
    const on = (part: string) => pages.findIndex(({ texts }) => texts.some((one) => one.text.includes(part)))
    expect(on('omega.')).toBeGreaterThan(on('Alpha'))
    const books = popplerElements(root, 'Table').filter(
      (table) => popplerElements(table, 'TR').length >= contributions.length,
    )
    expect(books).toHaveLength(1)
    expect(books.flatMap((table) => popplerElements(table, 'THead'))).toHaveLength(1)
    expect(unevenRows(root)).toEqual([])
    // The head that is printed again is ornament there.
    const again = pages.filter(({ texts }) => texts.some((one) => one.artifact && one.text === 'Amount'))
    expect(again.length).toBeGreaterThan(0)
  })

  test('claims no conformance that nobody has tested', async () => {
    expect(Buffer.from(await summaryPdf(summaryInputFor(exampleNotebook()))).toString('latin1')).not.toMatch(
      /pdfuaid|PDF\/UA/i,
    )
  })

  test('of a hundred sections with twenty costs each has every cell, and its record can still be checked', async () => {
    const read = notebookWith(JSON.parse(largeNotebook(10)))
    const input = summaryInputFor(read, { standing: { kind: 'signed' } })
    const sealed = await sealPdf(await summaryPdf({ ...input, madeAt: sealedAt }), await oneKey(), sealedAt)
    const cells = input.content
      .flatMap((one) => (one.kind === 'table' ? one.rows.map((row) => row.cells) : []))
      .flat()
    expect(cells.length).toBeGreaterThan(10_000)
    const written =
      Buffer.from(sealed)
        .toString('latin1')
        .match(/\/S \/(TD|TH)\b/g) ?? []
    expect(written.length).toBeGreaterThan(cells.length)
    expect((await checkRecord(sealed)).problems).toEqual([{ kind: 'no-signatures' }])
  })
})
