import { beforeAll, describe, expect, test } from 'vitest'
import { minorUnits } from '../../lib/core/amounts/money.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { statementFile } from '../../lib/core/shares/statementFile.ts'
import { summaryPdf } from '../../lib/pdf/summaryPdf.ts'
import { moneyWords } from '../../lib/words/money.ts'
import { exampleNotebook, notebookWith, sha256Of, signatureOf, summaryInputFor } from './madeSummary.ts'
import { qpdfCheck, renderGrey } from './pdfTools.ts'
import { type ReadPdf, readPdf, wordsOf } from './readPdf.ts'

const example = exampleNotebook()
const draftInput = summaryInputFor(example)
let draftBytes: Uint8Array
let draft: ReadPdf

beforeAll(async () => {
  draftBytes = await summaryPdf(draftInput)
  draft = await readPdf(draftBytes)
}, 120_000)

/** Every amount of money of the statement, as the file writes it: all but ids, kinds, hours and the currency. */
function amountsIn(value: unknown, key = ''): string[] {
  if (typeof value === 'string')
    return /hours|id|kind|currency|from|to$/i.test(key) && key !== 'total' ? [] : [value]
  if (value === null || typeof value !== 'object') return []
  if (key === 'giftHours') return []
  return Object.entries(value).flatMap(([inner, one]) => amountsIn(one, inner))
}

function figuresOf(notebook: typeof example.notebook): string[] {
  const statement = statementOf(notebook)
  if (!statement.ok) throw new Error('the example has a statement')
  const { digits, currency } = statement.value
  return amountsIn(statementFile(statement.value)).map((amount) => {
    const negative = amount.startsWith('-')
    const minor = minorUnits(negative ? amount.slice(1) : amount, digits)
    return moneyWords(negative ? -minor : minor, currency).replace(/\s/g, ' ')
  })
}

