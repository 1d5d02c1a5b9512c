import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, inject, test } from 'vitest'
import { expectPage } from '../expectPage.ts'
import { typeRows } from '../itemTyping.ts'
import * as quarry from '../quarryLine.ts'
import { keepPrivateLink, makeInvitation } from '../twoHouseholds.ts'
import { save } from '../typing.ts'
import { panel, visit } from '../visiting.ts'
import { a, b, enterAs, links, phone, stranger } from './evening.ts'

export function invitingSteps(): void {
  describe('inviting the second household', () => {
    test('the invitation says whom it lets in, and looking at it lets nobody in', async () => {
      await a.page.goto(`${a.home}/links`)
      links.invitation = await makeInvitation(a.page)

      await b.page.goto(links.invitation)
      await expectPage(panel(b.page, 'Whom this lets in').locator('.household-name')).toHaveText(
        quarry.names.b,
      )

      const origin = new URL(links.invitation).origin
      const id = a.home.split('/').at(-1)
      enterAs('b', `${origin}/notebook/${id}`)
      expect((await b.page.goto(b.home))?.status()).toBe(404)
    })

    test('the second household comes in and is shown a link of its own; the token is gone from the address', async () => {
      const { page } = b
      await page.goto(links.invitation)
      await page.getByRole('button', { name: `Come in as ${quarry.names.b}` }).click()
      await expectPage(page.getByRole('textbox', { name: 'Private link' })).toBeVisible()

      expect(page.url()).toBe(`${b.home}/links`)
      links.linkOfB = await keepPrivateLink(page)
      const token = links.invitation.split('/').at(-1) ?? ''
      expect(new Set([links.linkOfA, links.linkOfB, links.invitation]).size).toBe(3)
      expect(await page.evaluate(() => JSON.stringify(history.state) + location.href)).not.toContain(token)
      await expectPage(page.locator('.frame-who')).toContainText(quarry.names.b)
    })

    test('an invitation that was used says so, and lets nobody in', async () => {
      const page = await stranger.newPage()
      await page.goto(links.invitation)

      await expectPage(page.getByRole('heading', { name: 'This invitation has been used' })).toBeVisible()
      await expectPage(page.getByRole('button')).toHaveCount(0)
      expect((await page.goto(b.home))?.status()).toBe(404)
      await page.close()
    })

    test('the first household is told that nobody is left to invite', async () => {
      await a.page.goto(`${a.home}/links`)

      await expectPage(panel(a.page, 'The second household')).toContainText(
        `${quarry.names.b} has come in and holds a link of its own, which only it can replace.`,
      )
      await expectPage(a.page.getByRole('button', { name: 'Make an invitation' })).toHaveCount(0)
    })

    test('a private link lets its household in on another device', async () => {
      const page = await stranger.newPage()
      await page.goto(links.linkOfB)
      await page.getByRole('button', { name: `Come in as ${quarry.names.b}` }).click()
      await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()

      expect(page.url()).toBe(b.home)
      await expectPage(page.locator('.frame-who')).toContainText(quarry.names.b)
      await stranger.clearCookies()
      expect((await page.goto(b.home))?.status()).toBe(404)
      await page.close()
    })

    test('scripts can’t read the session, other sites can’t send it, and no token is kept', async () => {
      const session = (await phone.cookies(b.home)).find(({ name }) => name.startsWith('mearing-'))
      expect(session).toMatchObject({ httpOnly: true, sameSite: 'Lax' })

      const folder = inject('dataFolder')
      const kept = readdirSync(folder)
        .filter((name) => name.startsWith('mearing.db'))
        .map((name) => readFileSync(path.join(folder, name)))
      const secrets = [links.linkOfA, links.linkOfB, links.invitation].map(
        (address) => address.split('/').at(-1) ?? '',
      )
      expect(kept.some((bytes) => bytes.includes('Quarry Field line'))).toBe(true)
      for (const secret of [...secrets, session?.value ?? '']) {
        expect(secret).toHaveLength(43)
        expect(kept.some((bytes) => bytes.includes(secret))).toBe(false)
      }
    })

    test('the second household adds its own party, on its phone', async () => {
      await visit(b, 'The line')
      await b.page.getByRole('link', { name: 'Open households' }).click()
      await typeRows(b.page, 'households.b.parties', 'Add a party', [quarry.partyOfB])
      await save(b.page, 'Save households and parties')
    })
  })
}
