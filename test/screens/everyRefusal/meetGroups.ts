import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, describe, test } from 'vitest'
import { closeDatabase } from '../../../lib/store/database.ts'
import { openBrowser } from '../browser.ts'
import { type Neighbours, openLaptop } from '../twoHouseholds.ts'
import { meetRefusal } from './meetRefusal.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'
import { seatedByTheStore } from './seatedByTheStore.ts'
import { openStore } from './storeBeside.ts'

/** Registers a test for every row of these groups; each group has one notebook, for all of its rows. */
export function meetGroups(groups: readonly RefusalGroup[]): void {
  let browser: Browser
  beforeAll(async () => {
    openStore()
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser?.close()
    await closeDatabase()
    delete process.env.MEARING_DATA
  })

  // Not by `each`, which cuts the names short.
  for (const { about, notebook, alone, ready, rows } of groups) {
    describe(about, () => {
      let neighbours: Neighbours

      beforeAll(async () => {
        neighbours =
          notebook === undefined ? await strangers(browser) : await seatedByTheStore(browser, notebook, alone)
        await ready?.(neighbours)
        return () => neighbours.close()
      })

      for (const row of rows) test(row.what, () => meetAt(neighbours, row))
    })
  }
}

/** Meets a row at a page of its own, so that one that fails leaves nothing behind for the next. */
async function meetAt(neighbours: Neighbours, row: RefusalRow): Promise<void> {
  const page = await neighbours[row.by ?? 'a'].page.context().newPage()
  try {
    await meetRefusal(row, neighbours, page)
  } finally {
    await page.close()
  }
}

/** Two browsers that are in no notebook. */
async function strangers(browser: Browser): Promise<Neighbours> {
  const [one, other] = [await openLaptop(browser), await openLaptop(browser)]
  return {
    a: { page: await one.newPage(), home: '' },
    b: { page: await other.newPage(), home: '' },
    close: async () => {
      await one.close()
      await other.close()
    },
  }
}
