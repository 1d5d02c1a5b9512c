import type { ReactNode } from 'react'
import { beforeAll, describe, expect, test, vi } from 'vitest'
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
async function shown(name: string): Promise<string> {
  browseAs(world(), 'a')
  const page = addresses.get(`app/notebook/[notebookId]/${name}/page.tsx#default`) as AnyFunction
  const end = await outcomeOf(() => page({ params: Promise.resolve({ notebookId: world().notebook.id }) }))
  return shownMarkup((end as { answer: ReactNode }).answer)
}

/** The figures of a page: each with its caption, its drawings, and what they are called for whoever can't see them. */
function figuresIn(html: string) {
  return html
    .split('<figure class="figure-drawn">')
    .slice(1)
    .map((rest) => rest.split('</figure>')[0] ?? '')
    .map((figure) => ({
      caption: /<figcaption>(.*?)<\/figcaption>/.exec(figure)?.[1] ?? '',
      drawings: figure.split('<svg').slice(1),
      labels: [...figure.matchAll(/role="img" aria-label="([^"]*)"/g)].map((match) => match[1] ?? ''),
    }))
}

describe.each([
  ['shares', 'Cost by item: planned, and spent so far', 'What each item asks for'],
  ['books', 'Spent over time, against what was planned', 'Spent up to the end of each day'],
  ['work', 'Hours by household', 'Hours of both households'],
])('the page %s', (page, caption, table) => {
  test('shows its figure with both patterns, in words too, and a table of the same', async () => {
    const html = await shown(page)
    const [figure, ...others] = figuresIn(html)
    expect(others).toEqual([])
    expect(figure?.caption).toBe(caption)
    expect(figure?.drawings).toHaveLength(2)
    for (const drawing of figure?.drawings ?? []) {
      const filled = [...drawing.matchAll(/fill="url\(#([^)]*)\)"/g)].map((match) => match[1] ?? '')
      const patterns = [...drawing.matchAll(/<pattern id="([^"]*)"/g)].map((match) => match[1] ?? '')
      expect(patterns).toHaveLength(2)
      expect(new Set(filled)).toEqual(new Set(patterns))
      expect(drawing).not.toContain('NaN')
    }
    expect(figure?.labels).toHaveLength(2)
    for (const label of figure?.labels ?? []) expect(label).toMatch(/no\. 12.*no\. 14/)
    expect(html).toContain(table)
  })

  test('says no sum in its figure that does not stand in its table', async () => {
    const html = await shown(page)
    const [figure] = figuresIn(html)
    const texts = [...(figure?.drawings[1] ?? '').matchAll(/<text[^>]*fill="var\(--ink\)"[^>]*>([^<]*)</g)]
    const sums = texts.flatMap(([, text = '']) => /\$[\d,]+\.\d\d|[\d.]+(?= h )/.exec(text) ?? [])
    expect(sums.length).toBeGreaterThan(2)
    const tables = html.replace(/<figure[\s\S]*?<\/figure>/g, '')
    // Hours stand in a table with two digits after the point.
    for (const sum of sums) expect(tables).toContain(sum.startsWith('$') ? sum : Number(sum).toFixed(2))
  })
})
