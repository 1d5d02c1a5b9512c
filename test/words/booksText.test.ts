import { describe, expect, test } from 'vitest'
import type { Thing } from '../../lib/core/agreement/notebook.ts'
import { entriesOnNoLine } from '../../lib/core/ledger/onNoLine.ts'
import { plannedAgainstActual } from '../../lib/core/ledger/plannedAgainstActual.ts'
import { plannedStatement, statementOf } from '../../lib/core/shares/statement.ts'
import { againstPlanWords, spentBeyondWords } from '../../lib/words/againstPlanText.ts'
import { booksCsv } from '../../lib/words/booksCsv.ts'
import { differenceOf, lineStandingWords } from '../../lib/words/booksText.ts'
import { linesLeftWords, valuationSentence } from '../../lib/words/entryFieldWords.ts'
import { shareNames } from '../../lib/words/shareText.ts'
import { actualBlocks } from '../../lib/words/summary/actualBlocks.ts'
import type { Block } from '../../lib/words/summary/block.ts'
import { summaryContent } from '../../lib/words/summary/summaryContent.ts'
import { thingAgreedWords, thingStanding } from '../../lib/words/thingText.ts'
import { cash, markedBy, notebookOf, on, wire } from '../core/ledger/madeBooks.ts'

const receipt = cash('b', '118.00', { ...wire, amount: '112.40' })
const marks = markedBy('a', 'b')
const kept = notebookOf([{ ...receipt, for: 's1' }], {
  bought: [{ ...wire, amount: '112.40', marks }],
  things: [{ kind: 'leftover', what: 'wire', item: 's1', household: 'a', value: '3.00', marks, on }],
})
const plain = notebookOf()
const struck = { by: 'b', on, why: 'typed twice' } as const

test('planned against actual is a table for a spreadsheet, with what is on no line', () => {
  const rows = booksCsv(kept).split('\r\n')
  expect(rows[0]).toContain('"paid by no. 12","paid by no. 14","marked by both","in the balance"')
  expect(rows[1]).toBe('"West side","wire","materials",100.00,112.40,12.40,0.00,112.40,"yes",112.40,"USD"')
  expect(rows[2]).toBe('"West side","pipe","materials",60.00,,,,,"no",60.00,"USD"')
  expect(rows.at(-2)).toBe('"West side","(on no line)",,,5.60,,,,"no",,"USD"')
})

test('a text that a spreadsheet would run is led by an apostrophe', () => {
  const section = { ...plain.sections[0], name: '=1+1' } as (typeof plain.sections)[number]
  expect(booksCsv({ ...plain, sections: [section] })).toContain(`"'=1+1"`)
})

describe('the paper', () => {
  const blocksOf = (notebook: typeof kept) =>
    summaryContent({
      notebook,
      statement: plannedStatement(notebook),
      actual: statementOf(notebook),
      standing: { kind: 'draft', sha256: '0'.repeat(64) },
      signatures: [],
    })
  const chapter = (blocks: readonly Block[], id: string) => {
    const from = blocks.findIndex((block) => block.kind === 'heading' && block.id === id)
    const after = blocks.slice(from + 1)
    const to = after.findIndex((block) => block.kind === 'heading' && block.level === 1)
    return JSON.stringify(to < 0 ? after : after.slice(0, to))
  }

  test.each(['costs', 'shares'])('says the same under its chapter “%s”, whatever the books say', (id) => {
    expect(chapter(blocksOf(kept), id)).toBe(chapter(blocksOf(plain), id))
  })

  test('sets planned against actual in its chapter of the books, and the balance by what counts', () => {
    const books = chapter(blocksOf(kept), 'books')
    expect(books).toContain(
      '["Section 1: West side: wire","$100.00","$112.40","$12.40 more","no. 14 $112.40","actual"]',
    )
    expect(books).toContain('["Left over: wire","no. 12","$3.00"]')
    // 250.00 + 12.40 − 3.00 = 259.40, halves.
    expect(books).toContain('["Asked for","$129.70","$129.70"]')
    expect(books).toContain('["Given so far","−$3.00","$118.00"]')
    expect(chapter(blocksOf(plain), 'books')).not.toContain('Planned against actual')
  })
})

test('differences are told in words', () => {
  expect(differenceOf(1200n, 1000n, 'USD')).toBe('$2.00 more')
  expect(differenceOf(1000n, 1200n, 'USD')).toBe('$2.00 less')
  expect(differenceOf(1000n, 1000n, 'USD')).toBe('as planned')
})

