import type { Page } from '@playwright/test'
import { expectPage } from './expectPage.ts'
import { formOf, put } from './typing.ts'

/** Counts the passages of the gate whose page is open, for the household at this browser. */
export async function countPassages(
  page: Page,
  count: { readonly a: string; readonly b: string },
): Promise<void> {
  await put(page, 'a', count.a, 'passages')
  await put(page, 'b', count.b, 'passages')
  const form = formOf(page, 'Keep our count')
  await form.getByRole('button', { name: 'Keep our count', exact: true }).click()
  // What was kept is read afresh: the panel then says so, or shows what came of it.
  await expectPage(
    page.getByText(/Your count is kept|Both counted the same|The two counts differ/),
  ).toBeVisible()
}
