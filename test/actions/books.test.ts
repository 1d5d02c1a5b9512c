import { beforeEach, describe, expect, test, vi } from 'vitest'
import { enterContribution } from '../../app/notebook/server/bookActions.ts'
import { booksFigures } from '../../app/notebook/server/booksFigures.ts'
import { booksMatters } from '../../app/notebook/server/booksMatters.ts'
import { markLineBought, takeLineMarkBack } from '../../app/notebook/server/boughtActions.ts'
import { markValuation, moveEntryLine } from '../../app/notebook/server/entryActions.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { putUpForSigning } from '../../app/notebook/server/signActions.ts'
import { revisionSummary } from '../../app/notebook/server/summaryOf.ts'
import { markThingValue, saveThing } from '../../app/notebook/server/thingActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { lineValue } from '../../lib/forms/entryDraft.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { historyOf } from '../../lib/store/historyChain.ts'
import { happeningWords } from '../../lib/words/happeningText.ts'
import { everyTable } from './everyTable.ts'
import {
  anEntry,
  augerHire,
  boughtForm,
  goneLine,
  markedBy,
  moveForm,
  thingForm,
  todaysDay,
  valuationForm,
  withBooks,
  withReceipts,
  withThing,
} from './givenBooks.ts'
import { formWithFile, tomorrow } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))

const world = worldForEachTest()

// A cap that is reached pauses buying, which is tested with the caps.
beforeEach(async () => withBooks(world().notebook.id, ({ caps: _none, ...document }) => document))

const opened = (household: Household) => {
  browseAs(world(), household)
  return openNotebook(world().notebook.id)
}
const enter = async (draft: unknown) => {
  browseAs(world(), 'b')
  return outcomeOf(() => enterContribution(world().notebook.id, 'new', draft))
}
const faultsOf = (end: unknown) => {
  const { answer } = end as { answer?: { faults?: { path: string; message: string }[] } }
  return Object.fromEntries((answer?.faults ?? []).map(({ path, message }) => [path, message]))
}
const total = async () => {
  const { statement } = booksFigures(await opened('a'))
  if (!statement.ok) throw new Error('the example can be shared')
  return statement.value.total
}
const press = async (
  action: (id: string, before: object, form: FormData) => Promise<unknown>,
  household: Household,
  form: FormData | Promise<FormData>,
) => {
  browseAs(world(), household)
  const sent = await form
  return outcomeOf(() => action(world().notebook.id, {}, sent))
}

describe('a receipt', () => {
  test('is entered with its shop and its lines, whatever marks the form tries to bring', async () => {
    const lines = [{ line: lineValue(augerHire), quantity: '1', amount: '10.00' }]
    const valuation = { documented: '12.00', marks: markedBy('a', 'b') }
    expect(
      await enter(
        anEntry({ shop: 'the hire shop', lines, valuation, confirmed: { on: '2027-04-01', by: 'a' } }),
      ),
    ).toMatchObject({ kind: 'redirect' })
    const { contributions } = await documentOf(world().notebook.id)
    expect((contributions as unknown[]).at(-1)).toEqual({
      household: 'b',
      kind: 'cash',
      amount: '12.50',
      date: todaysDay(),
      enteredBy: 'b',
      shop: 'the hire shop',
      lines: [{ ...augerHire, quantity: '1', amount: '10.00' }],
    })
  })

  test.each([
    ['of tomorrow', () => anEntry({ date: tomorrow() }), 'date', 'is yet to come: today is'],
    [
      'of a day before the notebook, unless that is meant',
      () => anEntry({ date: '2020-01-31', earlierIsMeant: false }),
      'earlierIsMeant',
      'This notebook was started on 1 March 2027, and 31 January 2020 is before that.',
    ],
    [
      'whose lines add to more than it has',
      () => anEntry({ lines: [{ line: lineValue(augerHire), amount: '13.00' }] }),
      'lines',
      'The lines add to 13.00, 0.50 more than the 12.50 of the whole entry.',
    ],
    [
      'for a line that is gone',
      () => anEntry({ lines: [{ line: lineValue(goneLine), amount: '1.00' }] }),
      'lines[0].line',
      '“barbed wire” is no longer in the plan. Choose another line',
    ],
    [
      'with a row that names no line',
      () => anEntry({ lines: [{ line: 'constructor', amount: '1.00' }] }),
      'lines[0].line',
      'Needed',
    ],
    [
      'with a picture that is not there',
      () => anEntry({ file: 'no-such-file' }),
      'file',
      'not with the notebook any more',
    ],
  ])(
    '%s is refused or asked about, at its field, and nothing is changed',
    async (_which, draft, path, because) => {
      const before = await everyTable()
      expect(faultsOf(await enter(draft()))[path]).toContain(because)
      expect(await everyTable()).toEqual(before)
    },
  )

  test('with several faults of several kinds is told all of them at once', async () => {
    const faults = faultsOf(await enter(anEntry({ amount: '1,50', date: tomorrow(), file: 'no-such-file' })))
    expect(Object.keys(faults).sort()).toEqual(['amount', 'date', 'file'])
  })

  test('of a day before the notebook is taken once that is meant', async () => {
    expect(await enter(anEntry({ date: '2020-01-31' }))).toMatchObject({ kind: 'redirect' })
  })

  test('for a line that is gone is asked about, and only its writer puts it on another or leaves it with the item', async () => {
    const { id } = world().notebook
    await withReceipts(id)
    expect(booksMatters(await opened('a'))).toMatchObject([
      { text: expect.stringContaining('no longer in the plan') },
    ])
    const before = await documentOf(id)
    expect(await press(moveEntryLine, 'b', moveForm(id, 'a'))).toMatchObject({
      answer: { refused: expect.stringContaining('Only the household that wrote the entry') },
    })
    expect(await press(moveEntryLine, 'a', moveForm(id, 'a', lineValue(goneLine)))).toMatchObject({
      answer: { refused: expect.stringContaining('no longer in the plan') },
    })
    expect(await documentOf(id)).toEqual(before)

    await press(moveEntryLine, 'a', moveForm(id, 'a'))
    await press(moveEntryLine, 'b', moveForm(id, 'b', ''))
    const entries = (await documentOf(id)).contributions as { note?: string; lines: unknown[]; for: string }[]
    const named = (note: string) => entries.find((entry) => entry.note === note)
    expect(named('wire of a')?.lines).toEqual([{ ...augerHire, amount: '60.00' }])
    expect(named('wire of b')).toMatchObject({ lines: [], for: 'c1' })
    expect(booksMatters(await opened('a'))).toEqual([])
  })
})

