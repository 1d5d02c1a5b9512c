import { describe, expect, test } from 'vitest'
import { summaryPdf } from '../../lib/pdf/summaryPdf.ts'
import { notebookWith, signatureOf, summaryInputFor } from './madeSummary.ts'
import { qpdfCheck } from './pdfTools.ts'
import { type ReadPdf, readPdf, wordsOf } from './readPdf.ts'
import { elementsIn, popplerStructure, readStructure, textsOutside, unevenRows } from './readStructure.ts'

const halves = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }
const longWord = 'x'.repeat(10_000)
const emoji = '👩‍🌾🪵🏡'
const hebrew = 'גדר בין שכנים'
const arabic = 'سور بين الجيران'
const turning = '\u202Edesrever\u202C \u0000\u0007\u001B[31m'

function hostile(text: string) {
  return notebookWith({
    title: text,
    households: {
      a: { name: text, parties: [{ name: text, capacity: 'tenant', address: text, parcel: text }] },
      b: { name: text, parties: [] },
    },
    line: {
      start: text,
      end: text,
      evidence: 'belief',
      stations: [{ at: '0 ft' }, { at: '90 ft', setback: { side: 'b', distance: '3 in' } }],
    },
    sections: [
      {
        id: 's1',
        name: text,
        from: '0 ft',
        to: '90 ft',
        face: text,
        infill: text,
        drainage: text,
        notes: text,
        height: { agreed: '6 ft', measuredFrom: 'a' },
        materials: [
          { what: text, quantity: '123456789012.123456', unit: text, unitPrice: '999999', suppliedBy: 'a' },
        ],
        labour: [
          { task: text, hours: '8', rate: '20', by: 'a' },
          { task: text, hours: '8', by: 'b', counts: false },
        ],
        share: halves,
      },
    ],
    gates: [
      {
        id: 'g1',
        name: text,
        at: '45 ft',
        opening: '4 ft',
        opens: text,
        latch: text,
        keys: text,
        share: halves,
      },
    ],
    common: [{ id: 'c1', name: text, notes: text, share: halves }],
    contributions: [
      {
        household: 'a',
        kind: 'cash',
        amount: '5.00',
        date: '2027-01-01',
        for: 's1',
        note: text,
        struck: { on: '2027-01-02', by: 'b', why: text },
      },
    ],
    terms: [{ topic: text, text }],
    checks: [{ what: text, answer: text, reference: text }],
    decisions: [{ text }],
  })
}

/** Every text that does not lie wholly between the margins; head and foot have their own, and the draft's mark the sheet. */
function textsOffThePage({ pages }: ReadPdf): string[] {
  return pages.flatMap((page, index) =>
    page.texts
      .filter(({ x, y, width, turned, size }) => {
        if (turned) return x < 0 || y > page.height
        return x < 54 - 0.5 || x + width > page.width - 54 + 0.5 || y - size < 20 || y > page.height - 25
      })
      .map(({ text }) => `page ${index + 1}: ${text.slice(0, 60)}`),
  )
}

/** Body text that runs into the head or the foot of its page. */
function textsInTheMargins({ pages }: ReadPdf): string[] {
  return pages.flatMap((page) =>
    page.texts
      .filter(
        ({ y, turned }) => !turned && ((y > 42 && y < 62) || (y > page.height - 54 && y < page.height - 36)),
      )
      .map(({ text }) => text.slice(0, 60)),
  )
}

async function printed(read: ReturnType<typeof notebookWith>): Promise<ReadPdf> {
  return readPdf(await summaryPdf(summaryInputFor(read)))
}

