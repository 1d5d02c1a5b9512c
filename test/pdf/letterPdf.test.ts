import jsQR from 'jsqr'
import { PDFDocument } from 'pdf-lib'
import { describe, expect, test } from 'vitest'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'
import { letterOverflow, letterPdf } from '../../lib/pdf/letterPdf.ts'
import { quietModules, squareCode } from '../../lib/pdf/squareCode.ts'
import { type LetterInvitation, letterOf } from '../../lib/words/letter/letterText.ts'
import { shortNotebook } from '../screens/shortNotebook.ts'
import { writtenLetter } from '../words/letter/writtenLetter.ts'
import { type GreyPage, renderGrey } from './pdfTools.ts'
import { readPdf, wordsOf } from './readPdf.ts'
import { elementsIn, readStructure, textIn, textsOutside } from './readStructure.ts'

const address = 'https://fence.example:3000/open/Tk9fX2EtcmVhbC10b2tlbl9idXRfYXNfbG9uZ19hcw1'
const fonts = printFonts()

function paperWith(letter: object = {}, invitation: LetterInvitation = { kind: 'address', address }) {
  const read = readNotebook(JSON.stringify({ ...shortNotebook, letter: { ...writtenLetter, ...letter } }))
  if (!read.ok) throw new Error('the notebook holds')
  const { notebook } = read.value
  return { letter: letterOf(notebook, statementOf(notebook), invitation), units: notebook.units, fonts }
}

async function bytesOf(paper: ReturnType<typeof paperWith>): Promise<Uint8Array> {
  const made = await letterPdf(paper)
  if ('lines' in made) throw new Error(`too long by ${made.lines} lines`)
  return made.bytes
}

/** What a camera reads off the rendered page, and where its dark corners are, in dots. */
function codeOn({ width, height, levels }: GreyPage) {
  const pixels = new Uint8ClampedArray(levels.length * 4)
  levels.forEach((level, index) => {
    pixels.set([level, level, level, 255], index * 4)
  })
  return jsQR(pixels, width, height, { inversionAttempts: 'dontInvert' })
}

const wrongOf = (length: number) => ({ wrong: 'the old posts lean and rot. '.repeat(length / 28) })

describe('the letter on paper', () => {
  test.each([
    ['ft-in', 612, 792],
    ['metric', 595.28, 841.89],
  ] as const)('is exactly one page: %s', async (units, width, height) => {
    const paper = { ...paperWith(), units }
    const bytes = await bytesOf(paper)
    const [page, ...others] = (await PDFDocument.load(bytes)).getPages().map((one) => one.getSize())
    expect(others).toEqual([])
    expect(page?.width).toBeCloseTo(width, 2)
    expect(page?.height).toBeCloseTo(height, 2)
    expect(Buffer.from(await bytesOf(paper)).equals(Buffer.from(bytes))).toBe(true)
  })

  test('reads as its text does, with the address in one piece', async () => {
    const words = wordsOf(...(await readPdf(await bytesOf(paperWith()))).pages)
    for (const said of [
      'From Heron House to Bank Cottage, 1 March 2027',
      'Three posts are rotten.',
      'You are asked for $425.00 and we for $425.01',
      'Please answer by 31 March 2027.',
      address,
    ])
      expect(words).toContain(said)
  })

  test('is tagged whole: headings, and the square code as a figure in words', async () => {
    const structure = await readStructure(await bytesOf(paperWith()))
    expect(textsOutside(structure)).toEqual([])
    const [page] = structure.pages
    if (page === undefined) throw new Error('there is a page')
    const elements = elementsIn(page.tree)
    const headings = elements.filter(({ role }) => role === 'H1' || role === 'H2')
    expect(headings.map((one) => textIn(one, page))).toEqual([
      'The fence between us',
      'What is wrong with the old fence',
      'What we propose',
      'Where',
      'What it is estimated to cost',
      'How we propose to share it, and why',
      'When the work would be done',
      'How to answer',
      'By when',
      'Look at it, and answer',
    ])
    const figures = elements.filter(({ role }) => role === 'Figure')
    expect(figures.map(({ alternative }) => alternative)).toEqual([
      'A square code that holds the address of the invitation, which stands below as text.',
    ])
  })

  test('has a line to write on, or nothing, in the place of an invitation', async () => {
    for (const [kind, says] of [
      ['to be written in', true],
      ['none', false],
    ] as const) {
      const bytes = await bytesOf(paperWith({}, { kind }))
      const words = wordsOf(...(await readPdf(bytes)).pages)
      expect(words.includes('Address of the invitation:')).toBe(says)
      const [page] = await renderGrey(bytes, 150)
      expect(page && codeOn(page)).toBeNull()
    }
  })
})

