import { describe, expect, test, vi } from 'vitest'
import ChangesPage from '../../app/notebook/[notebookId]/changes/page.tsx'
import {
  addNotebookItem,
  agreeToItem,
  moveNotebookItem,
  removeNotebookItem,
  saveNotebookPart,
} from '../../app/notebook/server/actions.ts'
import { enterContribution, takeEntryBack } from '../../app/notebook/server/bookActions.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import type { SaveAnswer } from '../../app/ui/draft/saveAnswer.ts'
import { agreedItems, decisionKey } from '../../lib/core/agreement/agreedItems.ts'
import { assert } from '../../lib/core/assert.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { documentText, type Part } from '../../lib/forms/parts.ts'
import { unknownKeys } from '../../lib/forms/readNotebook.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { everyTable, newRows } from './everyTable.ts'
import { anEntry } from './givenBooks.ts'
import { aNewSection, formOf, formWithFile, markForm, openedPart, takeBackForm } from './givenForms.ts'
import { faultsOf, outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()

type Entry = Record<string, unknown>

/** Saves a part as a household's form would, changed by `edit`. */
async function save(household: Household, part: Part, edit: (draft: Entry) => Entry): Promise<SaveAnswer> {
  const { id } = world().notebook
  const { draft, base } = await openedPart(id, part)
  browseAs(world(), household)
  return saveNotebookPart(id, part, base, edit(structuredClone(draft)))
}

/** The items whose marks went, each with how many. */
async function marksGone(act: () => Promise<unknown>): Promise<Record<string, number>> {
  const { id } = world().notebook
  await markEverything(id)
  const before = await marksOf(id)
  await act()
  const after = new Set((await marksOf(id)).map((mark) => JSON.stringify(mark)))
  const gone = before.filter((mark) => !after.has(JSON.stringify(mark))).map((mark) => mark.itemKey)
  return Object.fromEntries([...new Set(gone)].map((key) => [key, gone.filter((one) => one === key).length]))
}

const byBoth = (...keys: string[]) => Object.fromEntries(keys.map((key) => [key, 2]))
const list = (draft: Entry, key: string) => draft[key] as Entry[]

function entry(draft: Entry, key: string, index: number): Entry {
  const found = list(draft, key)[index]
  assert(found !== undefined, `there is an entry ${index} of ${key}`)
  return found
}

describe('a mark', () => {
  test('is refused on an item that was changed since it was read, and set on the item as it stands', async () => {
    const { id } = world().notebook
    const outdated = await markForm(id, 'line')
    await save('a', { part: 'line' }, (draft) => ({ line: { ...(draft.line as Entry), end: 'the creek' } }))
    browseAs(world(), 'b')
    const before = await everyTable()
    expect(refusalOf(await outcomeOf(() => agreeToItem(id, {}, outdated)))).toContain(
      'was changed since you opened the page',
    )
    expect(await everyTable()).toEqual(before)
    expect(await outcomeOf(async () => agreeToItem(id, {}, await markForm(id, 'line')))).toMatchObject({
      kind: 'redirect',
    })
    expect(await marksOf(id)).toMatchObject([{ itemKey: 'line', household: 'b' }])
  })

  test('is refused on an item with the fingerprint of another, and on one that is gone', async () => {
    const { id } = world().notebook
    browseAs(world(), 'b')
    const before = await everyTable()
    const crossed = await markForm(id, 'line')
    crossed.set('itemKey', 'parties')
    expect(refusalOf(await outcomeOf(() => agreeToItem(id, {}, crossed)))).toContain('was changed since')
    crossed.set('itemKey', 'item:s99')
    expect(refusalOf(await outcomeOf(() => agreeToItem(id, {}, crossed)))).toContain('was removed')
    expect(await everyTable()).toEqual(before)
  })
})

describe('marks come off exactly the items that changed:', () => {
  test('the parties', async () => {
    const gone = await marksGone(() =>
      save('a', { part: 'heading' }, (draft) => {
        const households = draft.households as { b: { parties: Entry[] } }
        households.b.parties.push({ name: 'Piet Vandermolen', capacity: 'co-owner' })
        return draft
      }),
    )
    expect(gone).toEqual(byBoth('parties'))
  })

  test('the line', async () => {
    const gone = await marksGone(() =>
      save('b', { part: 'line' }, (draft) => {
        entry(draft.line as Entry, 'stations', 0).gradeA = '1 in'
        return draft
      }),
    )
    expect(gone).toEqual(byBoth('line'))
  })

  test('one section, though the shares of others may move by a cent', async () => {
    const gone = await marksGone(() =>
      save('a', { part: 'item', id: 's2' }, (draft) => {
        entry(draft, 'materials', 0).unitPrice = '24.76'
        return draft
      }),
    )
    expect(gone).toEqual(byBoth('item:s2'))
  })

  test('the caps', async () => {
    expect(await marksGone(() => save('b', { part: 'caps' }, () => ({ caps: { b: '3800.00' } })))).toEqual(
      byBoth('caps'),
    )
  })

  test('the terms', async () => {
    const gone = await marksGone(() =>
      save('b', { part: 'terms' }, (draft) => {
        entry(draft, 'terms', 2).text = 'Both look at the fence each autumn.'
        return draft
      }),
    )
    expect(gone).toEqual(byBoth('terms'))
  })

  test('one decision', async () => {
    const [first] = exampleDocument().decisions as Entry[]
    const gone = await marksGone(() =>
      save('a', { part: 'decisions' }, (draft) => {
        entry(draft, 'decisions', 0).text = 'The old hazel goes.'
        return draft
      }),
    )
    expect(gone).toEqual(byBoth(decisionKey(first)))
  })

  test('an item that is removed, and none that is added or moved', async () => {
    const { id } = world().notebook
    const gone = await marksGone(async () => {
      browseAs(world(), 'a')
      const { base } = await openedPart(id, { part: 'item', id: 'g4' })
      await outcomeOf(() => removeNotebookItem(id, 'g4', base))
    })
    expect(gone).toEqual(byBoth('item:g4'))
    expect(await marksGone(() => outcomeOf(() => addNotebookItem(id, 'gate', 'new', aNewGate)))).toEqual({})
    expect(
      await marksGone(() => outcomeOf(() => moveNotebookItem(id, {}, formOf({ id: 's2', way: 'up' })))),
    ).toEqual({})
    expect((await documentOf(id)).sections).toMatchObject([
      { id: 's2' },
      { id: 's1' },
      { id: 's3' },
      { id: 's4' },
      { id: 's5' },
    ])
  })

  test('with the currency: everything that holds money', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const { contributions: _books, ...rest } = exampleDocument()
    await outcomeOf(() => replaceByFile(id, {}, formWithFile(documentText(rest))))
    const gone = await marksGone(() =>
      save('a', { part: 'heading' }, (draft) => ({ ...draft, currency: 'EUR' })),
    )
    const items = agreedItems(await documentOf(id))
    const kinds = ['section', 'gate', 'common', 'caps', 'arrangements']
    const holdMoney = items.filter((item) => kinds.includes(item.kind))
    expect(holdMoney.length).toBe(14)
    expect(gone).toEqual(byBoth(...holdMoney.map((item) => item.key)))
  })

  test('with a title, a unit, a check or an entry in the book: none', async () => {
    const { id } = world().notebook
    expect(
      await marksGone(() =>
        save('a', { part: 'heading' }, (draft) => ({ ...draft, title: 'Another', units: 'metric' })),
      ),
    ).toEqual({})
    const checked = () =>
      save('b', { part: 'checks' }, (draft) => {
        entry(draft, 'checks', 0).answer = 'Asked again: the same.'
        return draft
      })
    expect(await marksGone(checked)).toEqual({})
    const given = anEntry({ kind: 'hours', hours: '3', rate: '20' })
    expect(await marksGone(() => outcomeOf(() => enterContribution(id, 'new', given)))).toEqual({})
    expect(
      await marksGone(async () => outcomeOf(async () => takeEntryBack(id, {}, await takeBackForm(id, 3)))),
    ).toEqual({})
    const { title, checks, contributions } = await documentOf(id)
    expect([title, (checks as Entry[])[0]?.answer]).toEqual(['Another', 'Asked again: the same.'])
    expect(contributions).toHaveLength(11)
    expect((contributions as Entry[])[3]?.struck).toMatchObject({ by: 'b', why: 'entered twice' })
  })

  test('with nothing changed: none, and nothing is written', async () => {
    const parts: Part[] = [
      ...(['heading', 'line', 'caps', 'terms', 'checks', 'decisions'] as const).map((part) => ({ part })),
      { part: 'item', id: 'g1' },
    ]
    await markEverything(world().notebook.id)
    const before = await everyTable()
    for (const part of parts) {
      expect(await save('b', part, (draft) => draft)).toMatchObject({
        saved: true,
        note: 'Nothing had changed.',
      })
    }
    expect(await everyTable()).toEqual(before)
  })
})

