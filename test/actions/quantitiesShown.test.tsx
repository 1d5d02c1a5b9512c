import type { ReactNode } from 'react'
import { beforeAll, expect, test, vi } from 'vitest'
import { shownMarkup } from '../shownMarkup.ts'
import { outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()

let addresses: Awaited<ReturnType<typeof everyAddress>>
beforeAll(async () => {
  addresses = await everyAddress()
})

/** A page of the example as the first household is sent it. */
async function shown(name: 'materials' | 'cut-plan'): Promise<string> {
  browseAs(world(), 'a')
  const page = addresses.get(`app/notebook/[notebookId]/${name}/page.tsx#default`) as AnyFunction
  const end = await outcomeOf(() => page({ params: Promise.resolve({ notebookId: world().notebook.id }) }))
  return shownMarkup((end as { answer: ReactNode }).answer)
}

test('the quantities of the whole fence stand item by item, each under its name', async () => {
  const html = await shown('materials')
  const places = ['Lane to the gardens', 'Along the gardens', 'Between the gardens', 'Compost gate'].map(
    (name) => html.indexOf(`Quantities of ${name}`),
  )
  expect(places.every((place) => place > 0)).toBe(true)
  expect([...places].sort((one, other) => one - other)).toEqual(places)
})

test('weights are told no finer than they are known, and what is counted is counted', async () => {
  const html = await shown('materials')
  expect(html).toMatch(/[0-9] bags/)
  expect(html).not.toMatch(/[2-9] (bag|coil|box|roll)\b/)
  expect(html).not.toMatch(/[0-9]{3}\.[0-9]+ lb/)
})

test('what a cut plan leaves over is told to a tenth of a percent, and its stock begins as a heading does', async () => {
  const html = await shown('cut-plan')
  expect(html).toMatch(/saw cuts counted: [0-9]+(\.[0-9])? percent/)
  expect(html).not.toMatch(/[0-9]\.[0-9]{2,} percent/)
  expect(html).toContain('Pipe for the frame, 1.66 in round')
})
