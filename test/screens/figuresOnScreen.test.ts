import type { Browser, BrowserContext, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { covers, type Place } from './places.ts'
import { shortNotebook } from './shortNotebook.ts'
import { chooseFile, homeOf, keepPrivateLink } from './twoHouseholds.ts'
import { wrongWith } from './wrongWith.ts'

const names = [
  'Along the old orchard wall to the second iron gatepost beside the cistern',
  'Behind the drying yard',
  'From the leaning hawthorn down to the culvert under the farm track, lower part',
]
const [section] = shortNotebook.sections
const spent = (household: string, amount: string, date: string, what: string) => ({
  household,
  kind: 'cash',
  amount,
  date,
  for: what,
})

/** Two dozen sections with long names, of a household with a long name, and money spent over some months. */
const longNotebook = {
  ...shortNotebook,
  households: {
    ...shortNotebook.households,
    a: { ...shortNotebook.households.a, name: 'The household of Heron House and its gardens' },
  },
  line: { ...shortNotebook.line, stations: [{ at: '0 ft' }, { at: '480 ft' }] },
  sections: Array.from({ length: 24 }, (_, at) => ({
    ...section,
    id: `s${at + 1}`,
    name: `${names[at % names.length]}, ${at + 1}`,
    from: `${at * 20} ft`,
    to: `${at * 20 + 20} ft`,
    materials: [{ ...section.materials[0], unitPrice: `${((at * 7) % 11) + 1}.25` }],
  })),
  gates: [],
  contributions: [
    spent('a', '1200.00', '2027-03-04', 's1'),
    spent('b', '640.50', '2027-04-20', 's2'),
    spent('b', '350.25', '2027-06-01', 's24'),
  ],
  arrangements: {
    instalments: { from: 'b', total: '900.00', parts: [{ on: '2027-05-10', amount: '900.00' }] },
  },
}

let browser: Browser
let context: BrowserContext
let page: Page
let home: string

beforeAll(async () => {
  browser = await openBrowser()
  context = await browser.newContext({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' })
  context.setDefaultTimeout(15_000)
  page = await context.newPage()
  await page.goto(inject('baseUrl'))
  await chooseFile(page, JSON.stringify(longNotebook))
  await page.getByRole('button', { name: 'Start from this file' }).click()
  await keepPrivateLink(page)
  home = homeOf(page)
})
afterAll(async () => {
  await context?.close()
  await browser?.close()
})

type Label = Place & { readonly text: string; readonly size: number }

/** The figure as it is drawn for this width. */
const drawn = () => page.locator('.figure-drawn svg:visible').first()

/** Every text of the figure, where the browser has put it, and how high its letters are in CSS pixels. */
function labels(): Promise<Label[]> {
  return drawn()
    .locator('text')
    .evaluateAll((all) =>
      all.map((one) => {
        const { left, top, right, bottom } = one.getBoundingClientRect()
        const scale = (one as SVGTextElement).getScreenCTM()?.a ?? 0
        const size = Number(one.getAttribute('font-size')) * scale
        return { left, top, right, bottom, text: one.textContent ?? '', size }
      }),
    )
}

/** What can't be read: too small, on another text, or over the edge of the figure. */
async function unreadable(): Promise<string[]> {
  const [texts, frame] = [await labels(), await drawn().boundingBox()]
  const [left, right] = [(frame?.x ?? 0) - 1, (frame?.x ?? 0) + (frame?.width ?? 0) + 1]
  return texts.flatMap((one, at) => [
    ...(one.size < 12 ? [`${one.text}: ${one.size} px`] : []),
    ...(one.left < left || one.right > right ? [`${one.text}: over the edge`] : []),
    ...texts.slice(at + 1).flatMap((other) => (covers(one, other) ? [`${one.text} on ${other.text}`] : [])),
  ])
}

const pages = [
  ['cost by item', 'shares'],
  ['what was spent, day by day', 'books'],
  ['hours by household', 'work'],
] as const
const widths = [390, 820, 1280]

describe.each(pages)('the figure of %s', (_, place) => {
  test('can be read on a phone, a tablet and a laptop, and on paper', async () => {
    await page.emulateMedia({ media: 'screen' })
    await page.goto(`${home}/${place}`)
    for (const width of widths) {
      await page.setViewportSize({ width, height: 900 })
      await expectPage(drawn()).toBeVisible()
      expect((await labels()).length).toBeGreaterThan(5)
      expect(await unreadable()).toEqual([])
    }
    await page.setViewportSize({ width: 673, height: 980 })
    await page.emulateMedia({ media: 'print' })
    expect(await unreadable()).toEqual([])
    await page.emulateMedia({ media: 'screen' })
  })

  test('has axes in whole units of money, and names that are told apart', async () => {
    await page.setViewportSize({ width: 1280, height: 900 })
    const texts = (await labels()).map(({ text }) => text)
    const axis = texts.filter((text) => /^\$[\d,.]+$/.test(text))
    expect(axis.filter((text) => text.includes('.'))).toEqual([])
    expect(place === 'work' ? texts.includes('0 h') : axis.includes('$0')).toBe(true)
    expect(texts.join(' ')).toContain('The household of Heron House and its gardens')
    expect(texts.filter((text) => text.includes('…'))).toEqual([])
  })

  test('tells the households apart by pattern, also in colours that were chosen for everything', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ forcedColors: 'active', colorScheme })
      const inks = await drawn().evaluate((figure) => {
        const ink = (kind: string) => {
          const shape = figure.querySelector(`.${kind}`)
          return shape && getComputedStyle(shape).fill
        }
        return {
          a: ink('pattern-a-line'),
          onA: ink('pattern-a-ground'),
          b: ink('pattern-b-dot'),
          onB: ink('pattern-b-ground'),
          letters: getComputedStyle(figure.querySelector('text') as Element).fill,
        }
      })
      expect(inks.a).toBe(inks.letters)
      expect(inks.b).toBe(inks.letters)
      expect(inks.onA).toBe(inks.onB)
      expect(inks.onA).not.toBe(inks.a)
    }
    await page.emulateMedia({ forcedColors: 'none', colorScheme: 'light' })
  })

  test('has nothing wrong, nor has the table beside it, on a phone and a laptop', async () => {
    for (const width of [390, 1280]) {
      await page.setViewportSize({ width, height: 900 })
      expect(await wrongWith(page, '.panel:has(.figure-drawn)')).toEqual([])
    }
  })
})