const aNewGate = {
  name: 'At the orchard',
  materials: [],
  labour: [],
  share: { materials: { principle: 'equal' }, labour: { principle: 'equal' } },
}

describe('the history', () => {
  test('follows a decision through its wordings, in the order in which they were given', async () => {
    const { id } = world().notebook
    const [first, second] = exampleDocument().decisions as Entry[]
    const reworded = (household: Household, text: string) =>
      save(household, { part: 'decisions' }, (draft) => {
        entry(draft, 'decisions', 0).text = text
        return draft
      })
    await reworded('a', 'The old hazel goes.')
    await reworded('b', 'The old hazel stays, and is cut back each winter.')
    const [now] = (await documentOf(id)).decisions as Entry[]
    const history = await changesOf(id, { itemKey: decisionKey(now) })
    expect(history).toMatchObject([
      { household: 'b', previousKey: decisionKey({ ...first, text: 'The old hazel goes.' }), after: now },
      { household: 'a', previousKey: decisionKey(first), before: first },
    ])
    expect(await changesOf(id, { itemKey: decisionKey(second) })).toEqual([])
  })

  test('says of the title, the currency, the units and the checks, too, who changed them', async () => {
    const { id } = world().notebook
    await save('b', { part: 'heading' }, (draft) => ({ ...draft, title: 'Another' }))
    await save('a', { part: 'checks' }, (draft) => ({ checks: list(draft, 'checks').slice(1) }))
    expect(await changesOf(id)).toMatchObject([
      { household: 'a', itemKey: 'checks' },
      { household: 'b', itemKey: 'heading', after: { title: 'Another', currency: 'USD', units: 'ft-in' } },
    ])
    const html = shownMarkup(await ChangesPage({ params: Promise.resolve({ notebookId: id }) }))
    expect(html).toContain('Title, currency and units')
    expect(html).toContain('Title: The line between no. 12 and no. 14 before, Another now')
    expect(html).toContain('Ask first')
  })

  test('can be read whatever a file calls its keys', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const odd = documentText(exampleDocument()).replace(
      '"id": "s1"',
      '"constructor": "x", "toString": { "hasOwnProperty": ["y"] }, "id": "s1"',
    )
    expect(await outcomeOf(() => replaceByFile(id, {}, formWithFile(odd)))).toMatchObject({
      kind: 'redirect',
    })
    const html = shownMarkup(await ChangesPage({ params: Promise.resolve({ notebookId: id }) }))
    expect(html).toContain('Constructor: now x')
    expect(html).toContain('ToString, hasOwnProperty 1: now y')
  })
})

