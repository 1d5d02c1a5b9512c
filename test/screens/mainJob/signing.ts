import { describe, expect, test } from 'vitest'
import { putUp, shownHash, sign } from '../agreeing.ts'
import { expectPage } from '../expectPage.ts'
import * as quarry from '../quarryLine.ts'
import { put, save } from '../typing.ts'
import { type AtHome, downloaded, panel, visit, visitItem } from '../visiting.ts'
import { sha256 } from './bytes.ts'
import { a, b } from './evening.ts'

export function signingSteps(): void {
  describe('signing', () => {
    let hash = ''
    let agreement: Buffer = Buffer.alloc(0)

    const agreementOf = async (household: AtHome) => {
      await visit(household, 'Sign')
      return downloaded(household.page, 'Agreement text (JSON)')
    }

    test('putting it up freezes a revision with its hash', async () => {
      hash = await putUp(a, 1)
      agreement = await agreementOf(a)

      expect(sha256(agreement)).toBe(hash)
      expect(JSON.parse(agreement.toString('utf8'))).not.toHaveProperty('contributions')
    })

    test('both households are shown the same text, under the same hash', async () => {
      await visit(b, 'Sign')

      expect(await shownHash(b.page)).toBe(hash)
      expect(await agreementOf(b)).toEqual(agreement)
      await expectPage(b.page.getByRole('heading', { name: 'The agreement, revision 1' })).toBeVisible()
      await expectPage(b.page.getByText('has not signed yet')).toHaveCount(3)
    })

    test('the text stands before the form, folded chapter by chapter, and a chapter opens', async () => {
      const { page } = b
      const chapters = page.locator('.chapter > summary')
      const form = page.getByRole('button', { name: `Sign as ${quarry.partyOfB.name}` })
      const [last, signs] = [await chapters.last().boundingBox(), await form.boundingBox()]
      expect(last?.y).toBeLessThan(signs?.y ?? 0)

      const terms = page.locator('.chapter', { has: page.getByRole('heading', { level: 3, name: 'Terms' }) })
      await expectPage(terms.locator('.summary-text')).toBeHidden()
      await terms.locator('summary').click()
      await expectPage(terms.locator('.summary-text')).toBeVisible()
      await page.getByRole('link', { name: 'Open all chapters' }).click()
      await expectPage(page.locator('.chapter:not([open])')).toHaveCount(0)
      expect(await chapters.count()).toBeGreaterThan(10)
    })

    test('what is edited afterwards belongs to the next revision', async () => {
      await visitItem(a, 'Oak to the paddock')
      await put(a.page, 'notes', 'Boards are oiled every third year.')
      await save(a.page, 'Save this section')

      await visit(a, 'Sign')
      await expectPage(a.page.getByRole('heading', { name: 'The notebook has changed since' })).toBeVisible()
      expect(await shownHash(a.page)).toBe(hash)
      expect(await agreementOf(a)).toEqual(agreement)
    })

    test('nobody signs under another name', async () => {
      await visit(a, 'Sign')
      const part = panel(a.page, 'Odile Farnsby signs')
      await part.getByLabel('Type your full name').fill('Odile Farnsbee')
      await part.getByRole('checkbox').check()
      await part.getByRole('button', { name: 'Sign as Odile Farnsby' }).click()

      await expectPage(part.locator('.summary-faults')).toContainText(
        'Type the full name as it stands in the agreement: Odile Farnsby.',
      )
      await expectPage(part.getByLabel('Type your full name')).toHaveValue('Odile Farnsbee')
    })

    test('nobody signs without the ticked sentence', async () => {
      const part = panel(a.page, 'Odile Farnsby signs')
      await part.getByLabel('Type your full name').fill('Odile Farnsby')
      await part.getByRole('checkbox').uncheck()
      await part.getByRole('button', { name: 'Sign as Odile Farnsby' }).click()

      await expectPage(part.locator('.summary-faults')).toContainText(
        'Tick the sentence if you mean to sign. Without it nothing is signed.',
      )
      await a.page.reload()
      await expectPage(a.page.getByText('has not signed yet')).toHaveCount(3)
    })

    test('nobody is offered to sign for the other household', async () => {
      await expectPage(a.page.getByRole('button', { name: /^Sign as / })).toHaveText([
        'Sign as Odile Farnsby',
        'Sign as Jory Tallåsen',
      ])
      await visit(b, 'Sign')
      await expectPage(b.page.getByRole('button', { name: /^Sign as / })).toHaveText([
        `Sign as ${quarry.partyOfB.name}`,
      ])
    })

    test('a party signs with a drawn signature', async () => {
      await visit(a, 'Sign')
      const part = panel(a.page, 'Odile Farnsby signs')
      const surface = part.locator('canvas')
      await surface.scrollIntoViewIfNeeded()
      const box = await surface.boundingBox()
      if (box === null) throw new Error('the surface to draw on is not on the page')
      await a.page.mouse.move(box.x + 30, box.y + 40)
      await a.page.mouse.down()
      for (const [x, y] of [
        [60, 90],
        [110, 30],
        [170, 100],
        [240, 50],
      ] as const) {
        await a.page.mouse.move(box.x + x, box.y + y, { steps: 6 })
      }
      await a.page.mouse.up()
      await expectPage(part.locator('.drawn-standing')).toHaveText('Drawn.')
      await sign(a.page, 'Odile Farnsby')

      await expectPage(a.page.getByText('has not signed yet')).toHaveCount(2)
      await a.page.getByRole('heading', { level: 3, name: 'Signatures' }).click()
      await expectPage(a.page.getByRole('img', { name: 'Drawn signature of Odile Farnsby' })).toBeVisible()
    })

    test('the others sign, each for itself', async () => {
      await sign(a.page, 'Jory Tallåsen')
      await visit(b, 'Sign')
      await sign(b.page, quarry.partyOfB.name)

      await expectPage(b.page.getByRole('heading', { name: 'Revision 1 is signed by all' })).toBeVisible()
    })
  })
}
