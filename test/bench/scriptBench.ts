import type { Browser } from '@playwright/test'
import { serveBarePage } from '../screens/barePage.ts'
import { openExample } from '../screens/examplePages.ts'
import { shippedScript } from '../screens/shippedScript.ts'

type Row = { readonly what: string; readonly figure: number; readonly limit: number; readonly unit: string }

/** Script that pages ship, against a bare page of the same Next; a test holds every page to these limits. */
export async function scriptRows(browser: Browser, address: string): Promise<Row[]> {
  const served = await serveBarePage()
  const bare = await shippedScript(await browser.newContext(), served.address).finally(() => served.stop())
  const context = await browser.newContext()
  const home = await openExample(context, address)
  const pages = [
    ['the start page', address, 1.35],
    ['The line', home, 1.35],
    ['an item', `${home}/item/s2`, 1.35],
    ['Money and hours', `${home}/money`, 1.35],
    ['Sign', `${home}/sign`, 1.35],
    ['Try a change, which works shares out in the browser', `${home}/try`, 1.6],
  ] as const
  const rows: Row[] = []
  for (const [name, page, limit] of pages) {
    const what = `Script shipped against a bare page of the same Next: ${name}`
    rows.push({ what, figure: (await shippedScript(context, page)) / bare, limit, unit: 'times' })
  }
  await context.close()
  return rows
}