describe('a notebook that means no good', { timeout: 120_000 }, () => {
  test.each([
    ['words of ten thousand letters', longWord],
    ['a hundred short lines in one text', 'a line\r\nof text\n'.repeat(100)],
    ['pictures', emoji],
    ['writing from right to left', `${hebrew} ${arabic}`],
    ['signs that turn the writing, and control characters', turning],
    ['marks piled on one letter', `a${'\u0301'.repeat(400)}`],
    ['nothing but blanks', ' \u00A0\u3000\t '],
  ])('prints with %s, and no text leaves the page', async (_, text) => {
    const bytes = await summaryPdf(summaryInputFor(hostile(text)))
    const read = await readPdf(bytes)
    expect(textsOffThePage(read)).toEqual([])
    expect(textsInTheMargins(read)).toEqual([])
    const structure = await readStructure(bytes)
    expect(textsOutside(structure)).toEqual([])
    expect(unevenRows(await popplerStructure(bytes))).toEqual([])
    const figures = structure.pages.flatMap(({ tree }) =>
      elementsIn(tree).filter(({ role }) => role === 'Figure'),
    )
    expect(figures.length).toBeGreaterThan(0)
    for (const { alternative = '' } of figures) {
      expect(alternative.length).toBeGreaterThan(10)
      expect(alternative.length).toBeLessThan(13_000)
      expect(alternative).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u)
    }
  })

  test('prints with 200 sections and 150 gates that overlap and lie past the line', async () => {
    const sections = Array.from({ length: 200 }, (_, index) => ({
      id: `s${index}`,
      name: `Section with a name ${index}`,
      from: `${index * 3} ft`,
      to: `${index * 3 + 7} ft`,
      height: { agreed: '6 ft' },
      share: halves,
    }))
    const gates = Array.from({ length: 150 }, (_, index) => ({
      id: `g${index}`,
      at: `${index * 5} ft`,
      opening: '12 ft',
      opens: 'both ways',
      share: halves,
    }))
    const stations = [
      { at: '0 ft' },
      { at: '90 m', setback: { side: 'a', distance: '40 m' }, gradeA: '-30 m', gradeB: '400 ft' },
    ]
    const bytes = await summaryPdf(summaryInputFor(notebookWith({ sections, gates, line: { stations } })))
    const read = await readPdf(bytes)
    expect(textsOffThePage(read)).toEqual([])
    expect(textsInTheMargins(read)).toEqual([])
    expect(wordsOf(...read.pages)).toContain('Section 200: Section with a name 199')
    expect(await qpdfCheck(bytes)).toContain('No syntax or stream encoding errors found')
  })

  test('prints empty, and says what is missing', async () => {
    const read = await printed(notebookWith())
    const words = wordsOf(...read.pages)
    expect(textsOffThePage(read)).toEqual([])
    for (const said of [
      'Untitled notebook',
      'The first household has named no party yet.',
      'No station has been set on the line yet.',
      'No section and no gate has been laid out yet.',
      'There is nothing to share yet.',
      'Nothing to draw yet',
    ]) {
      expect(words).toContain(said)
    }
  })

  test('marks a character that the face lacks where it stands, and lists it at the end', async () => {
    const read = await printed(hostile(`Kai 界 ${emoji}`))
    const last = wordsOf(...read.pages.slice(-1))
    for (const code of ['U+754C', 'U+1F469', 'U+1F33E', 'U+1FAB5', 'U+1F3E1']) expect(last).toContain(code)
    expect(wordsOf(...read.pages.slice(0, 1))).toContain('Kai \uFFFD \uFFFD\uFFFD\uFFFD\uFFFD')
  })

  test('lists nothing at the end where every character can be printed', async () => {
    expect(wordsOf(...(await printed(hostile('Zoë Łukasz 3 ⅜ in'))).pages)).not.toContain('can’t be printed')
  })

  test('draws no signature from a path that is none, and keeps the rest', async () => {
    const read = hostile('Kai')
    const signatures = [signatureOf(read, 'a', 0, 'M0 0 C 1e9 1e9 5 5 9 9 url(#x)')]
    const input = summaryInputFor(read, { standing: { kind: 'up for signing' }, signatures })
    const bytes = await summaryPdf(input)
    expect(wordsOf(...(await readPdf(bytes)).pages)).toContain('Signed as: Kai')
    expect(await qpdfCheck(bytes)).toContain('No syntax or stream encoding errors found')
  })
})