describe('two households that save the same part at once', () => {
  const conflicts: readonly (readonly [
    string,
    Part,
    (draft: Entry) => Entry,
    (draft: Entry) => Entry,
    string,
  ])[] = [
    [
      'the title',
      { part: 'heading' },
      (draft) => ({ ...draft, title: 'Theirs' }),
      (draft) => ({ ...draft, title: 'Mine' }),
      'Title',
    ],
    [
      'the line',
      { part: 'line' },
      (draft) => ({ line: { ...(draft.line as Entry), start: 'Theirs' } }),
      (draft) => ({ line: { ...(draft.line as Entry), start: 'Mine' } }),
      'Line, start',
    ],
    [
      'the caps',
      { part: 'caps' },
      () => ({ caps: { b: '1.00' } }),
      () => ({ caps: { b: '2.00' } }),
      'Caps, no. 14',
    ],
    [
      'the terms',
      { part: 'terms' },
      () => ({ terms: [{ topic: 'x', text: 'Theirs' }] }),
      () => ({ terms: [{ topic: 'x', text: 'Mine' }] }),
      'Terms 1, text',
    ],
    [
      'the checks',
      { part: 'checks' },
      () => ({ checks: [{ what: 'Theirs' }] }),
      () => ({ checks: [{ what: 'Mine' }] }),
      'Checks 1, what',
    ],
    [
      'the decisions',
      { part: 'decisions' },
      () => ({ decisions: [{ text: 'Theirs' }] }),
      () => ({ decisions: [{ text: 'Mine' }] }),
      'Decisions 1, text',
    ],
    [
      'a section',
      { part: 'item', id: 's1' },
      (draft) => ({ ...draft, face: 'Theirs' }),
      (draft) => ({ ...draft, face: 'Mine' }),
      'Face',
    ],
  ]

  test.each(conflicts)(
    '%s: the second is shown both versions, whose the other is and since when, and nothing is written',
    async (_what, part, theirs, mine, label) => {
      const { id } = world().notebook
      const opened = await openedPart(id, part)
      await save('b', part, theirs)
      // Something else that was changed since, by the other household, is not taken for it.
      await save('a', part.part === 'line' ? { part: 'caps' } : { part: 'line' }, () =>
        part.part === 'line' ? { caps: {} } : { line: { start: 'elsewhere' } },
      )
      const now = await openedPart(id, part)
      const before = await everyTable()
      const answer = await saveNotebookPart(id, part, opened.base, mine(structuredClone(opened.draft)))
      expect(answer).toEqual({
        conflict: {
          theirs: now.draft,
          theirsBase: now.base,
          rows: expect.arrayContaining([expect.objectContaining({ label })]),
          by: 'no. 14',
          when: expect.stringMatching(/\d/),
        },
      })
      expect(await everyTable()).toEqual(before)
      // Choosing one's own version is saving it over theirs.
      expect(await saveNotebookPart(id, part, now.base, mine(structuredClone(opened.draft)))).toMatchObject({
        saved: true,
      })
    },
  )

  test('saved in another window of the same household, the answer says that it is its own', async () => {
    const opened = await openedPart(world().notebook.id, { part: 'caps' })
    await save('b', { part: 'caps' }, () => ({ caps: { b: '1.00' } }))
    const sentBy = async (household: 'a' | 'b') => {
      browseAs(world(), household)
      const answer = await saveNotebookPart(world().notebook.id, { part: 'caps' }, opened.base, {
        caps: { b: '2.00' },
      })
      return 'conflict' in answer ? answer.conflict : undefined
    }
    expect(await sentBy('b')).toMatchObject({ own: true, by: 'no. 14' })
    const theirs = await sentBy('a')
    expect(theirs).toMatchObject({ by: 'no. 14' })
    expect(theirs).not.toHaveProperty('own')
  })

  test('of two at the very same moment one is saved and one is shown the other', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const { base } = await openedPart(id, { part: 'caps' })
    const answers = await Promise.all(
      ['1.00', '2.00'].map((b) => saveNotebookPart(id, { part: 'caps' }, base, { caps: { b } })),
    )
    expect(answers.map((answer) => Object.keys(answer)[0]).sort()).toEqual(['conflict', 'saved'])
    expect(await changesOf(id)).toHaveLength(1)
  })

  test('an item that was removed meanwhile is gone for whoever saves or removes it', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const { draft, base } = await openedPart(id, { part: 'item', id: 'g4' })
    expect(await outcomeOf(() => removeNotebookItem(id, 'g4', base))).toMatchObject({ kind: 'redirect' })
    const before = await everyTable()
    expect(await saveNotebookPart(id, { part: 'item', id: 'g4' }, base, draft)).toMatchObject({ gone: true })
    expect(await removeNotebookItem(id, 'g4', base)).toMatchObject({ gone: true })
    expect(await everyTable()).toEqual(before)
  })

  test('an item that was changed meanwhile is not removed', async () => {
    const { id } = world().notebook
    const { base } = await openedPart(id, { part: 'item', id: 'g4' })
    await save('b', { part: 'item', id: 'g4' }, (draft) => ({ ...draft, latch: 'a chain' }))
    const before = await everyTable()
    expect(await removeNotebookItem(id, 'g4', base)).toMatchObject({ conflict: { by: 'no. 14' } })
    expect(await everyTable()).toEqual(before)
  })

  test('an entry is taken back once, and only the entry that was meant', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const form = await takeBackForm(id, 0)
    const another = await takeBackForm(id, 1)
    another.set('index', '2')
    expect(refusalOf(await outcomeOf(() => takeEntryBack(id, {}, another)))).toContain(
      'changed or taken back',
    )
    expect(await outcomeOf(() => takeEntryBack(id, {}, form))).toMatchObject({ kind: 'redirect' })
    const before = await everyTable()
    browseAs(world(), 'b')
    expect(refusalOf(await outcomeOf(() => takeEntryBack(id, {}, form)))).toContain('changed or taken back')
    expect(await everyTable()).toEqual(before)
  })
})

