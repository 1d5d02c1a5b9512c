import { readdirSync, readFileSync } from 'node:fs'
import fontkit from '@pdf-lib/fontkit'
import { PDFDocument, type PDFFont, rgb } from 'pdf-lib'
import { beforeAll, describe, expect, test } from 'vitest'
import { printFonts } from '../../lib/files/printFonts.ts'
import { facesOf } from '../../lib/pdf/faces.ts'
import { bytesOf, makeDocument } from '../../lib/pdf/makeDocument.ts'
import type { Mark } from '../../lib/pdf/mark.ts'
import { pageSize } from '../../lib/pdf/pageSize.ts'
import { inkPoints, renderGrey } from './pdfTools.ts'

// Embedding a part of a font was seen to lose glyphs while the text could still be read out of the file. So each
// character is painted, and its ink is held, point by point, against the same character painted from the whole font.

const wordsFolder = new URL('../../lib/words/', import.meta.url)

/** Names and figures as people type them in the languages of the face, and the marks of the trade. */
const typical =
  'ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒÓÔÕÖØÙÚÛÜÝÞßàáâãäåæçèéêëìíîïðñòóôõöøùúûüýþÿĀāĂăĄąĆćČčĎďĐđĒēĖėĘęĚěĞğĢģĪīĮįİıĶķĹĺĻļĽľŁłŃńŅņŇňŌōŐőŒœŔŕŘřŚśŞşŠšŢţŤťŪūŮůŰűŲųŹźŻżŽž' +
  'АБВГДЕЖЗИКЛМНОПРСТУФХЦЧШЩЫЭЮЯабвгдежзиклмнопрстуфхцчшщыэюяґіїє' +
  '½⅓⅔¼¾⅛⅜⅝⅞×–—−≈→“”‘’…°²³€£¥₹′″•\uFFFD'

function charactersOfWords(): string[] {
  const files = readdirSync(wordsFolder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ts'),
  )
  return files.flatMap((name) => [...readFileSync(new URL(name, wordsFolder), 'utf8')])
}

const specimen = [...new Set([...charactersOfWords(), ...typical])]
  .filter((character) => /[^\s\p{C}]/u.test(character))
  .sort()

const page = pageSize('ft-in')
const [cell, columns, textSize, scale] = [32, 16, 20, 2]
const perPage = columns * 20
const cornerOf = (index: number) => ({
  x: page.left + (index % columns) * 31,
  y: 40 + (Math.floor(index / columns) % 20) * cell,
})

function specimenPages(): Mark[][] {
  const marks = specimen.flatMap((text, index) =>
    (['regular', 'semibold'] as const).map((weight, row): Mark & { page: number } => {
      const corner = cornerOf(index)
      return {
        kind: 'text',
        text,
        at: { x: corner.x + 4, y: corner.y + 22 },
        size: textSize,
        weight,
        ink: 'ink',
        page: Math.floor(index / perPage) * 2 + row,
      }
    }),
  )
  const count = Math.max(...marks.map((mark) => mark.page)) + 1
  return Array.from({ length: count }, (_, number) => marks.filter((mark) => mark.page === number))
}

/** The same pages from whole fonts, painted by pdf-lib alone. */
async function wholeFonts(pages: readonly Mark[][]): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false })
  document.registerFontkit(fontkit)
  const fonts: Record<string, PDFFont> = {
    regular: await document.embedFont(printFonts().regular, { subset: false }),
    semibold: await document.embedFont(printFonts().semibold, { subset: false }),
  }
  for (const marks of pages) {
    const sheet = document.addPage([page.width, page.height])
    for (const mark of marks) {
      if (mark.kind !== 'text') continue
      sheet.drawText(mark.text, {
        x: mark.at.x,
        y: page.height - mark.at.y,
        size: mark.size,
        // The ink of our papers.
        color: rgb(0x2b / 255, 0x26 / 255, 0x22 / 255),
        ...(fonts[mark.weight] && { font: fonts[mark.weight] }),
      })
    }
  }
  return document.save()
}

/** `points`: ink of each point of the cell, 0 to 255. `ink`: their sum, in points that are wholly black. */
type Inked = {
  readonly character: string
  readonly weight: string
  readonly ink: number
  readonly points: readonly number[]
}

async function inkOf(pdf: Uint8Array, pages: readonly Mark[][]): Promise<Inked[]> {
  const painted = await renderGrey(pdf, 72 * scale)
  return pages.flatMap((marks, number) =>
    marks.flatMap((mark) => {
      const sheet = painted[number]
      if (mark.kind !== 'text' || sheet === undefined) return []
      const box = {
        x: (mark.at.x - 4) * scale,
        y: (mark.at.y - 22) * scale,
        width: 31 * scale,
        height: cell * scale,
      }
      const points = inkPoints(sheet, box)
      return [
        {
          character: mark.text,
          weight: mark.weight,
          points,
          ink: points.reduce((sum, one) => sum + one, 0) / 255,
        },
      ]
    }),
  )
}

describe('every character of the program’s words, and typical ones of names', () => {
  const pages = specimenPages()
  let part: Inked[] = []
  let whole: Inked[] = []

  beforeAll(async () => {
    const { width, height } = page
    const made = await makeDocument(
      pages,
      { ...page, width, height },
      { title: 'Specimen', language: 'en' },
      printFonts(),
    )
    part = await inkOf(await bytesOf(made), pages)
    whole = await inkOf(await wholeFonts(pages), pages)
  }, 120_000)

  test('is in both faces', () => {
    const faces = facesOf(printFonts())
    expect(specimen.length).toBeGreaterThan(250)
    expect(specimen.filter((character) => !faces.canPrint(character.codePointAt(0) ?? 0))).toEqual([])
  })

  test('leaves ink on the page', () => {
    expect(part).toHaveLength(specimen.length * 2)
    expect(
      part.filter(({ ink }) => ink < 2).map(({ character, weight }) => `${character} ${weight}`),
    ).toEqual([])
  })

  test('leaves the ink that the whole font leaves', () => {
    expect(differing(part, whole)).toEqual([])
  })

  test('would be missed where one were lost, or stood for another', () => {
    const other = part.find(({ character }) => character === '⅝')
    const blank = { ink: 0, points: [] }
    const lost = part.map((one) => (one.character === 'ł' ? { ...one, ...blank } : one))
    const swapped = part.map((one) => (one.character === '⅜' ? { ...one, points: other?.points ?? [] } : one))
    expect(differing(lost, whole)).toEqual(['ł regular', 'ł semibold'])
    expect(differing(swapped, whole)).toEqual(['⅜ regular', '⅜ semibold'])
  })
})

/** Where the two paintings of a character differ by more than a twentieth of its ink. */
function differing(part: readonly Inked[], whole: readonly Inked[]): string[] {
  return part
    .filter(({ points }, index) => {
      const expected = whole[index]
      if (expected === undefined) return true
      const off = expected.points.reduce((sum, one, at) => sum + Math.abs(one - (points[at] ?? 0)), 0) / 255
      return off > 0.05 * expected.ink
    })
    .map(({ character, weight }) => `${character} ${weight}`)
}