describe('the square code', () => {
  test.each([
    ['at full size', {}],
    ['of a letter that is printed smaller', wrongOf(2_800)],
  ])(
    '%s reads back as the address, at least 25 mm wide, with four modules free around it',
    async (_which, letter) => {
      const dotsPerInch = 200
      const [page, ...others] = await renderGrey(await bytesOf(paperWith(letter)), dotsPerInch)
      if (page === undefined) throw new Error('there is a page')
      expect(others).toEqual([])
      const code = codeOn(page)
      expect(code?.data).toBe(address)
      if (code === null) return
      const { topLeftCorner, topRightCorner, bottomLeftCorner } = code.location
      const side = Math.hypot(topRightCorner.x - topLeftCorner.x, topRightCorner.y - topLeftCorner.y)
      expect((side / dotsPerInch) * 25.4).toBeGreaterThan(25)
      // ISO/IEC 18004: a quiet zone of four modules. Version 6 has 17 + 4 · 6 = 41 modules a side.
      const module = side / (17 + 4 * code.version)
      const free = Math.floor(quietModules * module) - 1
      const dark = (left: number, top: number, width: number, height: number) => {
        let found = 0
        for (let y = Math.round(top); y < Math.round(top + height); y += 1)
          for (let x = Math.round(left); x < Math.round(left + width); x += 1)
            if ((page.levels[y * page.width + x] ?? 255) < 128) found += 1
        return found
      }
      const [x, y] = [topLeftCorner.x, topLeftCorner.y]
      expect(dark(x, y, side, side)).toBeGreaterThan(0)
      expect(dark(x - free, y - free, side + 2 * free, free - 1)).toBe(0)
      expect(dark(x - free, bottomLeftCorner.y + 2, side + 2 * free, free - 2)).toBe(0)
      expect(dark(x - free, y - free, free - 1, side + 2 * free)).toBe(0)
      expect(dark(topRightCorner.x + 2, y - free, free - 2, side + 2 * free)).toBe(0)
    },
  )

  test('is drawn in filled boxes alone, and holds any address up to its limit', () => {
    const { marks, whole } = squareCode(`https://${'x'.repeat(1_000)}.example/`, 100)
    expect(new Set(marks.map(({ kind }) => kind))).toEqual(new Set(['polygon']))
    expect(whole).toBeGreaterThan(100)
    expect(() => squareCode('x'.repeat(2_332), 100)).toThrow()
  })
})

describe('long words', () => {
  test('print the letter smaller, on one page still, and nothing of them is lost', async () => {
    const paper = paperWith(wrongOf(2_800))
    const { pages } = await readPdf(await bytesOf(paper))
    expect(pages).toHaveLength(1)
    expect(wordsOf(...pages).match(/the old posts lean and rot\./g)).toHaveLength(100)
    expect(wordsOf(...pages)).toContain(address)
  })

  test('that no print is small enough for are refused, with how much is too long', async () => {
    const paper = paperWith(wrongOf(14_000))
    const over = await letterPdf(paper)
    expect(over).toEqual(letterOverflow(paper))
    if (!('lines' in over)) throw new Error('it does not fit')
    expect(over.lines).toBeGreaterThan(20)
    // Shortened by so much it fits, and by half of it it does not.
    expect(letterOverflow(paperWith(wrongOf(14_000 - over.characters - 280)))).toBeUndefined()
    expect(letterOverflow(paperWith(wrongOf(14_000 - over.characters / 2)))).toBeDefined()
  })

  test('of a whole file’s size are refused at once', async () => {
    for (const wrong of ['rot '.repeat(400_000), 'x\n'.repeat(800_000)]) {
      const over = letterOverflow(paperWith({ wrong }))
      expect(over?.lines).toBeGreaterThan(1_000)
    }
  })

  test('without a blank break no margin and no page', async () => {
    const { pages } = await readPdf(await bytesOf(paperWith({ wrong: 'W'.repeat(1_500) })))
    expect(pages).toHaveLength(1)
    const beyond = pages.flatMap(({ width, texts }) => texts.filter((one) => one.x + one.width > width - 36))
    expect(beyond).toEqual([])
  })
})
