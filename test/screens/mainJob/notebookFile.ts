import { describe, expect, inject, test } from 'vitest'
import { expectPage } from '../expectPage.ts'
import { chooseFile, homeOf } from '../twoHouseholds.ts'
import { exported, visit } from '../visiting.ts'
import { b, stranger } from './evening.ts'

export function notebookFileSteps(): void {
  describe('the notebook file', () => {
    test('starts a new notebook, from which the very same file comes out again, but for who confirmed a payment', async () => {
      const file = await exported(b)
      const page = await stranger.newPage()
      await page.goto(inject('baseUrl'))
      await chooseFile(page, file)
      await page.getByRole('button', { name: 'Start from this file' }).click()
      await expectPage(page.getByRole('textbox', { name: 'Private link' })).toBeVisible()
      const elsewhere = { page, home: homeOf(page) }

      expect(elsewhere.home.split('/').at(-1)).not.toBe(b.home.split('/').at(-1))
      // A file can say anything, so the payment that b made waits for the word of a again.
      const unconfirmed = file.toString('utf8').replace(/"confirmed": \{[^}]*\}/, '"waits": true')
      expect(unconfirmed).not.toBe(file.toString('utf8'))
      expect((await exported(elsewhere)).toString('utf8')).toBe(unconfirmed)
      await visit(elsewhere, 'Sign')
      await expectPage(page.locator('.open-matters')).toContainText('14 items not agreed by both')
      await expectPage(page.getByRole('heading', { name: 'The agreement so far, a draft' })).toBeVisible()
    })
  })
}
