import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, beforeEach, describe, expect, inject, test } from 'vitest'
import { agreeToAll, putUp } from './agreeing.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { typeShare } from './itemTyping.ts'
import { shortNotebook } from './shortNotebook.ts'
import { hearsNothing, type Neighbours, neighboursWith, openLaptop } from './twoHouseholds.ts'
import { field, formOf, put, save, trySaving } from './typing.ts'
import { exported, goToMatter, panel, visit } from './visiting.ts'

// What comes after a refusal, and what two do at once. Every refusal by itself is met in `everyRefusal`.

let browser: Browser
let neighbours: Neighbours

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

/** A new notebook for every test of a group, so that none depends on another. */
function withNewNotebook() {
  beforeEach(async () => {
    neighbours = await neighboursWith(browser, shortNotebook)
    return () => neighbours.close()
  })
}

test('a currency that is none can’t be chosen', async () => {
  const context = await openLaptop(browser)
  const page = await context.newPage()
  await page.goto(`${inject('baseUrl')}/start`)
  const codes = await valuesOf(page, 'currency')
  expect(codes).toContain('USD')
  // ISO 4217 lists XTS for testing and XXX for no currency; neither is money in use.
  expect(codes.filter((code) => ['XTS', 'XXX', ''].includes(code))).toEqual([])
  await context.close()
})

describe('shares that can’t be worked out yet', () => {
  withNewNotebook()

  test('are saved, and the reason is in sight on every page and in the way of signing', async () => {
    const { page, home } = neighbours.a
    await page.goto(`${home}/item/s1`)
    await typeShare(page, {
      together: {
        principle: 'saving',
        aloneA: '200.00',
        aloneB: '199.00',
        sourceA: 'an offer',
        sourceB: 'own reckoning',
      },
    })
    await save(page, 'Save this section')

    const because =
      'Building together (500.00) costs 101.00 more than building alone (399.00 in all), so there is no saving to share'
    await expectPage(page.locator('.open-matters')).toContainText(because)
    for (const name of ['Materials', 'Money and hours', 'Record', 'Sign']) {
      await visit(neighbours.a, name)
      await expectPage(page.locator('.open-matters')).toContainText(because)
    }
    await page.getByRole('button', { name: 'Put revision 1 up for signing' }).click()
    await expectPage(page.locator('.press-answer[data-kind=refused]').last()).toContainText(because)
    await goToMatter(page, because)
    await expectPage(page.getByRole('heading', { level: 1, name: 'Along the bank' })).toBeVisible()
  })
})

describe('an item that the book speaks of', () => {
  withNewNotebook()

  test('is removed once the entry is taken back, and the entry stays', async () => {
    const { page, home } = neighbours.a
    await page.goto(`${home}/money`)
    const row = panel(page, 'The book').locator('.book-entry').first()
    await row.locator('summary').click()
    await row.getByLabel('Why').fill('another roll was delivered')
    await row.getByRole('button', { name: 'Take this entry back' }).click()
    await expectPage(row).toContainText('Taken back by Heron House')
    await page.goto(`${home}/item/s1`)
    await page.getByRole('button', { name: 'Remove this section' }).click()
    await page.getByRole('button', { name: 'Yes: remove this section' }).click()
    await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()

    await visit(neighbours.a, 'Money and hours')
    await expectPage(panel(page, 'The book').locator('.book-entry')).toContainText(['mesh, first roll'])
  })
})