describe('keys that the format does not know', () => {
  const places = [
    'extra',
    'households.a.extra',
    'households.a.parties[0].extra',
    'line.extra',
    'line.stations[0].extra',
    'line.stations[0].setback.extra',
    'sections[0].extra',
    'sections[0].height.extra',
    'sections[0].materials[0].extra',
    'sections[0].labour[0].extra',
    'sections[0].share.extra',
    'sections[0].share.materials.basicShare.extra',
    'gates[0].uses.extra',
    'common[0].extra',
    'caps.extra',
    'contributions[0].extra',
    'terms[0].extra',
    'checks[0].extra',
    'decisions[0].extra',
  ]

  function withExtras(): Entry {
    const document = structuredClone(exampleDocument()) as Entry
    for (const place of places) {
      const steps = place.replaceAll('[', '.').replaceAll(']', '').split('.').slice(0, -1)
      const holder = steps.reduce<Entry>((value, step) => value[step] as Entry, document)
      holder.extra = { kept: ['as it is', 1, null, ''] }
    }
    return document
  }

  test('outlive every form that does not touch them, and are all named', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    await outcomeOf(() => replaceByFile(id, {}, formWithFile(documentText(withExtras()))))
    expect(unknownKeys(await documentOf(id)).sort()).toEqual([...places].sort())

    const edits: readonly (readonly [Part, string, string])[] = [
      [{ part: 'heading' }, 'title', 'Another'],
      [{ part: 'item', id: 's1' }, 'name', 'Another'],
      [{ part: 'item', id: 'g1' }, 'name', 'Another'],
      [{ part: 'item', id: 'c1' }, 'name', 'Another'],
    ]
    for (const [part, key, value] of edits) {
      expect(await save('b', part, (draft) => ({ ...draft, [key]: value }))).toMatchObject({ saved: true })
    }
    await save('b', { part: 'line' }, (draft) => ({ line: { ...(draft.line as Entry), start: 'Another' } }))
    await save('b', { part: 'caps' }, (draft) => ({ caps: { ...(draft.caps as Entry), a: '9000.00' } }))
    for (const key of ['terms', 'checks', 'decisions'] as const) {
      await save('b', { part: key }, (draft) => ({
        [key]: [...list(draft, key), { text: 'One more', what: 'One more' }].map((one, index) =>
          index < list(draft, key).length
            ? one
            : key === 'checks'
              ? { what: 'One more' }
              : { text: 'One more' },
        ),
      }))
    }
    await outcomeOf(() => addNotebookItem(id, 'section', 'new', aNewSection))
    await outcomeOf(() => moveNotebookItem(id, {}, formOf({ id: 's2', way: 'down' })))
    await outcomeOf(async () => takeEntryBack(id, {}, await takeBackForm(id, 0)))

    const after = await documentOf(id)
    expect(unknownKeys(after).sort()).toEqual([...places].sort())
    const kept = JSON.stringify(after).match(/"extra":\{"kept":\["as it is",1,null,""\]\}/g)
    expect(kept).toHaveLength(places.length)
  })
})