describe('marking a line as bought', () => {
  test('moves the balance with both marks, each of its own household, on record, and not what was signed', async () => {
    const { id } = world().notebook
    await withReceipts(id)
    const planned = await total()
    await press(markLineBought, 'a', boughtForm())
    expect(await total()).toBe(planned)
    expect(booksMatters(await opened('b'))[0]?.text).toContain('waits for your mark')
    await press(markLineBought, 'b', boughtForm())
    const { notebook, statement } = await opened('a')
    const line = notebook.common.find((item) => item.id === 'c1')?.materials[0]
    expect([line?.quantity, line?.unitPrice]).toEqual(['2', '94.50'])
    // 189.00 and 7.25 % of it are 202.7025, so 202.70.
    expect(line?.taxPercent).toBe('7.25')
    expect(await total()).toBe(planned + 12000n - 20270n)
    expect(statement.ok && statement.value.total).toBe(planned)
    expect(await saidInHistory(id)).toEqual(
      expect.arrayContaining([
        expect.stringContaining(
          'Marked a line as bought, at what it came to: Auger hire: auger hire, $120.00.',
        ),
      ]),
    )

    await press(takeLineMarkBack, 'b', boughtForm())
    expect(await total()).toBe(planned)
    const { books } = await documentOf(id)
    expect(books).toMatchObject({ bought: [{ ...augerHire, amount: '120.00', marks: { a: {} } }] })
    expect((books as { bought: { marks: object }[] }).bought[0]?.marks).not.toHaveProperty('b')
  })

  test('is refused at an amount that the line has not come to, with the one that it has', async () => {
    await withReceipts(world().notebook.id)
    expect(await press(markLineBought, 'a', boughtForm('119.00'))).toMatchObject({
      answer: { refused: expect.stringContaining('The line has come to $120.00 in the meantime') },
    })
  })

  test('holds no longer once another receipt comes in, and both mark anew', async () => {
    const { id } = world().notebook
    await withReceipts(id)
    const planned = await total()
    await press(markLineBought, 'a', boughtForm())
    await press(markLineBought, 'b', boughtForm())
    await enter(anEntry({ lines: [{ line: lineValue(augerHire), amount: '12.50' }] }))
    expect(await total()).toBe(planned)
    await press(markLineBought, 'a', boughtForm('132.50'))
    const { books } = await documentOf(id)
    expect((books as { bought: object[] }).bought).toEqual([
      { ...augerHire, amount: '132.50', marks: { a: { on: todaysDay() } } },
    ])
  })
})