describe('two people who save the same item at once', () => {
  withNewNotebook()

  /** b saves first; a, who had the page open already, saves after that. */
  async function saveTwice(): Promise<void> {
    const { a, b } = neighbours
    await a.page.goto(`${a.home}/item/s1`)
    await put(a.page, 'infill', 'boards')
    await put(a.page, 'notes', 'Painted green.')
    await b.page.goto(`${b.home}/item/s1`)
    await put(b.page, 'infill', 'sheep wire')
    await put(b.page, 'height.agreed', '4 ft')
    await save(b.page, 'Save this section')
    await trySaving(a.page, 'Save this section')
    await expectPage(
      a.page.getByRole('heading', { name: 'Saved twice: choose what is to stand' }),
    ).toBeVisible()
  }

  const sectionNow = async () => {
    const file = JSON.parse((await exported(neighbours.a)).toString('utf8')) as {
      sections: Record<string, unknown>[]
    }
    return file.sections[0]
  }
  const theirs = { infill: 'sheep wire', height: { agreed: '4 ft', measuredFrom: 'higher' } }
  const mine = { infill: 'boards', notes: 'Painted green.' }

  test('the second is shown what both changed and who saved the other; nothing is overwritten', async () => {
    await saveTwice()

    const { page } = neighbours.a
    const conflict = page.locator('.summary-conflict')
    await expectPage(conflict).toContainText(
      /^Saved twice: choose what is to standBank Cottage saved this on .+ world time, after you had opened it\./,
    )
    await expectPage(conflict).toBeFocused()
    await expectPage(conflict.getByRole('group', { name: 'Infill' }).locator('label')).toHaveText([
      'Theirs sheep wire',
      'Yours boards',
    ])
    await expectPage(conflict.locator('.conflict-row')).toHaveCount(1)
    await expectPage(conflict).toContainText('Only they changed, and taken over: Height, agreed.')
    await expectPage(field(page, 'infill')).toHaveValue('boards')
    expect(await sectionNow()).toMatchObject(theirs)
  })

  test('the second keeps what the other saved', async () => {
    await saveTwice()
    const { page } = neighbours.a
    await page.getByRole('button', { name: 'Keep what they saved' }).click()

    await expectPage(field(page, 'infill')).toHaveValue('sheep wire')
    await expectPage(field(page, 'notes')).toHaveValue('')
    await expectPage(page.locator('.summary-conflict')).toHaveCount(0)
    expect(await sectionNow()).toMatchObject(theirs)
    await put(page, 'notes', 'Sheep wire it is.')
    await save(page, 'Save this section')
    expect(await sectionNow()).toMatchObject({ ...theirs, notes: 'Sheep wire it is.' })
  })

  test('the second chooses its own where both changed, and what only the other changed stands', async () => {
    await saveTwice()
    const { page } = neighbours.a
    await page.getByRole('button', { name: 'Save as chosen' }).click()
    await expectPage(page.locator('.summary-conflict .field-error')).toHaveText(
      'To mend: Choose one of the two.',
    )
    await expectPage(page.getByRole('radio', { name: 'Theirs sheep wire' })).toBeFocused()
    expect(await sectionNow()).toMatchObject(theirs)
    await page.getByRole('radio', { name: 'Yours boards' }).check()
    await page.getByRole('button', { name: 'Save as chosen' }).click()

    await expectPage(formOf(page, 'Save this section').locator('.save-standing')).toHaveText('Saved.')
    expect(await sectionNow()).toMatchObject({ ...mine, height: theirs.height })
    await page.goto(`${neighbours.a.home}/changes`)
    await expectPage(page.locator('.history-entry').nth(0)).toContainText(
      'Infill: sheep wire before, boards now',
    )
    await expectPage(page.locator('.history-entry').nth(1)).toContainText(
      'Infill: mesh before, sheep wire now',
    )
  })

  test('where each changed something else both changes stand, and the second is told', async () => {
    const { a, b } = neighbours
    await a.page.goto(`${a.home}/item/s1`)
    await put(a.page, 'notes', 'Painted green.')
    await b.page.goto(`${b.home}/item/s1`)
    await put(b.page, 'height.agreed', '4 ft')
    await save(b.page, 'Save this section')
    await trySaving(a.page, 'Save this section')

    await expectPage(formOf(a.page, 'Save this section').locator('.save-standing')).toHaveText(
      'Saved, with what Bank Cottage had changed meanwhile: Height, agreed.',
    )
    await expectPage(field(a.page, 'height.agreed')).toHaveValue('4 ft')
    expect(await sectionNow()).toMatchObject({ notes: mine.notes, height: theirs.height })
  })

  test('nobody agrees while something on the page is typed and not saved', async () => {
    const { a } = neighbours
    await a.page.goto(`${a.home}/item/s1`)
    await put(a.page, 'notes', 'Not saved yet.')
    const box = panel(a.page, 'Where this stands')
    await box.getByRole('button', { name: 'Agree to this as it stands' }).click()
    await expectPage(box.locator('.press-answer')).toContainText(
      'something on this page is typed and not saved',
    )
    await expectPage(field(a.page, 'notes')).toHaveValue('Not saved yet.')
    await save(a.page, 'Save this section')
    await box.getByRole('button', { name: 'Agree to this as it stands' }).click()
    await expectPage(box.getByRole('button', { name: 'Take your mark off' })).toBeVisible()
  })

  test('nobody agrees to what was changed since the page was opened', async () => {
    const { a, b } = neighbours
    await hearsNothing(a.page)
    await a.page.goto(`${a.home}/item/s1`)
    await b.page.goto(`${b.home}/item/s1`)
    await put(b.page, 'infill', 'sheep wire')
    await save(b.page, 'Save this section')
    await a.page.getByRole('button', { name: 'Agree to this as it stands' }).click()

    await expectPage(a.page.locator('.press-answer[data-kind=refused]').first()).toContainText(
      'This item was changed since you opened the page.',
    )
    await a.page.reload()
    await expectPage(a.page.getByText('has not marked it yet')).toHaveCount(2)
  })
})

