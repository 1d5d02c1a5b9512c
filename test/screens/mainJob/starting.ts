import { describe, expect, inject, test } from 'vitest'
import { expectPage } from '../expectPage.ts'
import { typeFields, typeRows } from '../itemTyping.ts'
import * as quarry from '../quarryLine.ts'
import { homeOf, keepPrivateLink } from '../twoHouseholds.ts'
import { choose, field, put, save, trySaving } from '../typing.ts'
import { a, enterAs, links, stranger } from './evening.ts'

export function startingSteps(): void {
  describe('starting a notebook', () => {
    test('three names start a notebook; the money and lengths that were guessed can be changed', async () => {
      const { page } = a
      await page.goto(inject('baseUrl'))
      await page.getByRole('link', { name: 'Start a notebook' }).click()
      await put(page, 'title', quarry.heading.title)
      await put(page, 'households.a.name', quarry.names.a)
      await put(page, 'households.b.name', quarry.names.b)
      await page.locator('summary', { hasText: 'Money and lengths' }).click()
      await choose(page, 'currency', quarry.heading.currency)
      await choose(page, 'units', quarry.heading.units)
      await expectPage(page.locator('summary')).toContainText('USD, feet and inches')
    })

    test('the first household is in, and is shown its private link once', async () => {
      const { page } = a
      await trySaving(page, 'Start the notebook')
      await expectPage(page.getByRole('textbox', { name: 'Private link' })).toBeVisible()
      enterAs('a', homeOf(page))

      links.linkOfA = await keepPrivateLink(page)

      expect(links.linkOfA).toMatch(/^http:\/\/[^/]+\/open\/[A-Za-z0-9_-]{43}$/)
      await page.goto(`${a.home}/links`)
      await expectPage(page.getByRole('heading', { name: 'Your own link' })).toBeVisible()
      await expectPage(page.getByRole('textbox', { name: 'Private link' })).toHaveCount(0)
    })

    test('a tenant is told that it usually can’t bind the owner', async () => {
      const { page } = a
      await page.goto(`${a.home}/parties`)
      const [owner, tenant] = quarry.heading.households.a.parties
      await typeRows(page, 'households.a.parties', 'Add a party', [owner])
      await expectPage(page.getByText('A tenant usually can’t bind the owner of the land.')).toHaveCount(0)

      await field(page, 'households.a.parties').getByRole('button', { name: 'Add a party' }).click()
      await typeFields(page, 'households.a.parties[1].', tenant)

      await expectPage(page.getByText('A tenant usually can’t bind the owner of the land.')).toBeVisible()
      await save(page, 'Save households and parties')
    })

    test('whoever has no link finds nothing, and can’t tell whether there is such a notebook', async () => {
      const page = await stranger.newPage()
      const id = a.home.split('/').at(-1) ?? ''
      const guess = 'x'.repeat(id.length)
      const answers: string[] = []
      for (const asked of [id, guess]) {
        const answer = await page.goto(`${inject('baseUrl')}/notebook/${asked}`)
        expect(answer?.status()).toBe(404)
        // Everything that is sent, but for the address that was asked for.
        answers.push(((await answer?.text()) ?? '').replaceAll(asked, '(asked)'))
      }

      expect(answers[0]).toBe(answers[1])
      await expectPage(page.getByRole('heading', { name: 'Nothing here' })).toBeVisible()
      await page.close()
    })
  })
}