describe('things and values', () => {
  test('a household marks only for itself, and a change of the value takes both marks off', async () => {
    const { id } = world().notebook
    await withThing(id)
    await press(markThingValue, 'a', thingForm(id))
    await press(markThingValue, 'b', thingForm(id))
    const thing = async () =>
      ((await documentOf(id)).books as { things: Record<string, unknown>[] }).things[0]
    expect(await thing()).toMatchObject({ marks: { a: { on: todaysDay() }, b: { on: todaysDay() } } })

    const { marks: _marks, ...draft } = (await thing()) ?? {}
    const base = (await thingForm(id)).get('fingerprint') as string
    browseAs(world(), 'b')
    await outcomeOf(() => saveThing(id, 0, base, { ...draft, value: '25.00', marks: markedBy('a', 'b') }))
    expect(await thing()).toEqual({ ...draft, value: '25.00' })
    expect(await press(markThingValue, 'a', staleForm(base))).toMatchObject({
      answer: { refused: expect.stringContaining('changed in the meantime') },
    })
  })

  test('a value that would leave nothing to share is refused with its reason', async () => {
    const { id } = world().notebook
    const thing = {
      kind: 'salvage',
      what: 'posts',
      item: 'c3',
      household: 'a',
      value: '9000.00',
      marks: markedBy('a'),
    }
    await withBooks(id, (document) => ({ ...document, books: { things: [thing] } }))
    expect(await press(markThingValue, 'b', thingForm(id))).toMatchObject({
      answer: { refused: expect.stringContaining('below zero') },
    })
  })

  test('goods above their lower value count whole once both mark it', async () => {
    const { id } = world().notebook
    await withReceipts(id)
    const givenByA = async () => {
      const { statement } = booksFigures(await opened('a'))
      return statement.ok ? statement.value.contributed.a : 0n
    }
    const before = await givenByA()
    await press(markValuation, 'a', valuationForm(id))
    expect(await givenByA()).toBe(before)
    await press(markValuation, 'b', valuationForm(id))
    // 90.00 in the place of 200 lb at 0.30.
    expect(await givenByA()).toBe(before + 3000n)
  })
})

test('a file that is put in the notebook’s place brings no mark', async () => {
  const { id } = world().notebook
  await withReceipts(id)
  const document = await documentOf(id)
  const marked = {
    ...document,
    contributions: [
      ...(document.contributions as object[]),
      {
        household: 'b',
        kind: 'transfer',
        amount: '5.00',
        date: '2027-04-01',
        confirmed: { on: '2027-04-02', by: 'a' },
      },
      {
        household: 'a',
        kind: 'material',
        amount: '5.00',
        date: '2027-04-01',
        valuation: { documented: '4.00', marks: markedBy('a', 'b') },
      },
    ],
    books: {
      bought: [{ ...augerHire, amount: '120.00', marks: markedBy('a', 'b') }],
      things: [
        {
          kind: 'tool',
          what: 'auger bit',
          item: 'c1',
          household: 'a',
          value: '9.00',
          marks: markedBy('a', 'b'),
        },
      ],
      conversions: [
        {
          household: 'a',
          to: 'money',
          item: 's1',
          hours: '1',
          rate: '20',
          on: '2027-04-01',
          marks: markedBy('a', 'b'),
        },
      ],
    },
  }
  browseAs(world(), 'a')
  const form = formWithFile(documentText(marked))
  expect(await outcomeOf(() => replaceByFile(id, {}, form))).toMatchObject({ kind: 'redirect' })
  const text = JSON.stringify(await documentOf(id))
  expect(text).not.toContain('"marks":')
  expect(text).not.toContain('"confirmed":')
  const { contributions, books } = await documentOf(id)
  expect((contributions as object[]).at(-2)).toMatchObject({ kind: 'transfer', waits: true })
  expect(books).toMatchObject({
    things: [{ what: 'auger bit', value: '9.00' }],
    conversions: [{ hours: '1' }],
  })
})

test('the shares of a revision’s paper stay as they were frozen while the books go on', async () => {
  const { id } = world().notebook
  await markEverything(id)
  await press(putUpForSigning, 'a', new FormData())
  await withReceipts(id)
  const sharesOf = async () => {
    const { revisions } = await opened('a')
    const [revision] = revisions
    if (revision === undefined) throw new Error('a revision was put up')
    return revisionSummary(revision, revisions)
  }
  const before = await sharesOf()
  for (const household of ['a', 'b'] as const) await press(markLineBought, household, boughtForm())
  const after = await sharesOf()
  expect(after.statement).toEqual(before.statement)
  expect(after.actual?.ok && after.actual.value.total).not.toBe(
    before.actual?.ok && before.actual.value.total,
  )
})

/** What stands in the history about the books, in words. */
async function saidInHistory(id: string): Promise<string[]> {
  const history = await historyOf(id)
  return history.filter(({ kind }) => kind === 'books').map((entry) => happeningWords(entry, ''))
}

function staleForm(fingerprint: string): FormData {
  const form = new FormData()
  form.set('index', '0')
  form.set('fingerprint', fingerprint)
  return form
}