describe('a connection that is lost', () => {
  withNewNotebook()

  test('a press that did not arrive says so, and can be pressed again', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/item/s1`)
    await page.context().setOffline(true)
    await page.getByRole('button', { name: 'Agree to this as it stands' }).click()

    await expectPage(page.locator('.press-answer[data-kind=refused]').first()).toHaveText(
      'Not done: the connection was lost. Try again.',
    )
    await page.context().setOffline(false)
    await page.getByRole('button', { name: 'Agree to this as it stands' }).click()
    await expectPage(page.getByRole('button', { name: 'Take your mark off' })).toBeVisible()
  })
})

describe('a signature that is refused', () => {
  withNewNotebook()

  beforeEach(async () => {
    await agreeToAll(neighbours.a)
    await agreeToAll(neighbours.b)
    await putUp(neighbours.a, 1)
  })

  /** Signs on a page that was opened before something happened elsewhere, and is refused. */
  async function signInVain(page: Page, party: string) {
    const part = panel(page, `${party} signs`)
    await part.getByLabel('Type your full name').fill(party)
    await part.getByRole('checkbox').check()
    await part.getByRole('button', { name: `Sign as ${party}` }).click()
    await expectPage(part.locator('.summary-faults')).toBeVisible()
    return part
  }

  test('nobody signs a revision in whose place another stands', async () => {
    const { a, b } = neighbours
    await hearsNothing(b.page)
    await b.page.goto(`${b.home}/sign`)
    await a.page.goto(`${a.home}/item/s1`)
    await put(a.page, 'infill', 'boards')
    await save(a.page, 'Save this section')
    await agreeToAll(a)
    const other = await b.page.context().newPage()
    await agreeToAll({ page: await opened(other, b.home), home: b.home })
    await putUp(a, 2)

    const part = await signInVain(b.page, 'Emrys Vant')

    await expectPage(part.locator('.summary-faults')).toContainText(
      'A newer revision has been put up for signing in the meantime, so nothing was signed. Load the page again and read the new one.',
    )
    await expectPage(part.getByLabel('Type your full name')).toHaveValue('Emrys Vant')
    await leaveUnsaved(b.page)
    await b.page.goto(`${b.home}/record`)
    await expectPage(panel(b.page, 'Revision 1')).toContainText(
      '0 signed, 2 not signed. A newer revision stands in its place.',
    )
    await expectPage(panel(b.page, 'Revision 2')).toContainText('0 signed, 2 not signed.')
  })
})

/** Leaves what is typed here unsaved, so that the next test can go elsewhere without being asked. */
async function leaveUnsaved(page: Page): Promise<void> {
  await page.unrouteAll()
  await page.evaluate(() => localStorage.clear())
  await page.reload()
}

/** All that can be chosen in a list. */
function valuesOf(page: Page, path: string): Promise<string[]> {
  const options = field(page, path).locator('option')
  return options.evaluateAll((all) => all.map((option) => (option as HTMLOptionElement).value))
}

async function opened(page: Page, address: string): Promise<Page> {
  await page.goto(address)
  return page
}
