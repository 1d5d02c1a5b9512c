import { gzipSync } from 'node:zlib'
import type { BrowserContext } from '@playwright/test'

/**
 * The script that a page makes a browser load until nothing more comes, in bytes as gzip packs them. What an old browser
 * alone would load is not in it.
 */
export async function shippedScript(context: BrowserContext, address: string): Promise<number> {
  const page = await context.newPage()
  const sizes = new Map<string, Promise<number>>()
  page.on('response', (response) => {
    if (response.request().resourceType() !== 'script') return
    sizes.set(
      response.url(),
      response.body().then((body) => gzipSync(body, { level: 9 }).length),
    )
  })
  const answer = await page.goto(address)
  if (!answer?.ok()) throw new Error(`${address} answers ${answer?.status()}`)
  for (let known = -1; known < sizes.size; ) {
    known = sizes.size
    await page.waitForTimeout(400)
  }
  const bytes = (await Promise.all(sizes.values())).reduce((sum, size) => sum + size, 0)
  await page.close()
  return bytes
}
