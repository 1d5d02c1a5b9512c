import { readdirSync } from 'node:fs'
import path from 'node:path'
import type { Browser, BrowserContext, Page } from '@playwright/test'
import { openLaptop } from './twoHouseholds.ts'

const folder = path.join(import.meta.dirname, '../../app/notebook/[notebookId]')

/** Every page of a notebook, as what follows its address; in place of an item or a kind stands one that the example has. */
export const examplePages: readonly string[] = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => path.basename(file) === 'page.tsx')
  .map((file) => path.dirname(file).replace('[itemId]', 's2').replace('[kind]', 'section'))
  .map((page) => (page === '.' ? '' : `/${page}`))
  .sort()

/** A page at a laptop, and the address of a copy of the example that it is let into. */
export async function atTheExample(browser: Browser, program: string): Promise<{ page: Page; home: string }> {
  const context = await openLaptop(browser)
  const home = await openExample(context, program)
  return { page: await context.newPage(), home }
}

/** Opens a copy of the example as the first household of the program at an address, and gives the address of the copy. */
export async function openExample(context: BrowserContext, program: string): Promise<string> {
  const page = await context.newPage()
  await page.goto(program)
  await page.getByRole('button', { name: /^Open the example as the first household/ }).click()
  await page.waitForURL(/\/notebook\//)
  const [home] = /^.*\/notebook\/[^/?#]+/.exec(page.url()) ?? []
  if (home === undefined) throw new Error(`The example did not open: ${page.url()}`)
  await page.close()
  return home
}
