import { existsSync } from 'node:fs'
import { type Browser, chromium } from '@playwright/test'

const chromiumFile = '/usr/bin/chromium'

/**
 * Opens Debian's Chromium, with a new profile, asking nothing of the network by itself. Close it in `afterAll`.
 *
 * @param switches more than what every test starts it with
 * @throws Error where it is not installed
 */
export async function openBrowser(switches: readonly string[] = []): Promise<Browser> {
  if (!existsSync(chromiumFile)) {
    throw new Error(
      `The browser tests need Debian's Chromium at ${chromiumFile}, which is missing. Install it: apt-get install chromium`,
    )
  }
  return chromium.launch({
    executablePath: chromiumFile,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      ...switches,
    ],
  })
}
