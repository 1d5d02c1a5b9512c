import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { countPassages } from './countingPassages.ts'
import { expectPage } from './expectPage.ts'
import { typeShare } from './itemTyping.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { faultAt, field, put, save, trySaving } from './typing.ts'
import { panel, visit, visitItem } from './visiting.ts'

// Two households, each at a browser of its own: what one says apart shows to the other once it has said its own.

const { uses: _counted, ...uncounted } = shortNotebook.gates[0]
const notebook = { ...shortNotebook, gates: [{ ...uncounted, share: { together: { principle: 'use' } } }] }

let browser: Browser
let neighbours: Neighbours

beforeAll(async () => {
  browser = await openBrowser()
  neighbours = await neighboursWith(browser, notebook)
})
afterAll(async () => {
  await neighbours?.close()
  await browser?.close()
})

async function sayNeed(who: 'a' | 'b', kind: string, weight: string, words: string): Promise<void> {
  const { page, home } = neighbours[who]
  await page.goto(`${home}/needs`)
  const choice = field(page, `kinds.${kind}.weight`, 'needs')
  const group = page.getByRole('radiogroup').filter({ has: choice })
  await group.getByRole('radio', { name: weight, exact: true }).check()
  await put(page, `kinds.${kind}.words`, words, 'needs')
  await trySaving(page, 'Keep our needs')
  await expectPage(page.getByText(/Yours is kept|Both have said/).first()).toBeVisible()
}

describe('needs before prices', () => {
  test('a household that has not said its needs is asked to, on the line', async () => {
    await visit(neighbours.b, 'The line')
    const asks = panel(neighbours.b.page, 'What each of you needs')
    await expectPage(asks).toContainText('Before any price: say what your household needs of this fence.')
    await asks.getByRole('link', { name: 'Say what you need' }).click()
    await expectPage(neighbours.b.page.getByRole('heading', { level: 1 })).toHaveText(
      'What each of you needs',
    )
  })

  test('saying nothing is refused, with what would be right', async () => {
    const { page } = neighbours.b
    await trySaving(page, 'Keep our needs')
    await expectPage(faultAt(page, 'own', 'needs')).toContainText('say at least one need')
  })

  test('what one household needs is not shown before the other has said its own', async () => {
    await sayNeed('a', 'animals-in', 'must have', 'an old terrier')
    const { page, home } = neighbours.b
    await page.goto(`${home}/needs`)
    await expectPage(page.getByText('Heron House has said its needs. They are shown once')).toBeVisible()
    expect(await page.content()).not.toContain('terrier')

    await sayNeed('b', 'light', 'would like', '')
    await expectPage(page.getByText('Must have: a dog or another pet kept in (an old terrier)')).toBeVisible()
    await expectPage(page.getByText('Open: no section meets it yet.')).toHaveCount(2)
  })

  test('a section says which needs it meets, and the line shows it', async () => {
    await visitItem(neighbours.a, 'Along the bank')
    const { page } = neighbours.a
    await page.getByRole('checkbox', { name: /^a dog or another pet kept in ?, for Heron House$/ }).check()
    await save(page, 'Save this section')
    await visit(neighbours.b, 'The line')
    const needs = panel(neighbours.b.page, 'What each of you needs')
    await expectPage(needs).toContainText('Met by Section 1: Along the bank.')
    await expectPage(needs.getByText('Open: no section meets it yet.')).toHaveCount(1)
  })
})

describe('passages of a gate', () => {
  test('where nobody has counted, what is still open leads to the panel where they are counted', async () => {
    const { page } = neighbours.a
    await visit(neighbours.a, 'The line')
    await page.getByRole('link', { name: /nobody has counted its passages/ }).click()
    await expectPage(page).toHaveURL(/\/item\/g1#passages$/)
    await expectPage(panel(page, 'Passages a week')).toContainText('Nobody has counted yet.')
  })

  test('a count that is no number is refused at its field', async () => {
    const { page } = neighbours.a
    await put(page, 'a', 'often', 'passages')
    await trySaving(page, 'Keep our count')
    await expectPage(faultAt(page, 'a', 'passages')).toContainText('"often" can\'t be read as a number')
    await expectPage(field(page, 'a', 'passages')).toHaveValue('often')
  })

  test('one count alone shows to nobody else, and asks for halves', async () => {
    await countPassages(neighbours.a.page, { a: '713', b: '287' })
    const { page } = neighbours.b
    await visitItem(neighbours.b, 'Willow gate')
    await expectPage(panel(page, 'Passages a week')).toContainText('Heron House has counted.')
    await expectPage(panel(page, 'What it asks of each household')).toContainText('is halved for now, by use')
    expect(await page.content()).not.toContain('713')
  })

  test('two counts that differ stand side by side, with their distance in money', async () => {
    const { page } = neighbours.b
    await countPassages(page, { a: '500', b: '500' })
    const counts = panel(page, 'Passages a week')
    // By hand: 350.01 · 713/1000 = 249.557…; 350.01 ÷ 2 = 175.005, the odd cent to a on a full tie: 249.56 − 175.01.
    await expectPage(counts).toContainText('In money the two counts are $74.55 apart at this gate.')
    await expectPage(counts.getByRole('row', { name: /Count of Heron House/ })).toContainText('713')
  })

  test('one is settled once both take it', async () => {
    const [ofB, ofA] = [
      panel(neighbours.b.page, 'Passages a week'),
      panel(neighbours.a.page, 'Passages a week'),
    ]
    await ofB.getByRole('button', { name: 'We take the count of Heron House' }).click()
    await expectPage(ofB).toContainText('Bank Cottage takes the count of Heron House.')
    await expectPage(ofB).toContainText(
      'It waits for Heron House, which has still to take its own count too.',
    )
    await visitItem(neighbours.a, 'Willow gate')
    await ofA.getByRole('button', { name: 'Both take our count' }).click()
    await expectPage(ofA).toContainText('713 passages a week by Heron House and 287 by Bank Cottage.')
    await expectPage(ofA).toContainText('Both took the count of Heron House.')
  })

  test('counting again leaves the count that stands until both have', async () => {
    const counts = panel(neighbours.a.page, 'Passages a week')
    await counts.getByText('Count again').click()
    await countPassages(neighbours.a.page, { a: '1', b: '1' })
    await expectPage(counts).toContainText('713 passages a week by Heron House')
    await expectPage(counts).toContainText('Bank Cottage has not counted again yet')
  })
})

test('sharing the saving asks for the source of each figure, and says whom it fits', async () => {
  const { page, home } = neighbours.a
  await page.goto(`${home}/item/s1`)
  await typeShare(page, { together: { principle: 'saving', aloneA: '400.00', aloneB: '350.00' } })
  await expectPage(page.getByText('It fits only where each of you would build alone.')).toBeVisible()
  await trySaving(page, 'Save this section')
  await expectPage(faultAt(page, 'share.together.sourceB')).toContainText('where this figure comes from')
  await put(page, 'share.together.sourceA', 'an offer of 3 May')
  await put(page, 'share.together.sourceB', 'our own reckoning')
  await save(page, 'Save this section')
  await expectPage(panel(page, 'What it asks of each household')).toContainText('source: an offer of 3 May')
})
