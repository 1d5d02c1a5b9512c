import type { Browser, Page } from '@playwright/test'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { choose, faultAt, field, openRowOf, put, save, tick, trySaving } from './typing.ts'
import { exported, panel, visit } from './visiting.ts'

const pipe = { shape: 'round', outside: '2 3/8 in', wall: '0.154 in', material: 'steel' }
const fence = {
  ...shortNotebook,
  sections: shortNotebook.sections.map((section) => ({
    ...section,
    buildUp: {
      name: 'Pipe and mesh',
      posts: {
        what: 'pipe',
        ...pipe,
        stock: '21 ft',
        spacing: '8 ft',
        hole: '10 in',
        depth: '30 in',
        top: 'saddle',
      },
      rails: { what: 'rail pipe', ...pipe, stock: '21 ft', count: '2' },
    },
  })),
}

let browser: Browser
let neighbours: Neighbours
/** The second household, at a phone. */
let page: Page
let home: string

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})
beforeEach(async () => {
  neighbours = await neighboursWith(browser, fence)
  ;({ page, home } = neighbours.b)
})
afterEach(() => neighbours?.close())

async function file(): Promise<Record<string, unknown>> {
  return JSON.parse((await exported(neighbours.b)).toString())
}

const unfold = (label: string) => page.locator('.fold > summary', { hasText: label }).click()
const findingAt = (path: string) =>
  page.locator(`#field-${path.replaceAll(/[^A-Za-z0-9]+/g, '-').replaceAll(/^-+|-+$/g, '')}-finding`)
const addRow = (path: string, label: string) =>
  field(page, path).getByRole('button', { name: label, exact: true }).click()
const sideways = () =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

