import type { ReactNode } from 'react'
import { beforeEach, expect, test, vi } from 'vitest'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { findingField } from '../../app/notebook/server/findingField.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import type { Finding } from '../../lib/core/takeoff/finding.ts'
import { takeOff } from '../../lib/core/takeoff/takeOff.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { type NotebookDocument, readDocument } from '../../lib/forms/readNotebook.ts'
import { findingText } from '../../lib/words/takeoff/findingText.ts'
import { documentWith, halves } from '../core/madeNotebook.ts'
import { gateAt, pipe, steelBuildUp, steelPosts } from '../core/takeoff/madeFence.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { formWithFile } from './givenForms.ts'
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
type Data = Record<string, unknown>

const posts = (more: Data) => ({ ...steelBuildUp, posts: { ...steelPosts, ...more } })
function section(id: string, from: string, to: string, more: Data = {}): Data {
  const height = { agreed: '6 ft', measuredFrom: 'higher' }
  return { id, from, to, height, buildUp: steelBuildUp, share: halves, ...more }
}

/** A fence in which nearly everything is wrong that can be typed, by what the issue names and more. */
const wrong: NotebookDocument = documentWith({
  line: {
    stations: [
      { at: '0 ft', gradeA: '0 in', gradeB: '0 in' },
      { at: '70 ft', angle: { degrees: '20', toward: 'a' } },
      { at: '170 ft', gradeA: '12 ft', gradeB: '12 ft', angle: { degrees: '190', toward: 'a' } },
      { at: '200 ft' },
    ],
    limits: [
      { limit: '5 ft', saidBy: 'the permit counter' },
      { limit: '8 ft', from: '40 ft', to: '20 ft' },
      { limit: '' },
    ],
    site: {
      wind: { speed: '115', unit: 'mph' },
      soil: { lateral: '150' },
      frost: { depth: '60 in', saidBy: 'the permit counter' },
    },
  },
  sections: [
    section('s1', '0 ft', '24 ft', {
      buildUp: posts({ hole: '2 in', gravel: '40 in', wall: '2 in', deduction: '9 in', stock: '3 ft' }),
      measured: [
        { post: '2', at: '30 ft', why: 'rock' },
        { post: '3', depth: '30 in' },
        { post: '3', depth: '32 in' },
        { post: '40', at: '1 ft' },
      ],
    }),
    section('s2', '20 ft', '40 ft', { buildUp: posts({ spacing: '0 ft' }) }),
    section('s3', '60 ft', '50 ft'),
    section('s4', '90 ft', '230 ft', {
      buildUp: {
        ...posts({ endPosts: undefined }),
        endPosts: { what: 'stout post', outside: '4 in', hole: '3 in', brace: { span: '90 ft' } },
        rails: { ...pipe, count: '2', stock: '6 ft', joints: 'posts' },
        infill: [
          { kind: 'panel', what: 'panel', width: '0 ft' },
          { kind: 'roll', what: 'mesh', roll: '10 ft', lap: '10 ft', ground: '9 ft' },
          { kind: 'strip', what: 'strip', opening: '2 in', width: '4 in', coilWidth: '3 in', coil: '100 ft' },
          { kind: 'board', what: 'boards', width: '6 in', gap: '1 in' },
        ],
        finishes: [{ what: 'paint', coverage: '', coats: '2' }],
        lines: [{ what: 'caps', basis: 'post', pack: '0' }],
      },
    }),
    section('s5', '44 ft', '44 1/2 ft'),
    section('s6', '50 ft', '60 ft', { height: { agreed: '' } }),
    section('s7', '60 ft', '66 ft', { height: { agreed: '1 in' }, buildUp: posts({ depth: '', hole: '' }) }),
  ],
  gates: [
    gateAt('70 ft', '4 ft', { id: 'g1' }),
    gateAt('72 ft', '4 ft', { id: 'g2', buildUp: { posts: { outside: '4 in', hole: '3 in' } } }),
    gateAt('199 ft', '6 ft', {
      id: 'g3',
      opens: 'toward no. 12',
      buildUp: {
        clearances: { hinge: '40 in', latch: '40 in' },
        header: { clear: '2 ft' },
        leafHeight: '6 ft',
      },
    }),
    gateAt('', '4 ft', { id: 'g4', buildUp: { leafHeight: '0 ft' } }),
    gateAt('50 ft', '2 ft', { id: 'g5' }),
  ],
  inventory: [
    { what: 'pipe', outside: '2 3/8 in', length: '0 ft' },
    { what: 'pipe', outside: '2 3/8 in' },
  ],
})

