import AxeBuilder from '@axe-core/playwright'
import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { choose, faultAt, field, put, save, trySaving } from './typing.ts'
import { panel } from './visiting.ts'

// The section of the short notebook: 60 ft of mesh at 5.00, 300.00; 10 h at 20.00, 200.00. Household b sits at a phone.

// WCAG 2.2, levels A and AA: what axe can find of it by itself.
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

/** One item as it stands in the file that household b is given. */
type Section = { share: Record<string, unknown>; basicFence: { materials: Record<string, string>[] } }

describe('a household that would be content with less', () => {
  let browser: Browser
  let neighbours: Neighbours

  beforeAll(async () => {
    browser = await openBrowser()
    neighbours = await neighboursWith(browser, shortNotebook)
    await neighbours.b.page.goto(`${neighbours.b.home}/item/s1`)
  })
  afterAll(async () => {
    await browser?.close()
  })

  async function inTheFile(): Promise<Section> {
    const { page, home } = neighbours.b
    const { sections } = JSON.parse(await (await page.request.get(`${home}/notebook.json`)).text())
    return sections[0]
  }

  test('comes from the section’s share to a page where the plainer fence is described', async () => {
    const { page } = neighbours.b
    await page.getByRole('link', { name: 'Describe a basic fence to hold it against' }).click()
    await expectPage(page.getByRole('heading', { level: 1 })).toHaveText('Basic fence of Along the bank')
    await put(page, 'basicFence.height', '4 ft')
    await put(page, 'basicFence.infill', 'farm wire')
    await page.getByRole('button', { name: 'Farm wire', exact: true }).click()
    await page.getByRole('button', { name: 'Add a work line' }).click()
    await put(page, 'basicFence.labour[0].task', 'set posts, string wire')
    await put(page, 'basicFence.labour[0].hours', '6')
    await put(page, 'basicFence.labour[0].rate', '20.00')
    await choose(page, 'basicFence.labour[0].by', 'a')
    await save(page, 'Save the basic fence')
    expect((await inTheFile()).basicFence).toMatchObject({ height: '4 ft', buildUp: { name: 'Farm wire' } })
  })

  test('has its quantities worked out over the same stretch, and prices them', async () => {
    const { page } = neighbours.b
    await expectPage(panel(page, 'What it takes')).toContainText('round timber post')
    await page.getByRole('button', { name: 'Put these among its cost lines' }).click()
    await expectPage(field(page, 'basicFence.materials[0].unitPrice')).toBeVisible()
    const { materials } = (await inTheFile()).basicFence
    expect(materials.length).toBeGreaterThan(3)
    for (const [at] of materials.entries()) await put(page, `basicFence.materials[${at}].unitPrice`, '0')
    await put(page, 'basicFence.materials[0].quantity', '10')
    await put(page, 'basicFence.materials[0].unitPrice', '14.05')
    await save(page, 'Save the basic fence')
    // 10 × 14.05 = 140.50; 6 × 20.00 = 120.00; 300.00 − 140.50 and 200.00 − 120.00.
    const rows = panel(page, 'What it comes to').locator('tbody tr, tfoot tr')
    await expectPage(rows).toHaveText([
      'Materials$140.50$300.00$159.50',
      'Work$120.00$200.00$80.00',
      'Both$260.50$500.00$239.50',
    ])
  })

  test.each([
    ['light', 390],
    ['dark', 820],
  ] as const)('has nothing on that page that axe finds wrong, in %s at %i px', async (colorScheme, width) => {
    const { page, home } = neighbours.b
    const before = page.viewportSize()
    await page.emulateMedia({ colorScheme })
    await page.setViewportSize({ width, height: 844 })
    await page.goto(`${home}/basic-fence/s1`)
    const { violations } = await new AxeBuilder({ page }).withTags(rules).analyze()
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html)}`)).toEqual([])
    const sideways = 'document.documentElement.scrollWidth - document.documentElement.clientWidth'
    expect(await page.evaluate(sideways)).toBe(0)
    await page.emulateMedia({ colorScheme: 'light' })
    if (before) await page.setViewportSize(before)
  })

  test('holds the share against it with one press, and sees what that asks', async () => {
    const { page } = neighbours.b
    const press = page.getByRole('button', { name: 'Hold the share against it' })
    await press.click()
    expect(page.url()).toContain('/basic-fence/')
    await page.getByLabel('What is above it is asked of').selectOption({ label: 'Heron House' })
    await press.click()
    await page.waitForURL(/\/item\/s1$/)
    const asks = panel(page, 'What it asks of each household')
    await expectPage(asks).toContainText(
      'Pay the difference: the basic fence of $140.50 is halved; the $159.50 above it is asked of Heron House. So Heron House is asked for $229.75, Bank Cottage for $70.25.',
    )
    await expectPage(panel(page, 'Where this stands')).toContainText('Bank Cottage has not marked it yet')
  })

  test('asks for several upgrades, each of its own household; one without a household is refused and kept', async () => {
    const { page } = neighbours.b
    const upgrades = 'share.materials.upgrades'
    const add = page
      .locator('#field-share-materials-upgrades')
      .getByRole('button', { name: 'Add an upgrade' })
    await add.click()
    await put(page, `${upgrades}[0].what`, 'one foot more height')
    await put(page, `${upgrades}[0].amount`, '90')
    await choose(page, `${upgrades}[0].household`, 'a')
    await add.click()
    await put(page, `${upgrades}[1].what`, 'a dog board')
    await put(page, `${upgrades}[1].amount`, '40.50')
    await trySaving(page, 'Save this section')
    await expectPage(faultAt(page, `${upgrades}[1].household`)).toContainText('choose one of the answers')
    await expectPage(field(page, `${upgrades}[1].amount`)).toHaveValue('40.50')
    await choose(page, `${upgrades}[1].household`, 'b')
    await choose(page, 'share.materials.upgradeShare.principle', 'equal')
    await save(page, 'Save this section')
    // 159.50 − 90.00 − 40.50 = 29.00, halved; a 70.25 + 90.00 + 14.50, b 70.25 + 40.50 + 14.50.
    await expectPage(panel(page, 'What it asks of each household')).toContainText(
      '“one foot more height” for $90.00 is asked of Heron House; “a dog board” for $40.50 is asked of Bank Cottage; the $29.00 left is halved. So Heron House is asked for $174.75, Bank Cottage for $125.25.',
    )
  })

  test('is told where the typed cost is not what the basic fence comes to, and takes the sum over', async () => {
    const { page, home } = neighbours.b
    await put(page, 'share.materials.basic', '150')
    await save(page, 'Save this section')
    const apart = 'The share of the materials is held against $150.00, but the basic fence comes to $140.50.'
    await expectPage(panel(page, 'The basic fence comes to another figure')).toContainText(apart)
    await page.goto(`${home}/basic-fence/s1`)
    await expectPage(panel(page, 'What it comes to')).toContainText(apart)
    await page.getByRole('button', { name: 'Take over what the basic fence comes to' }).click()
    await page.waitForURL(/\/item\/s1$/)
    await expectPage(field(page, 'share.materials.basic')).toHaveValue('140.50')
    expect((await inTheFile()).share).toMatchObject({
      materials: { basic: '140.50', upgrades: [{ household: 'a' }, { household: 'b', amount: '40.50' }] },
      labour: { basic: '120.00' },
    })
  })

  test('comes to the same page from the ways to share, side by side', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/side-by-side/s1`)
    await page.getByRole('link', { name: 'A basic fence to hold it against' }).click()
    await expectPage(page.getByRole('heading', { level: 1 })).toHaveText('Basic fence of Along the bank')
  })
})
