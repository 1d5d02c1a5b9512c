import { text } from 'node:stream/consumers'
import type { ReactNode } from 'react'
import { prerenderToNodeStream } from 'react-dom/static'
import { describe, expect, test, vi } from 'vitest'
import { addNotebookItem, saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { sayNeeds } from '../../app/notebook/server/needsActions.ts'
import { countThePassages, takeCount } from '../../app/notebook/server/passageActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { plainBlanks } from '../shownMarkup.ts'
import { everyTable } from './everyTable.ts'
import { countsApartAt, needsForm, takeForm } from './givenCounts.ts'
import { aNewSection, formWithFile, openedPart } from './givenForms.ts'
import { faultsOf, outcomeOf, refusalOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()
const id = () => world().notebook.id

type Gate = Record<string, unknown> & { id: string; uses?: unknown; passages?: { takes?: unknown } }

async function gate(gateId = 'g1'): Promise<Gate> {
  const { gates } = (await documentOf(id())) as { gates: Gate[] }
  const found = gates.find((one) => one.id === gateId)
  if (found === undefined) throw new Error(`no gate ${gateId}`)
  return found
}

const say = (household: Household, words: string) => {
  browseAs(world(), household)
  return outcomeOf(() => sayNeeds(id(), 'new', needsForm(words)))
}
const count = (household: Household, a: string, b: string, gateId = 'g1') => {
  browseAs(world(), household)
  return outcomeOf(() => countThePassages(id(), gateId, 'new', { a, b }))
}
const take = async (household: Household, whose: string, gateId = 'g1') => {
  browseAs(world(), household)
  const form = await takeForm(id(), whose, gateId)
  return outcomeOf(() => takeCount(id(), {}, form))
}
const saved = { kind: 'answer', answer: { saved: true } }

const pages = 'app/notebook/[notebookId]/'

/** A page, or a file whose bytes can be searched, as a household gets it; nothing where it is not there for it. */
async function shownTo(household: Household, file: string): Promise<string> {
  browseAs(world(), household)
  const [name, answer] = [...(await everyAddress())].find(([one]) => one.startsWith(`${pages}${file}#`)) ?? []
  if (name === undefined) throw new Error(`no address ${file}`)
  const itemId = file.startsWith('basic-fence') || file.startsWith('measured') ? 's1' : 'g1'
  const params = Promise.resolve({ notebookId: id(), itemId, kind: 'gate' })
  const props = { params, searchParams: Promise.resolve({}) }
  const request = new Request('http://localhost:3000/notebook/x')
  const ask = answer as AnyFunction
  const end = await outcomeOf(() => (name.endsWith('#default') ? ask(props) : ask(request, props)))
  if (end.kind !== 'answer') return ''
  if (end.answer instanceof Response) return end.answer.text()
  const { prelude } = await prerenderToNodeStream(end.answer as ReactNode)
  // Marks between two texts of one sentence are no part of what is read.
  return plainBlanks(await text(prelude)).replaceAll('<!-- -->', '')
}

/**
 * All that a household can read of its notebook, but for papers that are packed, which come from the document alone, and for
 * the line that stays open as long as its page and says only that something changed.
 */
async function everythingFor(household: Household): Promise<string> {
  const files = [...(await everyAddress()).keys()].flatMap((name) => {
    const file = name.startsWith(pages) ? name.slice(pages.length).split('#')[0] : undefined
    return file === undefined || /pdf|zip|upload|letter|live/.test(file) ? [] : [file]
  })
  let all = ''
  for (const file of files) all += await shownTo(household, file)
  expect(all).toContain('<h1')
  return all
}

describe('needs that one household has said', () => {
  test('show nowhere to the other until it has said its own, and then they do', async () => {
    expect(await say('a', 'the sunken terrace')).toMatchObject(saved)
    const before = await everythingFor('b')
    expect(before).toContain('No. 12 has said its needs. They are shown once you have said yours.')
    expect(before).not.toContain('sunken')
    expect(await shownTo('a', 'needs/page.tsx')).toContain('sunken terrace')

    expect(await say('b', 'the kitchen window')).toMatchObject(saved)
    const [ofA, ofB] = [await shownTo('a', 'page.tsx'), await shownTo('b', 'needs/page.tsx')]
    expect(ofB).toContain('not being looked at (the sunken terrace)')
    expect(ofA).toContain('not being looked at (the kitchen window)')
  })

  test('can be ticked at a section once both have said theirs, and are then met by it', async () => {
    await say('a', '')
    browseAs(world(), 'a')
    const { draft, base } = await openedPart(id(), { part: 'item', id: 's2' })
    await say('b', '')
    const meets = [{ household: 'b', need: 'privacy' }]
    browseAs(world(), 'b')
    const answer = await saveNotebookPart(id(), { part: 'item', id: 's2' }, base, { ...draft, meets })
    expect(answer).toMatchObject({ saved: true })
    const shown = await shownTo('a', 'page.tsx')
    expect(shown).toContain('Met by Section 2: Along the gardens.')
    expect(shown).toContain('Open: no section meets it yet.')
  })

  test.each<[string, Record<string, unknown>, string, string]>([
    ['nothing', { kinds: {}, own: [] }, 'own', 'at least one need'],
    [
      'words without a weight',
      { kinds: { light: { weight: '', words: 'beds' } } },
      'kinds.light.weight',
      'must',
    ],
    ['an own need without words', { own: [{ words: ' ', weight: 'must' }] }, 'own[0].words', 'few words'],
    [
      'an own need without a weight',
      { own: [{ words: 'a bench', weight: 'much' }] },
      'own[0].weight',
      'must',
    ],
    ['one of the six as its own', { own: [{ words: 'Stock', weight: 'must' }] }, 'own[0].words', 'six above'],
    [
      'the same need twice',
      {
        own: [
          { words: 'a bench', weight: 'must' },
          { words: 'A bench', weight: 'like' },
        ],
      },
      'own[1].words',
      'once',
    ],
    ['a need that is too long', { own: [{ words: 'x'.repeat(121), weight: 'must' }] }, 'own[0].words', '120'],
    [
      'a note that is too long',
      { kinds: { light: { weight: 'must', words: 'x'.repeat(501) } } },
      'kinds.light.words',
      '500',
    ],
    [
      'more needs than can be read',
      { own: Array.from({ length: 13 }, (_, at) => ({ words: `need ${at}`, weight: 'like' })) },
      'own',
      '12',
    ],
  ])('are refused at the field that is wrong: %s', async (_what, draft, path, said) => {
    browseAs(world(), 'a')
    const before = await everyTable()
    const faults = faultsOf(await outcomeOf(() => sayNeeds(id(), 'new', draft)))
    expect(Object.keys(faults)).toEqual([path])
    expect(faults[path]).toContain(said)
    expect(await everyTable()).toEqual(before)
  })
})

describe('passages that one household has counted', () => {
  test('show nowhere to the other until it has counted, and the count that stood stands', async () => {
    await markEverything(id())
    const before = await gate()
    expect(await count('a', '8317', '9')).toMatchObject(saved)
    expect(await gate()).toEqual(before)
    expect((await marksOf(id())).filter(({ itemKey }) => itemKey === 'item:g1')).toHaveLength(2)
    const seen = await everythingFor('b')
    expect(seen).toContain('No. 12 has counted again. Its count is shown once you have counted too.')
    expect(seen).not.toContain('8317')
    expect(await shownTo('a', 'item/[itemId]/page.tsx')).toContain('8317')
  })

  test('open the counting where no count stood: halves from then on, and both marks come off', async () => {
    browseAs(world(), 'a')
    const { uses: _none, ...bare } = await gate()
    const document = await documentOf(id())
    const gates = (document.gates as Gate[]).map((one) => (one.id === 'g1' ? bare : one))
    await outcomeOf(() => replaceByFile(id(), {}, formWithFile(documentText({ ...document, gates }))))
    await markEverything(id())
    expect(await count('b', '3', '8317')).toMatchObject(saved)
    expect(await gate()).toMatchObject({ passages: {} })
    expect(JSON.stringify(await gate())).not.toContain('8317')
    expect((await marksOf(id())).filter(({ itemKey }) => itemKey === 'item:g1')).toEqual([])
    const seen = await everythingFor('a')
    expect(seen).toContain('is halved for now, by use')
    expect(seen).not.toContain('8317')
  })

  test('alike are settled at once, as numbers', async () => {
    await count('a', '6', '7')
    await count('b', '6.0', '7')
    expect(await gate()).toMatchObject({ uses: { a: '6', b: '7' } })
    expect(await gate()).not.toHaveProperty('passages')
    expect(await shownTo('b', 'item/[itemId]/page.tsx')).toContain('Both counted the same.')
  })

  test('that differ stand side by side until both take the same one', async () => {
    await count('a', '4', '9')
    await count('b', '6', '6')
    expect(await gate()).not.toHaveProperty('uses')
    expect(await shownTo('a', 'item/[itemId]/page.tsx')).toContain('In money the two counts are')
    expect(await take('a', 'a')).toMatchObject({ kind: 'redirect' })
    expect(await take('b', 'b')).toMatchObject({ kind: 'redirect' })
    expect(await gate()).toMatchObject({ passages: { takes: { a: 'a', b: 'b' } } })
    expect(await take('b', 'a')).toMatchObject({ kind: 'redirect' })
    expect(await gate()).toMatchObject({ uses: { a: '4', b: '9' } })
    expect(await gate()).not.toHaveProperty('passages')
    expect(await shownTo('b', 'item/[itemId]/page.tsx')).toContain('Both took the count of no. 12.')
  })

  test('are refused at the field that is no number, with nothing kept', async () => {
    const before = await everyTable()
    const faults = faultsOf(await count('a', 'often', ''))
    expect(faults.a).toContain('"often" can\'t be read as a number')
    expect(faults.b).toContain('Needed')
    expect(await everyTable()).toEqual(before)
  })

  test('at a gate that is gone, or at what is no gate, are refused with nothing kept', async () => {
    const before = await everyTable()
    for (const place of ['g9', 's1'])
      expect(await count('a', '1', '2', place)).toMatchObject({ kind: 'answer', answer: { gone: true } })
    expect(await everyTable()).toEqual(before)
  })
})

describe('nobody writes a count for both', () => {
  const forged = { a: { a: '1', b: '99' }, b: { a: '1', b: '99' }, takes: { a: 'a', b: 'a' } }

  test('by the gate’s form: what it sends of passages is left aside', async () => {
    browseAs(world(), 'a')
    const part = { part: 'item', id: 'g1' } as const
    const { draft, base } = await openedPart(id(), part)
    const typed = { ...draft, latch: 'a chain', uses: { a: '1', b: '99' }, passages: forged }
    expect(await saveNotebookPart(id(), part, base, typed)).toMatchObject({ saved: true })
    expect(await gate()).toEqual({ ...draft, latch: 'a chain' })
  })

  test('by adding a gate: it begins without passages', async () => {
    browseAs(world(), 'a')
    const { from: _from, to: _to, ...plain } = aNewSection
    const added = { ...plain, at: '50 ft', uses: { a: '1', b: '99' }, passages: forged }
    await outcomeOf(() => addNotebookItem(id(), 'gate', 'new', added))
    const fresh = await gate('g5')
    expect(fresh).not.toHaveProperty('uses')
    expect(fresh).not.toHaveProperty('passages')
  })

  test('by an import: it brings counts, and nobody’s word for one of them', async () => {
    await countsApartAt(id(), 'g1')
    browseAs(world(), 'a')
    const document = await documentOf(id())
    const gates = (document.gates as Gate[]).map((one) =>
      one.id === 'g1' ? { ...one, passages: forged } : one,
    )
    await outcomeOf(() => replaceByFile(id(), {}, formWithFile(documentText({ ...document, gates }))))
    expect((await gate()).passages).toEqual({ a: forged.a, b: forged.b })
  })

  test('by a press on counts that were changed meanwhile, or that don’t stand', async () => {
    await countsApartAt(id(), 'g1')
    const old = await takeForm(id(), 'b', 'g1')
    await take('a', 'a')
    browseAs(world(), 'b')
    expect(refusalOf(await outcomeOf(() => takeCount(id(), {}, old)))).toContain('changed since you opened')
    const none = await takeForm(id(), 'b', 'g2')
    expect(refusalOf(await outcomeOf(() => takeCount(id(), {}, none)))).toContain('changed since you opened')
  })
})

describe('a share by the saving', () => {
  const share = { together: { principle: 'saving', aloneA: '900.00', aloneB: '800.00' } }
  const part = { part: 'item', id: 's1' } as const

  test('is saved only with the source of each figure, which the form names', async () => {
    browseAs(world(), 'b')
    const { draft, base } = await openedPart(id(), part)
    const before = await everyTable()
    const faults = faultsOf(await outcomeOf(() => saveNotebookPart(id(), part, base, { ...draft, share })))
    expect(Object.keys(faults)).toEqual(['share.together.sourceA', 'share.together.sourceB'])
    expect(await everyTable()).toEqual(before)
    const sourced = { together: { ...share.together, sourceA: 'an offer', sourceB: 'our reckoning' } }
    expect(await saveNotebookPart(id(), part, base, { ...draft, share: sourced })).toMatchObject({
      saved: true,
    })
  })

  test('that stood without sources can be saved as it stands', async () => {
    browseAs(world(), 'b')
    const third = { part: 'item', id: 's3' } as const
    const { draft, base } = await openedPart(id(), third)
    expect(await saveNotebookPart(id(), third, base, { ...draft, notes: 'Low here.' })).toMatchObject({
      saved: true,
    })
  })

  test('of a new item asks for them too, along with whatever else is wrong', async () => {
    browseAs(world(), 'a')
    const wrong = { ...aNewSection, from: '132', share }
    const faults = faultsOf(await outcomeOf(() => addNotebookItem(id(), 'section', 'new', wrong)))
    expect(Object.keys(faults).sort()).toEqual(['from', 'share.together.sourceA', 'share.together.sourceB'])
  })
})
