import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { field, put, save } from './typing.ts'

let browser: Browser
let neighbours: Neighbours

beforeAll(async () => {
  browser = await openBrowser()
  neighbours = await neighboursWith(browser, shortNotebook)
})

afterAll(async () => {
  await neighbours?.close()
  await browser?.close()
})

const live = (household: 'a' | 'b') => neighbours[household].page.locator('.stay-current')

test('what the other household saves comes up on an open page by itself, and the page says so', async () => {
  const { a, b } = neighbours
  await a.page.goto(`${a.home}/item/s1`)
  await b.page.goto(`${b.home}/item/s1`)
  await put(b.page, 'infill', 'woven strip')
  await save(b.page, 'Save this section')
  await expectPage(field(a.page, 'infill')).toHaveValue('woven strip')
  await expectPage(live('a')).toContainText('Bank Cottage changed something just now.')
})

test('while both have one page open each is told, and no longer when one has gone on', async () => {
  const { a, b } = neighbours
  await a.page.goto(`${a.home}/item/g1`)
  await b.page.goto(`${b.home}/item/g1`)
  await expectPage(live('a')).toContainText('Bank Cottage has this page open, too.')
  await expectPage(live('b')).toContainText('Heron House has this page open, too.')
  await b.page.goto(`${b.home}/terms`)
  await expectPage(live('a')).not.toContainText('has this page open')
})

test('a page that is being filled in is left alone until its household asks for the change', async () => {
  const { a, b } = neighbours
  await a.page.goto(`${a.home}/item/s1`)
  await put(a.page, 'notes', 'half a sentence')
  await b.page.goto(`${b.home}/item/s1`)
  await put(b.page, 'drainage', 'toward the willow')
  await save(b.page, 'Save this section')
  await expectPage(live('a')).toContainText('The page is left as it is, since you are typing.')
  await expectPage(field(a.page, 'drainage')).toHaveValue('')
  await a.page.getByRole('button', { name: 'Show it now' }).click()
  await expectPage(live('a')).not.toContainText('left as it is')
  await expectPage(field(a.page, 'notes')).toHaveValue('half a sentence')
})
