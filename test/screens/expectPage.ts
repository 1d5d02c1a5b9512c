import { expect } from '@playwright/test'

/** Playwright's expectations of what stands on a page. They wait longer than by themselves: a test machine may be busy. */
export const expectPage = expect.configure({ timeout: 15_000 })