describe('an item against its plan', () => {
  const words = (notebook: typeof kept) => againstPlanWords(plannedAgainstActual(notebook, 2).items, 'USD')
  const atPlan = cash('b', '100.00', { ...wire, amount: '100.00' })

  test.each<[string, typeof kept, string]>([
    ['for which nothing was entered', plain, 'nothing entered yet'],
    ['whose receipt nobody has marked', notebookOf([atPlan]), 'nothing marked by both yet'],
    [
      'that came to what was planned, as both marked it',
      notebookOf([atPlan], { bought: [{ ...wire, amount: '100.00', marks }] }),
      'as planned',
    ],
    // 112.40 for 100.00 of wire, 3.00 of it kept, 5.60 on no line.
    ['that came dearer', kept, '$9.40 more'],
  ])('%s', (_what, notebook, said) => {
    expect(words(notebook)).toBe(said)
  })
})

describe('more that was spent than planned', () => {
  const words = (notebook: typeof kept) => spentBeyondWords(plannedAgainstActual(notebook, 2).items, 'USD')
  const toll = { ...cash('b', '75.00'), for: 's1' }

  test.each<[string, typeof kept, string | undefined]>([
    // Planned: 100.00 of wire and 60.00 of pipe less 10.00 of old wire, and 100.00 of work.
    ['is told of what is on no line', notebookOf([{ ...toll, amount: '251.00' }]), '$1.00 more'],
    [
      'is told of lines and no line together',
      notebookOf([{ ...receipt, amount: '200.00', for: 's1' }, toll]),
      '$25.00 more than planned was spent, on lines and on no line together',
    ],
    ['is not told where it is not', notebookOf([toll]), undefined],
    ['is not told of what was taken back', notebookOf([{ ...toll, amount: '251.00', struck }]), undefined],
    [
      'is not told a second time of what both marked',
      notebookOf([cash('b', '300.00', { ...wire, amount: '300.00' })], {
        bought: [{ ...wire, amount: '300.00', marks }],
      }),
      undefined,
    ],
  ])('%s', (_what, notebook, said) => {
    expect(words(notebook)).toEqual(said === undefined ? undefined : expect.stringContaining(said))
  })

  test('entries on no line are found with what is left of them', () => {
    const hours = { household: 'a', kind: 'hours', hours: '1', rate: '25.00', task: '', date: on, for: 's1' }
    const notebook = notebookOf([
      { ...receipt, for: 's1' },
      toll,
      { ...toll, struck },
      cash('a', '5.00'),
      hours,
      { ...hours, task: 'dig' },
      { ...toll, kind: 'refund' },
    ])
    // 118.00 less 112.40 of wire; 5.00 is for the whole fence, and of the hours one has a task.
    expect(entriesOnNoLine(notebook, 2)).toEqual([
      { entry: 0, item: 's1', amount: 560n },
      { entry: 1, item: 's1', amount: 7500n },
      { entry: 4, item: 's1', amount: 2500n },
      { entry: 6, item: 's1', amount: -7500n },
    ])
  })
})

test('what is on no line is told while it is typed', () => {
  expect(linesLeftWords(0n, 'USD', true)).toBe('The whole amount is on these lines.')
  expect(linesLeftWords(150n, 'USD', false)).toBe('$1.50 is on no line: it is for the fence as a whole.')
  expect(linesLeftWords(-150n, 'USD', true)).toBe('The lines are $1.50 more than the whole amount.')
})

test('both values of goods are told, and what counts', () => {
  const values = { documented: 8000n, byWeight: 6100n, lower: 6100n }
  expect(valuationSentence(values, 9000n, 'USD')).toBe(
    'By its paper $80.00, by weight $61.00: the lower one is $61.00. Of $90.00 only $61.00 counts, until both households mark the whole.',
  )
  expect(valuationSentence({ ...values, byWeight: undefined, lower: 8000n }, 8000n, 'USD')).toBe(
    'By its paper $80.00.',
  )
  expect(valuationSentence({ documented: undefined, byWeight: undefined, lower: undefined }, 1n, 'USD')).toBe(
    '',
  )
})

