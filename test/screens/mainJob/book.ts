import { describe, expect, test } from 'vitest'
import { readPdf, wordsOf } from '../../pdf/readPdf.ts'
import { shownHash } from '../agreeing.ts'
import { expectPage } from '../expectPage.ts'
import { typeFields } from '../itemTyping.ts'
import { statementPrinted } from '../statementCommand.ts'
import { moneyFigures } from '../statementFigures.ts'
import { trySaving } from '../typing.ts'
import { downloaded, exported, panel, visit } from '../visiting.ts'
import { sha256 } from './bytes.ts'
import { a, b } from './evening.ts'

export function bookSteps(): void {
  describe('money and hours', () => {
    const [pipe, scrap] = ['pipe, first load', 'old wire']
    // What has not happened yet is refused, and the notebook was started only now.
    const day = new Date().toISOString().slice(0, 10)
    // Worth, by hand: a 34.30 + 740.00 + 12 · 25 − 45.00 + 3000.00, less the 500.00 that b hands over; b 385.55 + 500.00.
    const entries = [
      {
        by: () => a,
        household: 'a',
        kind: 'material',
        amount: '34.30',
        date: day,
        for: 's1',
        note: 'post caps',
      },
      {
        by: () => a,
        household: 'a',
        kind: 'cash',
        amount: '740.00',
        date: day,
        for: 's1',
        note: pipe,
      },
      {
        by: () => a,
        household: 'a',
        kind: 'hours',
        hours: '12',
        rate: '25.00',
        date: day,
        for: 's1',
      },
      {
        by: () => a,
        household: 'a',
        kind: 'refund',
        amount: '45.00',
        date: day,
        for: 's1',
        note: scrap,
      },
      {
        by: () => a,
        household: 'a',
        kind: 'cash',
        amount: '3000.00',
        date: day,
        note: 'everything else at the steel yard',
      },
      {
        by: () => b,
        household: 'b',
        kind: 'cash',
        amount: '385.55',
        date: day,
        for: 'c2',
        note: 'surveyor',
      },
      // For the whole fence: on the survey, a second visit above the plan would pause at the cap of b.
      {
        by: () => b,
        household: 'b',
        kind: 'cash',
        amount: '385.55',
        date: day,
        note: 'surveyor, again',
      },
      {
        by: () => b,
        household: 'b',
        kind: 'transfer',
        amount: '500.00',
        date: day,
        means: 'by bank',
        note: 'first part',
      },
    ]

    test.each(entries)('$household enters $kind: $note', async ({ by, ...entry }) => {
      const household = by()
      const { page } = household
      await visit(household, 'Money and hours')
      const book = panel(page, 'The book').locator('.book-entry')
      const before = await book.count()
      await typeFields(page, '', entry)
      await trySaving(page, 'Enter it')

      await expectPage(book).toHaveCount(before + 1)
      await expectPage(book.last()).toContainText(
        entry.note ?? `(${entry.hours} h at $${Number(entry.rate).toFixed(2)} an hour)`,
      )
    })

    test('a payment counts once the household that received it has confirmed it', async () => {
      const row = (page: typeof a.page) =>
        panel(page, 'The book').locator('.book-entry', { hasText: 'first part' })
      await expectPage(row(b.page)).toContainText(
        'Said to be paid, not confirmed: it counts once Larkspur Cottage confirms it',
      )
      await expectPage(row(b.page).getByRole('button', { name: 'We received it: confirm' })).toHaveCount(0)
      await visit(a, 'Money and hours')
      await a.page.getByRole('link', { name: 'A payment waits for your word' }).click()
      await row(a.page).getByRole('button', { name: 'We received it: confirm' }).click()

      await expectPage(row(a.page)).toContainText(
        /Larkspur\sCottage confirmed it on\s\d{1,2}\s[A-Z][a-z]+\s\d{4}/,
      )
      await expectPage(row(a.page).getByText('Take back')).toHaveCount(0)
    })

    test('an entry that was made twice is taken back, and stays in the book', async () => {
      await visit(b, 'Money and hours')
      const row = panel(b.page, 'The book').locator('.book-entry', { hasText: 'surveyor, again' })
      await row.locator('summary').click()
      await row.getByLabel('Why').fill('entered twice')
      await row.getByRole('button', { name: 'Take this entry back' }).click()

      await expectPage(row).toContainText(
        /Taken back by The\sMill\sHouse on\s\d{1,2}\s[A-Z][a-z]+\s\d{4}: entered twice/,
      )
    })

    test('the balance, what is outstanding and the one payment are those of the statement', async () => {
      const printed = await statementPrinted(await exported(a))
      // By hand, on top of the shares above: asked a 3159.63, b 1800.00, in all 4959.63; given a 3529.30, b 885.55.
      expect(printed.contributed).toEqual({ a: '3529.30', b: '885.55' })
      expect(printed.balance).toEqual({ a: '-369.67', b: '914.45' })
      expect(printed.outstanding).toBe('544.78')
      expect(printed.transfer).toEqual({ from: 'b', to: 'a', amount: '369.67' })

      for (const household of [a, b]) {
        await visit(household, 'Money and hours')
        const part = panel(household.page, 'Where you stand')
        const cells = (label: string) =>
          part.locator('tr', { has: household.page.getByRole('rowheader', { name: label }) }).locator('td')
        await expectPage(cells('Asked')).toHaveText(['$3,159.63', '$1,800.00', '$4,959.63'])
        await expectPage(cells('Given so far')).toHaveText(['$3,529.30', '$885.55', '$4,414.85'])
        await expectPage(cells('Still to give')).toHaveText(['−$369.67', '$914.45', '$544.78'])
        await expectPage(part).toContainText('$544.78 of the whole has not been given by anyone yet.')
        await expectPage(part).toContainText(
          'On what has been given so far, one payment evens the two: The Mill House pays $369.67 to Larkspur Cottage.',
        )
      }
    })

    test('receipts do not change what was signed', async () => {
      await visit(a, 'Sign')
      const hash = await shownHash(a.page)
      const pdf = await readPdf(await downloaded(a.page, 'Locked copy, revision 1 (PDF)'))

      await expectPage(a.page.getByRole('heading', { name: 'Revision 1 is signed by all' })).toBeVisible()
      expect(sha256(pdf.attachments.get('agreement.json') ?? new Uint8Array())).toBe(hash)
      for (const page of pdf.pages) expect(wordsOf(page)).toContain(hash)
      // The locked copy stays as it was locked, before any receipt; the draft tells the books as they are now.
      expect(wordsOf(...pdf.pages)).not.toContain('entered twice')
      await visit(a, 'Record')
      const draft = await readPdf(await downloaded(a.page, 'Draft summary (PDF)'))
      const words = ` ${wordsOf(...draft.pages)} `
      const printed = await statementPrinted(await exported(a))
      expect(moneyFigures(printed).filter((figure) => !words.includes(` ${figure}`))).toEqual([])
      expect(words).toContain('entered twice')
    })
  })
}
