import { beforeEach, describe, expect, test, vi } from 'vitest'
import { enterContribution, takeEntryBack } from '../../app/notebook/server/bookActions.ts'
import { booksFigures } from '../../app/notebook/server/booksFigures.ts'
import { booksMatters } from '../../app/notebook/server/booksMatters.ts'
import { markLineBought, takeLineMarkBack } from '../../app/notebook/server/boughtActions.ts'
import { markValuation, moveEntryLine, takeValuationBack } from '../../app/notebook/server/entryActions.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { putUpForSigning } from '../../app/notebook/server/signActions.ts'
import { revisionSummary } from '../../app/notebook/server/summaryOf.ts'
import { saveThing } from '../../app/notebook/server/thingActions.ts'
import {
  markThingValue,
  putThingOnListAgain,
  takeThingAway,
  takeThingMarkBack,
} from '../../app/notebook/server/thingMarkActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { lineValue } from '../../lib/forms/entryDraft.ts'
import { documentText } from '../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../lib/forms/readNotebook.ts'
import { historyOf } from '../../lib/store/historyChain.ts'
import { happeningWords } from '../../lib/words/happeningText.ts'
import { everyTable } from './everyTable.ts'
import {
  anEntry,
  augerHire,
  boughtForm,
  entryForm,
  goneLine,
  leftover,
  markedBy,
  moveForm,
  thingForm,
  todaysDay,
  valuationForm,
  withBooks,
  withReceipts,
  withThing,
  withThingTakenOff,
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
    ['of nothing', () => anEntry({ amount: '0.00' }), 'amount', 'Needed: an amount of more than nothing.'],
    ['of no hours', () => anEntry({ kind: 'hours', hours: '0' }), 'hours', 'Needed: more than no hours.'],
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
      'for one item with a line of another',
      () => anEntry({ for: 's1', lines: [{ line: lineValue(augerHire), amount: '1.00' }] }),
      'lines[0].line',
      'This line is of “Auger hire”, and the entry is for “',
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
  })

  test('is undone by one household only while it waits for the other: then it counts until both mark another', async () => {
    const { id } = world().notebook
    await withReceipts(id)
    await press(markLineBought, 'a', boughtForm())
    await press(takeLineMarkBack, 'a', boughtForm())
    expect((await documentOf(id)).books).toEqual({ bought: [] })
    for (const household of ['a', 'b'] as const) await press(markLineBought, household, boughtForm())
    const before = await everyTable()
    for (const household of ['a', 'b'] as const)
      expect(await press(takeLineMarkBack, household, boughtForm())).toMatchObject({
        answer: { refused: expect.stringContaining('Both have marked $120.00, so one alone can’t undo it') },
      })
    expect(await everyTable()).toEqual(before)
  })

  test('is refused at an amount that the line has not come to, with the one that it has', async () => {
    await withReceipts(world().notebook.id)
    expect(await press(markLineBought, 'a', boughtForm('119.00'))).toMatchObject({
      answer: { refused: expect.stringContaining('The line has come to $120.00 in the meantime') },
    })
  })

  test('counts when another receipt comes in, both are told so, and until both mark what it comes to now', async () => {
    const { id } = world().notebook
    await withReceipts(id)
    for (const household of ['a', 'b'] as const) await press(markLineBought, household, boughtForm())
    const held = await total()
    await enter(anEntry({ lines: [{ line: lineValue(augerHire), amount: '12.50' }] }))
    expect(await total()).toBe(held)
    for (const household of ['a', 'b'] as const)
      expect(booksMatters(await opened(household))[0]).toEqual({
        text: 'Auger hire: auger hire: both marked $120.00; it has come to $132.50 since. $120.00 counts until both mark another amount',
        href: `/notebook/${id}/books#item-c1`,
      })

    await press(markLineBought, 'a', boughtForm('132.50'))
    expect(await total()).toBe(held)
    const { books } = await documentOf(id)
    const day = { on: todaysDay() }
    expect((books as { bought: object[] }).bought).toEqual([
      { ...augerHire, amount: '120.00', marks: { a: day, b: day } },
      { ...augerHire, amount: '132.50', marks: { a: day } },
    ])
    expect(booksMatters(await opened('b'))[0]?.text).toBe('One figure in the books waits for your mark')
    expect(
      booksMatters(await opened('a'))
        .map(({ text }) => text)
        .join(),
    ).not.toContain('auger')

    await press(takeLineMarkBack, 'a', boughtForm())
    await press(markLineBought, 'a', boughtForm('132.50'))
    await press(markLineBought, 'b', boughtForm('132.50'))
    expect(await total()).toBe(held + 1250n)
    expect((await documentOf(id)).books).toEqual({
      bought: [{ ...augerHire, amount: '132.50', marks: { a: day, b: day } }],
    })
  })

  test('counts when one household takes a receipt back that it was for', async () => {
    const { id } = world().notebook
    await withReceipts(id)
    for (const household of ['a', 'b'] as const) await press(markLineBought, household, boughtForm())
    const held = await total()
    const taken = await entryForm(id, 'auger, first day')
    taken.set('why', 'the wrong fence')
    expect(await press(takeEntryBack, 'a', taken)).toMatchObject({ kind: 'redirect' })
    expect(await total()).toBe(held)
    expect(booksMatters(await opened('b'))[0]?.text).toContain('both marked $120.00; it has come to $60.00')
  })
})