describe('where a line stands, as each household reads it', () => {
  const names = shareNames(plain)
  const held = { ...wire, amount: '112.40', marks }
  const more = { ...receipt, lines: [{ ...wire, amount: '7.60' }], amount: '7.60' }
  const half = { ...wire, amount: '120.00', marks: markedBy('b') }
  const read = (contributions: readonly object[], bought: readonly object[]) => {
    const [item] = plannedAgainstActual(notebookOf(contributions, { bought }), 2).items
    const [line] = item?.lines ?? []
    if (line === undefined) throw new Error('there is a line')
    return (['a', 'b'] as const).map((own) => lineStandingWords(line, own, names))
  }

  test('both marked it, and it still comes to that', () => {
    for (const { kind, text, more: said } of read([receipt], [held])) {
      expect([kind, text]).toEqual(['agreed', 'Marked as bought by both: the actual amount counts'])
      expect(said).toEqual(['No. 12 marked $112.40 on 1 April 2027, no. 14 on 1 April 2027.'])
    }
  })

  test('both marked it, and it has come to another amount since, of which nobody or one has said anything', () => {
    const text = 'Both marked $112.40; it has come to $120.00 since'
    const counts = '$112.40 counts until both mark another amount.'
    const both = 'No. 12 marked $112.40 on 1 April 2027, no. 14 on 1 April 2027.'
    for (const standing of read([receipt, more], [held]))
      expect(standing).toMatchObject({ kind: 'changed', text, more: [counts, both] })
    const [a, b] = read([receipt, more], [held, half])
    expect(a).toMatchObject({
      text,
      more: [counts, both, 'No. 14 marked $120.00 on 1 April 2027; that waits for your mark.'],
    })
    expect(b?.more.at(-1)).toBe('No. 14 marked $120.00 on 1 April 2027; that waits for no. 12.')
  })

  test('it came back to what both marked: a mark on another amount is told, and moves nothing', () => {
    for (const standing of read([receipt], [held, half])) {
      expect(standing.kind).toBe('agreed')
      expect(standing.more.at(-1)).toBe(
        'No. 14 marked $120.00 on 1 April 2027, which it does not come to now.',
      )
    }
  })

  test('more came back than was spent since both marked it', () => {
    const back = { ...receipt, kind: 'refund', amount: '200.00', lines: [{ ...wire, amount: '200.00' }] }
    expect(read([receipt, back], [held])[0]?.text).toBe(
      'Both marked $112.40; since then more came back than was spent',
    )
  })

  test('one has marked it, at what it comes to or at another amount', () => {
    expect(read([receipt, more], [half]).map(({ text }) => text)).toEqual([
      'No. 14 marked it as bought; it waits for your mark',
      'You marked it; it waits for no. 12',
    ])
    for (const { kind, text } of read([receipt], [half]))
      expect([kind, text]).toEqual([
        'changed',
        'Marked by one at another amount than it comes to now: the planned amount counts',
      ])
  })

  test('both marked that it was not needed', () => {
    expect(read([], [{ ...wire, amount: '0.00', marks }])[0]?.text).toBe(
      'Marked as not needed by both: it counts as nothing',
    )
  })
})

describe('the paper, once a line has come to another amount than both marked', () => {
  test('says which amount counts', () => {
    const more = { ...receipt, amount: '7.60', lines: [{ ...wire, amount: '7.60' }] }
    const [table] = actualBlocks(
      notebookOf([receipt, more], { bought: [{ ...wire, amount: '112.40', marks }] }),
    ).filter(({ kind }) => kind === 'table')
    expect(JSON.stringify(table)).toContain('"$112.40, as both marked it"')
  })
})

describe('a thing, as each household reads it', () => {
  const thing: Thing = {
    kind: 'leftover',
    what: 'wire, 6 ft',
    from: '',
    item: 's1',
    on: '',
    due: '',
    returned: '',
    household: 'b',
    sold: false,
    value: '12.00',
    marks: {},
  }
  const agreed = { ...thing, value: '20.00', marks }
  const names = shareNames(plain)
  const read = (one: Thing) => (['a', 'b'] as const).map((own) => thingStanding(one, own, names))

  test('changed since both marked it, and by whom the change was marked', () => {
    expect(read({ ...thing, agreed })).toEqual([
      'Changed since both marked it',
      'Changed since both marked it',
    ])
    expect(read({ ...thing, agreed, marks: markedBy('b') })).toEqual([
      'Changed; waits for your mark',
      'Changed; waits for no. 12',
    ])
    expect(thingAgreedWords(agreed, '$20.00', 'West side', names, false)).toBe(
      'Both marked “wire, 6 ft”, kept by no. 14: $20.00 off the materials of West side, and off what no. 14 has given. That counts until both mark it as it stands now.',
    )
  })

  test('taken off the list by one, and by both', () => {
    const off = { on, by: 'b' } as const
    expect(read({ ...thing, agreed, marks: markedBy('b'), off })).toEqual([
      'Taken off the list by no. 14; waits for your mark',
      'Taken off the list by no. 14; waits for no. 12',
    ])
    expect(read({ ...thing, marks, off })).toEqual(['Off the list', 'Off the list'])
  })
})