function notebook() {
  const read = readDocument(wrong)
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.value.notebook
}

const pages: Readonly<Record<string, string>> = {
  line: 'line',
  pieces: 'pieces',
  item: 'item/[itemId]',
  'build-up': 'build-up/[itemId]',
  measured: 'measured/[itemId]',
}

/** A page as a household is sent it, by its address in the notebook. */
async function pageAt(address: string): Promise<string> {
  const { id } = world().notebook
  const [name = '', itemId = ''] = address.slice(`/notebook/${id}/`.length).split('/')
  const page = (await everyAddress()).get(`app/notebook/[notebookId]/${pages[name]}/page.tsx#default`)
  if (page === undefined) throw new Error(`no page at ${address}`)
  const end = await outcomeOf(() =>
    (page as AnyFunction)({ params: Promise.resolve({ notebookId: id, itemId }) }),
  )
  if (end.kind !== 'answer') throw new Error(`${address}: ${end.kind}`)
  return shownMarkup(end.answer as ReactNode)
    .replaceAll('&quot;', '"')
    .replaceAll('&#x27;', "'")
    .replaceAll('&amp;', '&')
}

beforeEach(async () => {
  browseAs(world(), 'a')
  await outcomeOf(() => replaceByFile(world().notebook.id, {}, formWithFile(documentText(wrong))))
})

test('every finding is shown at the field that it names, on the page where that is typed', async () => {
  const { id } = world().notebook
  const { findings } = takeOff(notebook())
  const kinds = new Set(findings.map(({ kind }) => kind))
  // The cases that were asked for, and enough of the others that the test can't pass on nothing.
  expect([...kinds]).toEqual(
    expect.arrayContaining([
      'sections-overlap',
      'gate-past-the-end',
      'gates-overlap',
      'gate-partly-outside',
      'half-said',
      'measured-out-of-order',
      'hole-narrower',
      'rail-longer-than-stock',
      'zero',
      'missing',
      'over-limit',
    ] satisfies Finding['kind'][]),
  )
  expect(kinds.size).toBeGreaterThan(24)

  const shown = new Map<string, string>()
  const unseen: string[] = []
  for (const finding of findings) {
    const { page, href } = findingField(id, notebook(), finding)
    const html = shown.get(page) ?? (await pageAt(page))
    shown.set(page, html)
    const field = href.slice(page.length + 1)
    const note = new RegExp(`id="${field}-finding"[^>]*>(.*?)</p>`).exec(html)?.[1] ?? ''
    const there = html.includes(`id="${field}"`) && note.includes(findingText(notebook(), finding))
    if (!there) unseen.push(`${finding.path} ${finding.kind}: ${href}`)
  }
  expect(unseen).toEqual([])
})

test('the list on Materials leads to each field', async () => {
  const { id } = world().notebook
  const page = (await everyAddress()).get('app/notebook/[notebookId]/materials/page.tsx#default')
  const end = await outcomeOf(() => (page as AnyFunction)({ params: Promise.resolve({ notebookId: id }) }))
  const html = shownMarkup((end as { answer: ReactNode }).answer)
  for (const finding of takeOff(notebook()).findings) {
    expect(html).toContain(`href="${findingField(id, notebook(), finding).href}"`)
  }
})

test('none of it refuses a save, or keeps the shares from being worked out', () => {
  expect(takeOff(notebook()).findings.length).toBeGreaterThan(30)
  expect(statementOf(notebook()).ok).toBe(true)
})