describe('a form that does not hold', () => {
  test('names each field, and changes nothing', async () => {
    const before = await everyTable()
    const answer = await save('a', { part: 'item', id: 's1' }, (draft) => {
      entry(draft, 'materials', 1).quantity = '1,200'
      return {
        ...draft,
        from: '12',
        share: { materials: { principle: 'percent', a: '50', b: '49' }, labour: { principle: 'use' } },
      }
    })
    expect(Object.keys(faultsOf({ kind: 'answer', answer }))).toEqual([
      'from',
      'materials[1].quantity',
      'share.materials.b',
      'share.labour.principle',
    ])
    expect(await everyTable()).toEqual(before)
  })

  test('says nothing of another item that can’t be shared yet', async () => {
    const noBenefit = (draft: Entry) => ({
      ...draft,
      share: { together: { principle: 'benefit', a: '0', b: '0' } },
    })
    expect(await save('a', { part: 'item', id: 's2' }, noBenefit)).toMatchObject({ saved: true })
    const wrong = await save('a', { part: 'item', id: 's1' }, (draft) => ({ ...draft, from: '12' }))
    expect(wrong).toEqual({
      faults: [{ path: 'from', message: expect.stringContaining('"12" has no unit') }],
    })
    const right = await save('a', { part: 'item', id: 's1' }, (draft) => ({ ...draft, notes: 'as it was' }))
    expect(right).toMatchObject({ saved: true })
  })

  test('names the item where an amount of money of it keeps a currency from being taken', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const { contributions: _books, ...rest } = exampleDocument()
    await outcomeOf(() => replaceByFile(id, {}, formWithFile(documentText(rest))))
    const answer = await save('a', { part: 'heading' }, (draft) => ({ ...draft, currency: 'JPY' }))
    expect(faultsOf({ kind: 'answer', answer })).toMatchObject({
      'caps.b': expect.stringMatching(/^"4200.00" has digits after the point/),
      'gates[3].share.materials.basic': expect.stringMatching(/^Orchard gate: "150.00" has digits/),
      'sections[2].share.together.aloneA': expect.stringMatching(/^Behind the sheds: "1480.00" has digits/),
    })
  })

  test('keeps the currency while the book has entries in it', async () => {
    const before = await everyTable()
    const answer = await save('a', { part: 'heading' }, (draft) => ({ ...draft, currency: 'EUR' }))
    expect(faultsOf({ kind: 'answer', answer })).toEqual({
      currency: expect.stringContaining('the currency stays USD'),
    })
    expect(await everyTable()).toEqual(before)
  })

  test('does not remove an item that the book speaks of', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const before = await everyTable()
    const { base } = await openedPart(id, { part: 'item', id: 's2' })
    expect(faultsOf(await outcomeOf(() => removeNotebookItem(id, 's2', base)))).toEqual({
      '': expect.stringContaining('Take those entries back first'),
    })
    expect(await everyTable()).toEqual(before)
  })

  test('never lets a part write into another', async () => {
    const { id } = world().notebook
    const [before, recorded] = [await documentOf(id), await everyTable()]
    await save('a', { part: 'caps' }, (draft) => ({
      ...draft,
      caps: { b: '3751.00' },
      terms: [],
      contributions: [],
      format: 'x',
      version: 2,
    }))
    await save('a', { part: 'item', id: 's1' }, (draft) => ({ ...draft, id: 's2' }))
    expect(await documentOf(id)).toEqual({ ...before, caps: { b: '3751.00' } })
    expect(newRows(recorded, await everyTable(), 'Change')).toHaveLength(1)
  })

  test('does not make the notebook larger than a file that can be imported', async () => {
    const large = 'x'.repeat(980_000)
    expect(
      await save('a', { part: 'item', id: 's1' }, (draft) => ({ ...draft, notes: large })),
    ).toMatchObject({ saved: true })
    expect(
      await save('a', { part: 'item', id: 's2' }, (draft) => ({ ...draft, notes: large })),
    ).toMatchObject({ saved: true })
    const before = await everyTable()
    const answer = await save('a', { part: 'item', id: 's3' }, (draft) => ({ ...draft, notes: large }))
    expect(faultsOf({ kind: 'answer', answer })).toEqual({ '': expect.stringContaining('at most 2000000') })
    expect(await everyTable()).toEqual(before)
  })
})