describe('the summary as a PDF', { timeout: 120_000 }, () => {
  test('has every figure of the statement in its text', () => {
    const figures = figuresOf(example.notebook)
    expect(figures.length).toBeGreaterThan(80)
    const words = ` ${wordsOf(...draft.pages)} `
    expect(figures.filter((figure) => !words.includes(figure))).toEqual([])
  })

  test('has the figures of a statement in yen and in a currency that is written with a space', async () => {
    for (const currency of ['JPY', 'CHF']) {
      const read = notebookWith({
        currency,
        sections: [
          {
            id: 's1',
            materials: [{ what: 'pipe', quantity: '7', unitPrice: '12345', suppliedBy: 'bought' }],
            share: { materials: { principle: 'equal' }, labour: { principle: 'equal' } },
          },
        ],
        contributions: [{ household: 'a', kind: 'cash', amount: '86415', date: '2027-01-02' }],
      })
      const words = wordsOf(...(await readPdf(await summaryPdf(summaryInputFor(read)))).pages)
      const figures = figuresOf(read.notebook)
      expect(figures.some((figure) => figure.startsWith('−'))).toBe(true)
      expect(figures.filter((figure) => !words.includes(figure))).toEqual([])
    }
  })

  test('has the title, the standing, the whole hash and its number on every page', () => {
    expect(draft.pages.length).toBeGreaterThan(5)
    draft.pages.forEach((page, index) => {
      const texts = page.texts.map(({ text }) => text)
      expect(texts).toContain(example.notebook.title)
      expect(texts).toContain('DRAFT')
      expect(texts).toContain(`SHA-256 of agreement.json: ${draftInput.standing.sha256}`)
      expect(texts).toContain(`Page ${index + 1} of ${draft.pages.length}`)
    })
  })

  test('marks every page of a draft across, and no page of a revision', async () => {
    expect(
      draft.pages.every((page) => page.texts.some(({ turned, text }) => turned && text === 'DRAFT')),
    ).toBe(true)
    const revision = await readPdf(
      await summaryPdf(summaryInputFor(example, { standing: { kind: 'signed' } })),
    )
    for (const page of revision.pages) {
      expect(page.texts.some(({ turned }) => turned)).toBe(false)
      expect(page.texts.map(({ text }) => text)).toContain('Revision 3')
      expect(wordsOf(page)).not.toContain('DRAFT')
    }
  })

  test('carries the agreement, whose bytes have the printed hash', () => {
    expect([...draft.attachments.keys()]).toEqual(['agreement.json'])
    const agreement = draft.attachments.get('agreement.json') ?? new Uint8Array()
    expect(sha256Of(agreement)).toBe(draftInput.standing.sha256)
    expect(JSON.parse(new TextDecoder().decode(agreement))).not.toHaveProperty('contributions')
  })

  test('carries the signatures beside the agreement, shows who signed and who has not', async () => {
    const signatures = [signatureOf(example, 'a', 0, 'M10 10L590 190L300 20'), signatureOf(example, 'b', 0)]
    const input = summaryInputFor(example, { standing: { kind: 'up for signing' }, signatures })
    const read = await readPdf(await summaryPdf(input))
    expect([...read.attachments.keys()].sort()).toEqual(['agreement.json', 'signatures.json'])
    const kept = JSON.parse(new TextDecoder().decode(read.attachments.get('signatures.json'))) as {
      typedName: string
    }[]
    expect(kept.map(({ typedName }) => typedName)).toEqual(['Marnie Oakshott', 'Ines Vandermolen'])
    const words = wordsOf(...read.pages)
    expect(words).toContain('4 March 2027, 20:01 UTC')
    expect(words).toContain('Signed as: Marnie Oakshott')
    expect(words).toMatch(/Tobias Oakshott No\. 12, co-owner Not signed yet\./)
  })

  test('is the same, byte for byte, each time it is made', async () => {
    expect(sha256Of(await summaryPdf(summaryInputFor(exampleNotebook())))).toBe(sha256Of(draftBytes))
    const dated = { ...draftInput, madeAt: new Date('2027-03-03T19:12:00Z') }
    const once = await summaryPdf(dated)
    expect(sha256Of(await summaryPdf(dated))).toBe(sha256Of(once))
    expect(sha256Of(once)).not.toBe(sha256Of(draftBytes))
  })

  test('is a sound file for qpdf, and poppler paints every page', async () => {
    expect(await qpdfCheck(draftBytes)).toContain('No syntax or stream encoding errors found')
    const pages = await renderGrey(draftBytes, 40)
    expect(pages).toHaveLength(draft.pages.length)
    for (const page of pages) expect(page.levels.some((level) => level < 120)).toBe(true)
  })

  test('is on Letter paper in feet and inches, on A4 in metres', async () => {
    const metric = await readPdf(await summaryPdf(summaryInputFor(notebookWith({ units: 'metric' }))))
    expect([draft.pages[0]?.width, draft.pages[0]?.height]).toEqual([612, 792])
    expect([metric.pages[0]?.width, metric.pages[0]?.height]).toEqual([595.28, 841.89])
  })

  test('never ends a page with a heading', () => {
    for (const page of draft.pages) {
      const body = page.texts.filter(({ y, turned }) => !turned && y > 50 && y < page.height - 45)
      const lowest = Math.max(...body.map(({ y }) => y))
      const last = body.filter(({ y }) => lowest - y < 1)
      // Headings of chapters are 14 points, of parts 11; nothing else but the title and the standing is as large.
      expect(last.every(({ size }) => size < 11)).toBe(true)
    }
  })

  test('repeats the head of a table where the table goes on on another page', async () => {
    const contributions = Array.from({ length: 120 }, () => ({
      household: 'a',
      kind: 'cash',
      amount: '1.00',
      date: '2027-01-02',
    }))
    const read = await readPdf(await summaryPdf(summaryInputFor(notebookWith({ contributions }))))
    const withEntries = read.pages.filter((page) => wordsOf(page).includes('2 January 2027'))
    expect(withEntries.length).toBeGreaterThan(2)
    for (const page of withEntries) expect(wordsOf(page)).toMatch(/Day From What Amount/)
  })
})
