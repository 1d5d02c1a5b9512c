import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, beforeEach, describe, expect, inject, test } from 'vitest'
import { agreeToAll, putUp, sign } from './agreeing.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { typeShare } from './itemTyping.ts'
import { shortNotebook } from './shortNotebook.ts'
import { chooseFile, hearsNothing, type Neighbours, neighboursWith, openLaptop } from './twoHouseholds.ts'
import { choose, faultAt, field, formOf, put, save, trySaving } from './typing.ts'
import { exported, goToMatter, panel, visit } from './visiting.ts'

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

describe('a value that is refused', () => {
  beforeAll(async () => {
    neighbours = await neighboursWith(browser, shortNotebook)
    return () => neighbours.close()
  })

  const section = { place: 'item/s1', button: 'Save this section' }
  const gate = { place: 'item/g1', button: 'Save this gate' }
  const line = { place: 'line', button: 'Save the line' }
  const caps = { place: 'shares', button: 'Save the caps' }
  const book = { place: 'money', button: 'Enter it' }

  test.each([
    {
      form: section,
      path: 'from',
      typed: '40',
      because: '"40" has no unit: write "40 ft", or "40 in" where inches are meant',
    },
    {
      form: section,
      path: 'to',
      typed: '-3 ft',
      because: '"-3 ft" is negative; only ground heights may be.',
    },
    { form: section, path: 'height.agreed', typed: '1,83 m', because: '"1,83 m" can\'t be read as a length' },
    {
      form: section,
      path: 'materials[0].quantity',
      typed: '1,200',
      because: '"1,200" can\'t be read as a number',
    },
    { form: section, path: 'materials[0].quantity', typed: '', because: 'Needed: a number' },
    {
      form: section,
      path: 'materials[0].unitPrice',
      typed: '5.1234567',
      because: 'with up to 6 digits after the point',
    },
    { form: section, path: 'materials[0].taxPercent', typed: '101', because: '"101" is more than 100' },
    { form: section, path: 'labour[0].hours', typed: '-2', because: '"-2" can\'t be read as a number' },
    { form: section, path: 'labour[0].rate', typed: '2e1', because: '"2e1" can\'t be read as a number' },
    { form: gate, path: 'opening', typed: 'four feet', because: '"four feet" can\'t be read as a length' },
    { form: line, path: 'line.stations[1].at', typed: '60', because: '"60" has no unit: write "60 ft"' },
    {
      form: line,
      path: 'line.stations[1].gradeA',
      typed: '+2 in',
      because: 'with a minus in front if it lies below',
    },
    { form: caps, path: 'caps.a', typed: '12.345', because: 'USD takes at most 2' },
    { form: book, path: 'amount', typed: '12.345', because: 'USD takes at most 2' },
    { form: book, path: 'amount', typed: '', because: 'Needed: an amount of money' },
    { form: book, path: 'date', typed: '', because: 'Needed: a day' },
  ])('$form.place, $path: “$typed”', async ({ form, path, typed, because }) => {
    const { page, home } = neighbours.a
    const before = await exported(neighbours.a)
    await page.goto(`${home}/${form.place}`)
    // What else was typed on the page has to stay as well.
    const others: Record<string, string> = form === book ? { amount: '30.00', note: 'two rolls' } : {}
    delete others[path]
    for (const [other, text] of Object.entries(others)) await put(page, other, text)
    await put(page, path, typed)
    await trySaving(page, form.button)

    const summary = formOf(page, form.button).locator('.summary-faults')
    await expectPage(summary.getByRole('heading')).toHaveText('Not saved: one thing to mend')
    await expectPage(summary).toBeFocused()
    await expectPage(faultAt(page, path)).toContainText(because)
    await expectPage(field(page, path)).toHaveAttribute('aria-invalid', 'true')
    await expectPage(field(page, path)).toHaveAccessibleDescription(new RegExp(escaped(because)))
    await expectPage(field(page, path)).toHaveValue(typed)
    for (const [other, text] of Object.entries(others)) await expectPage(field(page, other)).toHaveValue(text)
    await summary.getByRole('link', { name: because }).click()
    await expectPage(field(page, path)).toBeFocused()
    expect((await exported(neighbours.a)).equals(before)).toBe(true)
    await leaveUnsaved(page)
  })

  test('two percentages that do not add to 100', async () => {
    const { page, home } = neighbours.a
    const before = await exported(neighbours.a)
    await page.goto(`${home}/item/s1`)
    await typeShare(page, {
      materials: { principle: 'percent', a: '60', b: '50' },
      labour: { principle: 'equal' },
    })
    await trySaving(page, 'Save this section')

    const because = '60 and 50 add to 110; the two percentages have to add to exactly 100.'
    await expectPage(page.locator('.summary-faults')).toContainText(because)
    await expectPage(faultAt(page, 'share.materials.b')).toContainText(because)
    await expectPage(field(page, 'share.materials.a')).toHaveValue('60')
    await expectPage(field(page, 'share.materials.b')).toHaveValue('50')
    expect((await exported(neighbours.a)).equals(before)).toBe(true)
    await leaveUnsaved(page)
  })

  test('several at once are all named', async () => {
    const { page, home } = neighbours.a
    await page.goto(`${home}/item/s1`)
    await put(page, 'from', '0')
    await put(page, 'materials[0].quantity', 'sixty')
    await put(page, 'labour[0].hours', 'ten')
    await trySaving(page, 'Save this section')

    await expectPage(page.locator('.summary-faults').getByRole('heading')).toHaveText(
      'Not saved: 3 things to mend',
    )
    await expectPage(page.locator('.summary-faults').getByRole('link')).toHaveCount(3)
    await leaveUnsaved(page)
  })

  test('a notebook without the names of its households', async () => {
    const context = await openLaptop(browser)
    const page = await context.newPage()
    await page.goto(`${inject('baseUrl')}/start`)
    await put(page, 'title', 'Nameless')
    await trySaving(page, 'Start the notebook')

    await expectPage(faultAt(page, 'households.a.name')).toContainText('Your household needs a name')
    await expectPage(faultAt(page, 'households.b.name')).toContainText(
      'Your neighbours’ household needs a name',
    )
    await expectPage(field(page, 'title')).toHaveValue('Nameless')
    expect(page.url()).toBe(`${inject('baseUrl')}/start`)
    await context.close()
  })

  test('a currency that is none can’t be chosen, and is refused where a browser sends it all the same', async () => {
    const context = await openLaptop(browser)
    const page = await context.newPage()
    await page.goto(`${inject('baseUrl')}/start`)
    const codes = await valuesOf(page, 'currency')
    expect(codes).toContain('USD')
    // ISO 4217 lists XTS for testing and XXX for no currency; neither is money in use.
    expect(codes.filter((code) => ['XTS', 'XXX', ''].includes(code))).toEqual([])

    await sendInstead(page, '"USD"', '"XTS"')
    await put(page, 'title', 'Heron Bank')
    await put(page, 'households.a.name', 'Heron House')
    await put(page, 'households.b.name', 'Bank Cottage')
    await trySaving(page, 'Start the notebook')

    await expectPage(faultAt(page, 'currency')).toContainText(
      '"XTS" is not a currency that ISO 4217 lists as money in use',
    )
    await expectPage(field(page, 'title')).toHaveValue('Heron Bank')
    expect(page.url()).toBe(`${inject('baseUrl')}/start`)
    await context.close()
  })

  test('a principle that does not fit the item, where a browser sends it all the same', async () => {
    const { page, home } = neighbours.a
    const before = await exported(neighbours.a)
    await page.goto(`${home}/item/s1`)
    await sendInstead(page, '"benefit"', '"use"')
    await typeShare(page, {
      materials: { principle: 'benefit', a: '2', b: '1' },
      labour: { principle: 'equal' },
    })
    await trySaving(page, 'Save this section')

    const because = 'Only a gate can be shared by use, because only gates have counted passages'
    await expectPage(faultAt(page, 'share.materials.principle')).toContainText(because)
    await expectPage(field(page, 'share.materials.principle')).toHaveAccessibleDescription(
      new RegExp(escaped(because)),
    )
    await expectPage(field(page, 'share.materials.a')).toHaveValue('2')
    expect((await exported(neighbours.a)).equals(before)).toBe(true)
    await leaveUnsaved(page)
  })

  test('another currency, while the book has entries', async () => {
    const { page, home } = neighbours.a
    await page.goto(`${home}/parties`)
    await choose(page, 'currency', 'EUR')
    await trySaving(page, 'Save households and parties')

    await expectPage(faultAt(page, 'currency')).toContainText(
      'The book has entries in USD, so the currency stays USD.',
    )
    await expectPage(field(page, 'currency')).toHaveValue('EUR')
    await leaveUnsaved(page)
  })

  test('an entry taken back without saying why', async () => {
    const { page, home } = neighbours.a
    const before = await exported(neighbours.a)
    await page.goto(`${home}/money`)
    const row = panel(page, 'The book').locator('.book-entry').first()
    await row.locator('summary').click()
    await row.getByRole('button', { name: 'Take this entry back' }).click()

    await expectPage(row.locator('.press-answer')).toContainText('Why: needed, in a few words')
    expect((await exported(neighbours.a)).equals(before)).toBe(true)
  })
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

  test('is not removed while an entry for it counts', async () => {
    const { page, home } = neighbours.a
    const before = await exported(neighbours.a)
    await page.goto(`${home}/item/s1`)
    await page.getByRole('button', { name: 'Remove this section' }).click()
    await page.getByRole('button', { name: 'Yes: remove this section' }).click()

    await expectPage(page.locator('.summary-faults')).toContainText(
      'Money and hours has entries for this item. Take those entries back first; they stay in the book and are shown as taken back.',
    )
    expect((await exported(neighbours.a)).equals(before)).toBe(true)
  })

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
      /^Saved twice: choose what is to standBank Cottage saved this on .+ UTC, after you had opened it\./,
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

  test('an item that the other removed meanwhile is not brought back, and what was typed stays', async () => {
    const { a, b } = neighbours
    await a.page.goto(`${a.home}/item/g1`)
    await put(a.page, 'latch', 'slide bolt')
    await b.page.goto(`${b.home}/item/g1`)
    await b.page.getByRole('button', { name: 'Remove this gate' }).click()
    await b.page.getByRole('button', { name: 'Yes: remove this gate' }).click()
    await expectPage(b.page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
    await trySaving(a.page, 'Save this gate')

    await expectPage(a.page.locator('.summary-faults')).toContainText('This was removed in the meantime.')
    await expectPage(field(a.page, 'latch')).toHaveValue('slide bolt')
    expect(JSON.parse((await exported(a)).toString('utf8'))).not.toHaveProperty('gates[0]')
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

  test('a party signs once', async () => {
    const { page, home } = neighbours.a
    await hearsNothing(page)
    await page.goto(`${home}/sign`)
    const other = await page.context().newPage()
    await other.goto(`${home}/sign`)
    await sign(other, 'Petra Quillon')

    const part = await signInVain(page, 'Petra Quillon')

    await expectPage(part.locator('.summary-faults')).toContainText(
      'This party has signed this revision already.',
    )
    await page.reload()
    await expectPage(page.locator('.mark-list li', { hasText: 'Petra Quillon' })).toHaveCount(1)
  })

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

describe('a notebook file that is refused', () => {
  beforeAll(async () => {
    neighbours = await neighboursWith(browser, shortNotebook)
    return () => neighbours.close()
  })

  const [section] = shortNotebook.sections
  const withSection = (more: object) =>
    JSON.stringify({ ...shortNotebook, sections: [{ ...section, ...more }] })
  const megabytes = (count: number) =>
    JSON.stringify({ ...shortNotebook, title: 'x'.repeat(count * 1_000_000) })

  const files = [
    { what: 'no JSON', file: '{ "format": ', says: ['This is not a notebook file'] },
    {
      what: 'nothing',
      file: '',
      says: ["The file can't be read: no file was chosen, or it is empty."],
    },
    {
      what: 'another version',
      file: JSON.stringify({ ...shortNotebook, version: 2 }),
      says: ['version: The version is "2"; this program reads version 1'],
    },
    {
      what: 'another format',
      file: JSON.stringify({ ...shortNotebook, format: 'ledger' }),
      says: ['format: The format is "ledger"'],
    },
    {
      what: 'several faults',
      file: withSection({
        from: '40',
        share: { materials: { principle: 'percent', a: '60', b: '50' }, labour: { principle: 'equal' } },
      }),
      says: [
        'sections[0].from: "40" has no unit: write "40 ft"',
        'sections[0].share.materials.b: 60 and 50 add to 110',
      ],
    },
    {
      what: 'a doubled key',
      file: '{"format":"mearing-notebook","format":"mearing-notebook"}',
      says: ['format: The key "format" stands twice'],
    },
    {
      what: 'a little over 2 MB',
      file: megabytes(2),
      says: ['The file has 200', 'bytes; at most 2000000 are taken.'],
    },
    {
      what: 'far over 2 MB',
      file: megabytes(12),
      says: ['The file has 120', 'bytes; at most 2000000 are taken.'],
    },
  ]

  test.each(files)('in place of a notebook: $what', async ({ file, says }) => {
    const { page, home } = neighbours.a
    const before = await exported(neighbours.a)
    await page.goto(`${home}/record`)
    await chooseFile(page, file)
    await page.getByRole('button', { name: 'Put this file in its place' }).click()
    await page.getByRole('button', { name: 'Yes: put this file in its place' }).click()

    for (const words of says)
      await expectPage(page.locator('.press-answer[data-kind=refused]')).toContainText(words)
    expect(
      await page
        .locator('input[type=file]')
        .evaluate((input) => (input as HTMLInputElement).files?.[0]?.name),
    ).toBe('notebook.json')
    expect((await exported(neighbours.a)).equals(before)).toBe(true)
  })

  test.each(files)('to start from: $what', async ({ file, says }) => {
    const { page } = neighbours.a
    await page.goto(inject('baseUrl'))
    await chooseFile(page, file)
    await page.getByRole('button', { name: 'Start from this file' }).click()

    for (const words of says)
      await expectPage(page.locator('.press-answer[data-kind=refused]')).toContainText(words)
    expect(page.url()).toBe(`${inject('baseUrl')}/`)
  })
})

/** Leaves what is typed here unsaved, so that the next test can go elsewhere without being asked. */
async function leaveUnsaved(page: Page): Promise<void> {
  await page.unrouteAll()
  await page.evaluate(() => localStorage.clear())
  await page.reload()
}

/** Changes what the page sends with its presses, as a program that is no browser could. */
async function sendInstead(page: Page, written: string, crafted: string): Promise<void> {
  await page.route('**/*', async (route) => {
    const sent = route.request().postData() ?? ''
    await route.continue(sent.includes(written) ? { postData: sent.replaceAll(written, crafted) } : {})
  })
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

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
}
