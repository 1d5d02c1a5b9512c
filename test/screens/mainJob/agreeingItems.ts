import { describe, expect, test } from 'vitest'
import { readPdf, wordsOf } from '../../pdf/readPdf.ts'
import { agreeHere, agreeToAll, standing } from '../agreeing.ts'
import { expectPage } from '../expectPage.ts'
import { put, save } from '../typing.ts'
import { downloaded, panel, visit, visitItem } from '../visiting.ts'
import { a, b } from './evening.ts'

export function agreeingSteps(): void {
  describe('agreeing item by item', () => {
    // The parties, the line, three sections, three gates, two common costs, the caps, the terms, two decisions.
    const itemCount = 14

    test('one household’s mark is not the other’s', async () => {
      expect(await agreeToAll(a)).toBe(itemCount)

      await visit(b, 'The line')
      await expectPage(b.page.locator('.open-matters')).toContainText(
        `${itemCount} items not agreed by both; all wait for your mark`,
      )
    })

    test('both have agreed to every item', async () => {
      expect(await agreeToAll(b)).toBe(itemCount)

      await expectPage(b.page.getByRole('heading', { name: 'Ready to be put up for signing' })).toBeVisible()
      await visit(a, 'The line')
      await expectPage(a.page.locator('.open-matters')).not.toContainText('not agreed by both')
      await expectPage(a.page.locator('.status')).toHaveText(
        Array.from({ length: 10 }, () => 'Agreed by both'),
      )
    })

    test('a later change takes both marks off, and the item says what changed, by whom and when', async () => {
      await visitItem(b, 'Oak to the paddock')
      await put(b.page, 'height.agreed', '1.75 m')
      await save(b.page, 'Save this section')

      await visitItem(a, 'Oak to the paddock')
      const part = standing(a.page)
      await expectPage(part.locator('.status')).toHaveText('Changed, not agreed')
      await expectPage(part.getByText('has not marked it yet')).toHaveCount(2)
      await expectPage(part.locator('summary')).toHaveText(
        /^Last changed by The\sMill\sHouse,\s\d{1,2}\s[A-Z][a-z]+\s\d{4},\s\d{2}:\d{2}\sworld\stime$/,
      )
      await part.locator('summary').click()
      await expectPage(part.locator('details li')).toHaveText(['Height, agreed: 1.83 m before, 1.75 m now'])
    })

    test('the history keeps the change', async () => {
      await visit(a, 'Record')
      await a.page.getByRole('link', { name: 'Changes' }).click()
      const newest = a.page.locator('.history-entry').first()

      await expectPage(newest.locator('.history-head')).toContainText('Oak to the paddock')
      await expectPage(newest).toContainText('The Mill House')
      await expectPage(newest).toContainText('Height, agreed: 1.83 m before, 1.75 m now')
    })

    test('nothing is put up for signing while an item is open, and the reason is said', async () => {
      await visit(a, 'Sign')
      await expectPage(
        a.page.getByRole('heading', { name: 'What stands in the way of signing' }),
      ).toBeVisible()
      await a.page.getByRole('button', { name: 'Put revision 1 up for signing' }).click()

      await expectPage(a.page.locator('.press-answer[data-kind=refused]').last()).toHaveText(
        'It can’t be put up for signing yet. Oak to the paddock: not marked as agreed by Larkspur Cottage and The Mill House.',
      )
      await visit(a, 'Record')
      await expectPage(panel(a.page, 'Revisions')).toContainText('Nothing has been put up for signing yet.')
    })

    test('before it is put up, the summary is marked as a draft on every page', async () => {
      await visit(a, 'Record')
      const pdf = await readPdf(await downloaded(a.page, 'Draft summary (PDF)'))

      expect(pdf.pages.length).toBeGreaterThan(3)
      for (const page of pdf.pages) {
        const texts = page.texts.map(({ text }) => text)
        expect(texts).toContain('DRAFT')
        expect(page.texts.some(({ text, turned }) => turned && text === 'DRAFT')).toBe(true)
      }
      expect(wordsOf(...pdf.pages)).toContain('Still open: 1 of 11')
    })

    test('the item is agreed again', async () => {
      for (const household of [a, b]) {
        await visitItem(household, 'Oak to the paddock')
        await agreeHere(household.page)
      }

      await expectPage(standing(b.page).locator('.status')).toHaveText('Agreed by both')
    })
  })
}