describe('on a phone', () => {
  test('the line takes its error, a turn, a limit, and wind, soil and frost', async () => {
    await page.goto(`${home}/line`)
    await put(page, 'line.error', '2 in')
    await openRowOf(field(page, 'line.stations[1].at'))
    await field(page, 'line.stations').locator('.fold > summary').nth(1).click()
    await put(page, 'line.stations[1].angle.degrees', '12')
    await choose(page, 'line.stations[1].angle.toward', 'b')
    await unfold('Limits on height')
    await addRow('line.limits', 'Add a limit')
    await expectPage(field(page, 'line.limits[0].limit')).toBeFocused()
    await put(page, 'line.limits[0].limit', '5 ft')
    await choose(page, 'line.limits[0].measuredFrom', 'lower')
    await put(page, 'line.limits[0].from', '0 ft')
    await put(page, 'line.limits[0].saidBy', 'the permit counter')
    await put(page, 'line.limits[0].on', '2027-02-10')
    await unfold('Wind, soil and frost')
    await put(page, 'line.site.wind.speed', '115')
    await choose(page, 'line.site.wind.unit', 'mph')
    await page.getByRole('radio', { name: 'Among houses or trees (exposure B)' }).check()
    await put(page, 'line.site.soil.what', 'sandy')
    await put(page, 'line.site.soil.lateral', '150')
    await choose(page, 'line.site.soil.unit', 'psf/ft')
    await tick(page, 'line.site.soil.doubled', true)
    await put(page, 'line.site.frost.depth', '18 in')
    expect(await sideways()).toBe(0)
    await save(page, 'Save the line')

    expect(await file()).toMatchObject({
      line: {
        error: '2 in',
        stations: [{ at: '0 ft' }, { at: '60 ft', angle: { degrees: '12', toward: 'b' } }],
        limits: [
          {
            from: '0 ft',
            limit: '5 ft',
            measuredFrom: 'lower',
            saidBy: 'the permit counter',
            on: '2027-02-10',
          },
        ],
        site: {
          wind: { speed: '115', unit: 'mph', exposure: 'B' },
          soil: { what: 'sandy', lateral: '150', unit: 'psf/ft', doubled: true },
          frost: { depth: '18 in' },
        },
      },
    })
    await expectPage(page.locator('.fold > summary', { hasText: 'Wind, soil and frost' })).toContainText(
      'wind 115 mph, soil 150 psf/ft, frost 18 in',
    )

    await visit(neighbours.b, 'Setbacks and heights')
    await expectPage(panel(page, 'Heights')).toContainText(
      'as said by the permit counter on 10 February 2027',
    )
    await expectPage(panel(page, 'A look at wind and posts')).toContainText('This is a rough look')
    expect(await sideways()).toBe(0)
  })

  test('a limit that can’t be read is refused inside its fold, and what was typed stays', async () => {
    await page.goto(`${home}/line`)
    const before = await exported(neighbours.b)
    await unfold('Limits on height')
    await addRow('line.limits', 'Add a limit')
    await put(page, 'line.limits[0].limit', 'six feet')
    await put(page, 'line.limits[0].saidBy', 'the permit counter')
    await unfold('Limits on height')
    await trySaving(page, 'Save the line')

    await expectPage(faultAt(page, 'line.limits[0].limit')).toBeVisible()
    await expectPage(faultAt(page, 'line.limits[0].limit')).toContainText(
      '"six feet" can\'t be read as a length',
    )
    await expectPage(field(page, 'line.limits[0].limit')).toHaveValue('six feet')
    await expectPage(field(page, 'line.limits[0].saidBy')).toHaveValue('the permit counter')
    expect((await exported(neighbours.b)).equals(before)).toBe(true)
    await page.reload()
  })

  test('twenty measured pieces of one profile are a length each, after the first', async () => {
    await visit(neighbours.b, 'Materials')
    await page.getByRole('link', { name: 'Pieces at hand' }).click()
    await expectPage(page.getByRole('heading', { level: 1, name: 'Pieces at hand' })).toBeVisible()
    await addRow('inventory', 'Add a piece')
    await put(page, 'inventory[0].length', '14 ft 1 in')
    await put(page, 'inventory[0].count', '2')
    await put(page, 'inventory[0].what', 'reclaimed pipe')
    await choose(page, 'inventory[0].shape', 'round')
    await put(page, 'inventory[0].outside', '2 3/8 in')
    await put(page, 'inventory[0].wall', '0.154 in')
    await choose(page, 'inventory[0].household', 'a')
    for (let piece = 1; piece < 20; piece += 1) {
      await addRow('inventory', 'Add a piece')
      await expectPage(field(page, `inventory[${piece}].length`)).toBeFocused()
      await page.keyboard.type(`${piece} ft 6 in`)
    }
    expect(await sideways()).toBe(0)
    await save(page, 'Save the pieces')

    const { inventory } = (await file()) as { inventory: Record<string, string>[] }
    const profile = {
      what: 'reclaimed pipe',
      shape: 'round',
      outside: '2 3/8 in',
      wall: '0.154 in',
      household: 'a',
    }
    expect(inventory).toHaveLength(20)
    expect(inventory[0]).toEqual({ ...profile, length: '14 ft 1 in', count: '2' })
    expect(inventory.slice(1)).toEqual(
      Array.from({ length: 19 }, (_, index) => ({ ...profile, length: `${index + 1} ft 6 in` })),
    )
  })

  test('a build-up is kept, begun from again, renamed, and removed with a way back', async () => {
    await page.goto(`${home}/build-up/s1`)
    await trySaving(page, 'Keep this build-up')
    await expectPage(faultAt(page, 'name', 'keep')).toContainText('Needed: a name')
    await put(page, 'name', 'Bank pipe', 'keep')
    await trySaving(page, 'Keep this build-up')
    await expectPage(page.getByText('Kept as “Bank pipe”.')).toBeVisible()

    await put(page, 'buildUp.posts.depth', '4 ft')
    await page.getByRole('button', { name: 'Bank pipe', exact: true }).click()
    await expectPage(field(page, 'buildUp.posts.depth')).toHaveValue('30 in')
    await expectPage(field(page, 'buildUp.name')).toHaveValue('Bank pipe')
    await page.getByRole('button', { name: 'Put back what stood there' }).click()
    await expectPage(field(page, 'buildUp.posts.depth')).toHaveValue('4 ft')
    await save(page, 'Save the build-up')

    await visit(neighbours.b, 'Materials')
    await page.getByRole('link', { name: 'Build-ups of your own' }).click()
    await put(page, 'buildUps[0].name', 'Bank pipe, low')
    await page.getByRole('button', { name: 'Remove “Bank pipe, low”' }).click()
    await page.getByRole('button', { name: 'Put it back' }).click()
    await save(page, 'Save the build-ups')
    expect(await file()).toMatchObject({
      buildUps: [{ name: 'Bank pipe, low', household: 'b', section: { posts: { depth: '30 in' } } }],
    })
    await page.getByRole('button', { name: 'Remove “Bank pipe, low”' }).click()
    await save(page, 'Save the build-ups')
    expect(await file()).not.toHaveProperty('buildUps')
  })

  test('a post off its plan is entered with its planned place beside it', async () => {
    await page.goto(`${home}/measured/s1`)
    await addRow('measured', 'Add a measured post')
    await put(page, 'measured[0].post', '2')
    await expectPage(field(page, 'measured[0].post')).toHaveAccessibleDescription(
      /line post, planned at 6\sft\s11\s11\/16\sin; its hole is planned 2\sft\s6\sin deep/,
    )
    await put(page, 'measured[0].at', '6 ft 10 in')
    await put(page, 'measured[0].depth', '26 in')
    await put(page, 'measured[0].why', 'rock')
    expect(await sideways()).toBe(0)
    await save(page, 'Save what was measured')

    expect(await file()).toMatchObject({
      sections: [{ measured: [{ post: '2', at: '6 ft 10 in', depth: '26 in', why: 'rock' }] }],
    })
    const row = page.locator('.figure-table tr', { hasText: '2: line post' })
    await expectPage(row).toContainText('6 ft 10 in')
    await expectPage(row).toContainText('nearer the start')
    await expectPage(row).toContainText('2 ft 2 in')
  })
})