describe('things and values', () => {
  const thing = async () =>
    ((await documentOf(world().notebook.id)).books as { things: Record<string, unknown>[] }).things[0]
  const day = { on: todaysDay() }
  const both = { a: day, b: day }

  test('a household marks only for itself; a change by one counts once both mark it, and until then what both marked', async () => {
    const { id } = world().notebook
    await withThing(id)
    const unmarked = await total()
    await press(markThingValue, 'a', thingForm(id))
    expect(await total()).toBe(unmarked)
    await press(markThingValue, 'b', thingForm(id))
    expect(await thing()).toMatchObject({ marks: both })
    expect(await total()).toBe(unmarked - 2000n)

    const base = (await thingForm(id)).get('fingerprint') as string
    browseAs(world(), 'b')
    const draft = { ...leftover, value: '5.00', marks: markedBy('a', 'b'), agreed: { value: '0.01' } }
    await outcomeOf(() => saveThing(id, 0, base, draft))
    expect(await thing()).toEqual({ ...leftover, value: '5.00', agreed: { ...leftover, marks: both } })
    expect(await total()).toBe(unmarked - 2000n)
    expect(await press(markThingValue, 'a', staleForm(base))).toMatchObject({
      answer: { refused: expect.stringContaining('changed in the meantime') },
    })

    await press(markThingValue, 'b', thingForm(id))
    expect(await total()).toBe(unmarked - 2000n)
    expect(booksMatters(await opened('a')).map(({ text }) => text)).toContain(
      'One figure in the books waits for your mark',
    )
    await press(markThingValue, 'a', thingForm(id))
    expect(await thing()).toEqual({ ...leftover, value: '5.00', marks: both })
    expect(await total()).toBe(unmarked - 500n)
  })

  test('what both marked of a thing is undone by neither alone: not by its mark, and not by taking it off the list', async () => {
    const { id } = world().notebook
    await withThing(id, markedBy('a', 'b'))
    const counted = await total()
    expect(await press(takeThingMarkBack, 'b', thingForm(id))).toMatchObject({
      answer: { refused: expect.stringContaining('Both have marked this, so one alone can’t undo it') },
    })
    await press(takeThingAway, 'b', thingForm(id))
    expect(await total()).toBe(counted)
    await press(putThingOnListAgain, 'b', thingForm(id))
    expect(await thing()).toEqual({ ...leftover, marks: markedBy('a', 'b') })

    await press(takeThingAway, 'b', thingForm(id))
    await press(markThingValue, 'a', thingForm(id))
    expect(await total()).toBe(counted + 2000n)
    expect(await thing()).toEqual({ ...leftover, off: { ...day, by: 'b' }, marks: both })
    // Put back it counts as nothing, until both mark it anew.
    await press(putThingOnListAgain, 'a', thingForm(id))
    expect(await thing()).toEqual(leftover)
    expect(await total()).toBe(counted + 2000n)
  })

  test('a thing that is off the list is neither changed nor taken off again', async () => {
    const { id } = world().notebook
    await withThingTakenOff(id)
    const before = await everyTable()
    expect(await press(takeThingAway, 'b', thingForm(id, 1))).toMatchObject({
      answer: { refused: expect.anything() },
    })
    expect(await press(markThingValue, 'b', thingForm(id, 1))).toMatchObject({
      answer: { refused: expect.anything() },
    })
    const base = (await thingForm(id, 1)).get('fingerprint') as string
    expect(faultsOf(await outcomeOf(() => saveThing(id, 1, base, leftover)))['']).toContain('changed')
    expect(await everyTable()).toEqual(before)
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
    for (const household of ['a', 'b'] as const)
      expect(await press(takeValuationBack, household, valuationForm(id))).toMatchObject({
        answer: { refused: expect.stringContaining('Both have marked that all of it counts') },
      })
    expect(await givenByA()).toBe(before + 3000n)
  })

  test('goods of the other household that both marked are not taken back by the one who wrote them down', async () => {
    const { id } = world().notebook
    await withReceipts(id)
    await withBooks(id, (document) => ({
      ...document,
      contributions: (document.contributions as { valuation?: object }[]).map((entry) =>
        entry.valuation
          ? { ...entry, enteredBy: 'b', valuation: { ...entry.valuation, marks: markedBy('a', 'b') } }
          : entry,
      ),
    }))
    const form = await valuationForm(id)
    form.set('why', 'it went back')
    expect(await press(takeEntryBack, 'b', form)).toMatchObject({
      answer: { refused: expect.stringContaining('Goods that went back are entered as received back') },
    })
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

test.each<[string, (document: NotebookDocument) => object]>([
  ['a line', () => ({ books: { bought: [{ ...augerHire, amount: '120.00', marks: markedBy('a', 'b') }] } })],
  ['a thing', () => ({ books: { things: [{ ...leftover, marks: markedBy('a', 'b') }] } })],
  [
    'a payment',
    ({ contributions }) => ({
      contributions: [
        ...(contributions as object[]),
        {
          household: 'b',
          kind: 'transfer',
          amount: '5.00',
          date: '2027-04-01',
          enteredBy: 'b',
          confirmed: { on: '2027-04-02', by: 'a' },
        },
      ],
    }),
  ],
])('a file is not put in the place of books in which both have marked %s', async (_what, marked) => {
  const { id } = world().notebook
  const file = documentText(await documentOf(id))
  await withBooks(id, (document) => ({ ...document, ...marked(document) }))
  const before = await everyTable()
  browseAs(world(), 'a')
  expect(await outcomeOf(() => replaceByFile(id, {}, formWithFile(file)))).toMatchObject({
    answer: { refused: expect.stringContaining('Start a new notebook from the file instead') },
  })
  expect(await everyTable()).toEqual(before)
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
