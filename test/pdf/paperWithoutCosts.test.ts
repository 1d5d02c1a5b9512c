import { describe, expect, test } from 'vitest'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { minorUnits } from '../../lib/core/amounts/money.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { statementFile } from '../../lib/core/shares/statementFile.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import type { ReadNotebook } from '../../lib/forms/readNotebook.ts'
import { paperWithoutCosts } from '../../lib/pdf/paperWithoutCosts.ts'
import { summaryPdf } from '../../lib/pdf/summaryPdf.ts'
import { moneyWords } from '../../lib/words/money.ts'
import { contentWithoutCosts } from '../../lib/words/summary/contentWithoutCosts.ts'
import { notebookWithoutCosts } from '../../lib/words/summary/withoutCosts.ts'
import { costlyDocument, costlyNotebook, costlyWords } from './costlyNotebook.ts'
import { exampleNotebook, notebookWith, sha256Of, signatureOf, summaryInputFor } from './madeSummary.ts'
import { plainTextOf, qpdfCheck } from './pdfTools.ts'
import { readPdf, wordsOf } from './readPdf.ts'

const fonts = printFonts()

function summaryOf(read: ReadNotebook) {
  const sha256 = sha256Of(agreementText(read.document))
  const frozenAt = new Date('2027-03-03T19:12:00Z')
  return {
    notebook: read.notebook,
    standing: { kind: 'signed', number: 3, sha256, frozenAt } as const,
    signatures: (['a', 'b'] as const).map((household) => signatureOf(read, household, 0, 'M0 0L10 10')),
  }
}

/** Every amount of money of a statement in words, those of hours and ids left out. */
function moneyOf(read: ReadNotebook): string[] {
  const statement = statementOf(read.notebook)
  if (!statement.ok) throw new Error('there is a statement')
  const { digits, currency } = statement.value
  const amounts = (value: unknown): string[] => {
    if (typeof value === 'string') return /^-?[0-9]+\.[0-9]{2}$/.test(value) ? [value] : []
    return value === null || typeof value !== 'object' ? [] : Object.values(value).flatMap(amounts)
  }
  return amounts(statementFile(statement.value)).map((amount) =>
    moneyWords(minorUnits(amount.replace('-', ''), digits), currency),
  )
}

const without = (text: string, forbidden: readonly string[]) =>
  forbidden.filter((one) => text.replaceAll('\u00A0', ' ').includes(one))

describe('a summary without costs', { timeout: 120_000 }, () => {
  const costly = costlyNotebook()

  test('is looked for in a notebook that has them all: the whole summary holds each of them', async () => {
    const { content } = summaryInputFor(costly)
    const document = JSON.stringify(costlyDocument())
    expect(moneyOf(costly).length).toBeGreaterThan(20)
    expect(
      without(JSON.stringify(content), ['quondam pipe', 'lathering', 'Haulage', '71,114.83']),
    ).toHaveLength(4)
    const inDocument = costlyWords.filter((one) => !/^(71,1|70,)/.test(one))
    expect(inDocument.filter((one) => !document.includes(one))).toEqual([])
    const whole = await readPdf(await summaryPdf(summaryInputFor(costly)))
    expect(whole.attachments.has('agreement.json')).toBe(true)
  })

  test('has no figure of money, no hours, no name of a cost and no need in its content', () => {
    // The hash of the whole agreement and the moment of its freezing are printed, and are figures of another kind.
    const text = JSON.stringify(contentWithoutCosts(summaryOf(costly)))
    expect(without(text, [...costlyWords, ...moneyOf(costly)])).toEqual([])
    for (const told of [
      'Height at the weir',
      'Oil the hinges',
      'Marks of buried services',
      'Beside the mill',
    ])
      expect(text).toContain(told)
    expect(text).not.toMatch(/\$|USD|\bhours?\b|\bh\b|\bcap\b|balance|contribution|share of/i)
  })

  test('has none in the text of its PDF, by two readers, nor in anything attached', async () => {
    const pdf = await paperWithoutCosts(summaryOf(costly), fonts, new Date('2027-03-04T20:01:00Z'))
    const read = await readPdf(pdf)
    expect([...read.attachments.keys()]).toEqual([])
    const { sha256 } = summaryOf(costly).standing
    for (const text of [wordsOf(...read.pages), await plainTextOf(pdf)]) {
      expect(text).toContain('Beside the mill')
      expect(text).toContain(sha256)
      const figures = text.replaceAll(sha256, '')
      expect(without(figures, [...costlyWords, ...moneyOf(costly)])).toEqual([])
    }
    expect(await qpdfCheck(pdf)).toContain('No syntax or stream encoding errors found')
    // The file itself names no attachment either.
    expect(Buffer.from(pdf).toString('latin1')).not.toMatch(/EmbeddedFile|agreement\.json|Filespec/)
  })

  test('of the example has none of its figures, and says where the fence stands and how it is built', () => {
    const example = exampleNotebook()
    const content = contentWithoutCosts(summaryOf(example))
    const text = JSON.stringify(content)
    expect(without(text, moneyOf(example))).toEqual([])
    for (const said of [
      'Lane to the gardens',
      'Compost gate',
      'No permit needed up to 6 ft',
      'The old hazel stays',
    ])
      expect(text).toContain(said)
    const chapters = content.flatMap((block) =>
      block.kind === 'heading' && block.level === 1 ? [block.id] : [],
    )
    expect(chapters).not.toContain('costs')
    expect(chapters).not.toContain('shares')
    expect(chapters).not.toContain('books')
    expect(chapters).toEqual(
      expect.arrayContaining(['parties', 'line', 'build', 'terms', 'checks', 'signatures']),
    )
    // What a household typed itself is not searched for money: it is told so when it makes the link.
    expect(text).toContain('Anything above $100 is agreed first')
  })

  test('says that the file is with the households, and never that it is attached', () => {
    const text = JSON.stringify(contentWithoutCosts(summaryOf(costly)))
    expect(text).toContain('The file is not attached to this paper')
    expect(text).toContain('What it costs and who pays is left out here')
    expect(text).not.toMatch(/that is attached|what it costs and who is asked for what/)
  })
})

test('a notebook without costs keeps no key that is not named: what a file brings besides stays behind', () => {
  const read = notebookWith({
    ...costlyDocument(),
    ledger: 'sold for 900',
    sections: [{ ...(costlyDocument().sections as object[])[0], budget: '99999' }],
  })
  const kept = JSON.stringify(notebookWithoutCosts(read.notebook))
  expect(without(kept, [...costlyWords, 'ledger', 'budget', '99999'])).toEqual([])
})