describe('what clashes', () => {
  test('is shown at its field with the numbers, refuses nothing, and goes once it is mended', async () => {
    await page.goto(`${home}/build-up/s1`)
    await put(page, 'buildUp.posts.hole', '2 in')
    await save(page, 'Save the build-up')
    const finding = findingAt('buildUp.posts.hole')
    await expectPage(finding).toContainText(
      'A hole of 2 in is narrower than its post, which is 2 3/8 in across.',
    )
    await expectPage(field(page, 'buildUp.posts.hole')).toHaveAccessibleDescription(/narrower than its post/)
    await expectPage(field(page, 'buildUp.posts.hole')).not.toHaveAttribute('aria-invalid', 'true')

    await put(page, 'buildUp.posts.hole', '10 in')
    await save(page, 'Save the build-up')
    await expectPage(finding).toHaveCount(0)
  })

  test('is led to from the list on Materials, also inside a fold', async () => {
    await page.goto(`${home}/line`)
    await unfold('Limits on height')
    await addRow('line.limits', 'Add a limit')
    await put(page, 'line.limits[0].limit', '3 ft')
    await save(page, 'Save the line')

    await visit(neighbours.b, 'Materials')
    await page.getByRole('link', { name: 'The line, limit on height 1' }).first().click()
    await expectPage(page.getByRole('heading', { level: 1, name: 'Ends and stations' })).toBeVisible()
    await expectPage(field(page, 'line.limits[0].limit')).toBeFocused()
    await expectPage(findingAt('line.limits[0].limit')).toBeVisible()
    await expectPage(findingAt('line.limits[0].limit')).toContainText('the limit is 3 ft')
  })

  test('stays with its row while rows are moved', async () => {
    await page.goto(`${home}/measured/s1`)
    await addRow('measured', 'Add a measured post')
    await put(page, 'measured[0].post', '2')
    await put(page, 'measured[0].depth', '26 in')
    await addRow('measured', 'Add a measured post')
    await put(page, 'measured[1].post', '3')
    await put(page, 'measured[1].at', '1 ft')
    await save(page, 'Save what was measured')
    await expectPage(findingAt('measured[1].at')).toContainText('Post 3 was measured at 1 ft')

    await page.getByRole('button', { name: 'Move “post 3” up' }).click()
    await expectPage(findingAt('measured[0].at')).toContainText('Post 3 was measured at 1 ft')
    await expectPage(findingAt('measured[1].at')).toHaveCount(0)
    await page.reload()
  })
})

test('putting quantities among the cost lines leads to them, and says what came of it', async () => {
  await page.goto(`${home}/build-up/s1`)
  await page.getByRole('button', { name: 'Put these among the cost lines' }).click()
  const note = page.locator('#field-materials-taken')
  await expectPage(note).toBeFocused()
  await expectPage(note).toContainText(/Put among the cost lines: [1-9][0-9]* lines added\./)
  await expectPage(field(page, 'materials')).toContainText('not priced yet')
})
