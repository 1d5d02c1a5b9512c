import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { minorUnits, moneyText } from '../../../lib/core/amounts/money.ts'
import { actualsOf } from '../../../lib/core/ledger/actual.ts'
import { type FindLine, lineFinder, lineName, plannedLines } from '../../../lib/core/ledger/findLine.ts'
import {
  givenByJournal,
  type JournalEntry,
  journalOf,
  trialBalance,
} from '../../../lib/core/ledger/journal.ts'
import { plannedAgainstActual } from '../../../lib/core/ledger/plannedAgainstActual.ts'
import { countedThings } from '../../../lib/core/ledger/things.ts'
import {
  digitsOf,
  plannedStatement,
  type Statement,
  statementOf,
} from '../../../lib/core/shares/statement.ts'
import { addContribution, changeEntry, moveSpentLine, strikeContribution } from '../../../lib/forms/book.ts'
import { markBought, unmarkBought } from '../../../lib/forms/books.ts'
import { bothMarked, withMark } from '../../../lib/forms/booksLists.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import {
  markThing,
  putThing,
  putThingBack,
  takeThingOff,
  thingAsTyped,
  unmarkThing,
} from '../../../lib/forms/things.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'

/** What somebody does in the books, by random numbers that choose among what there is. */
type Doing = {
  readonly what:
    | 'enter'
    | 'strike'
    | 'mark'
    | 'unmark'
    | 'thing'
    | 'change thing'
    | 'mark thing'
    | 'unmark thing'
    | 'take thing off'
    | 'put thing back'
    | 'value'
    | 'move'
  readonly household: 'a' | 'b'
  readonly kind: 'cash' | 'material' | 'hours' | 'transfer' | 'refund'
  readonly minor: bigint
  readonly part: bigint
  readonly pick: number
}

const doing: fc.Arbitrary<Doing> = fc.record({
  what: fc.constantFrom(
    'enter',
    'enter',
    'enter',
    'strike',
    'mark',
    'mark',
    'mark',
    'unmark',
    'thing',
    'change thing',
    'mark thing',
    'mark thing',
    'mark thing',
    'unmark thing',
    'take thing off',
    'put thing back',
    'value',
    'move',
  ),
  household: fc.constantFrom('a', 'b'),
  kind: fc.constantFrom('cash', 'cash', 'material', 'hours', 'transfer', 'refund'),
  minor: fc.bigInt({ min: 0n, max: 90_000n }),
  part: fc.bigInt({ min: 0n, max: 90_000n }),
  pick: fc.nat({ max: 1000 }),
})

const busyDoing: fc.Arbitrary<Doing> = doing.chain((one) =>
  fc
    .constantFrom<Doing['what'][]>(
      ...(['enter', 'mark', 'mark', 'mark', 'mark', 'unmark', 'strike'] as const),
      ...(['thing', 'change thing', 'mark thing', 'mark thing', 'take thing off', 'put thing back'] as const),
    )
    .map((what) => ({ ...one, what, kind: 'cash' as const })),
)

const on = '2027-04-01'

function listOf(value: unknown): readonly Record<string, unknown>[] {
  return Array.isArray(value) ? value : []
}

function thingsOf(document: NotebookDocument) {
  return listOf((document.books as { things?: unknown } | undefined)?.things)
}

function doIt(document: NotebookDocument, one: Doing): NotebookDocument {
  const { household, pick } = one
  const notebook = readMade(document)
  const digits = digitsOf(notebook)
  const find = lineFinder(notebook)
  const lines = plannedLines(notebook)
  const line = lines[pick % Math.max(lines.length, 1)]
  const entries = notebook.contributions.length
  const things = thingsOf(document).length
  switch (one.what) {
    case 'enter':
      return addContribution(document, entryOf(one, notebook, digits), household)
    case 'strike': {
      const struck = { on, by: household, why: 'twice' }
      return strikeContribution(document, pick % Math.max(entries, 1), struck, () => true) ?? document
    }
    case 'mark':
      return line === undefined ? document : marked(document, notebook, find, line, household, digits)
    case 'unmark':
      return line === undefined
        ? document
        : unmarkBought(document, (of) => find(of)?.path === line.path, household)
    case 'thing':
      return putThing(document, undefined, thingOf(one, notebook, digits))
    case 'change thing': {
      const thing = thingsOf(document)[pick % Math.max(things, 1)]
      if (thing === undefined) return document
      const { value } = thingOf(one, notebook, digits)
      const typed = thingAsTyped(thing)
      // One change in three moves it to another item and leaves its value.
      const changed = one.minor % 3n === 0n ? { item: itemAt(Number(one.minor / 3n), notebook) } : { value }
      return putThing(document, pick % things, { ...typed, ...changed })
    }
    case 'mark thing':
      return things === 0 ? document : markThing(document, pick % things, { household, on })
    case 'unmark thing':
      return unmarkThing(document, pick % Math.max(things, 1), household)
    case 'take thing off':
      return takeThingOff(document, pick % Math.max(things, 1), { household, on })
    case 'put thing back':
      return putThingBack(document, pick % Math.max(things, 1))
    case 'value':
      return entries === 0
        ? document
        : changeEntry(document, pick % entries, (entry) =>
            entry.valuation && !bothMarked(entry.valuation as object as Json)
              ? { ...entry, valuation: withMark(entry.valuation as object as Json, { household, on }) }
              : entry,
          )
    case 'move':
      return entries === 0
        ? document
        : moveSpentLine(document, { entry: pick % entries, line: 0 }, line && lineName(line))
  }
}

type Json = Record<string, unknown>

function entryOf({ kind, household, minor, part, pick }: Doing, notebook: Notebook, digits: number): Json {
  const lines = plannedLines(notebook)
  const line = lines[pick % Math.max(lines.length, 1)]
  const amount = moneyText(minor, digits)
  if (kind === 'hours') {
    const task = line?.pot === 'labour' ? { for: line.itemId, task: line.what } : {}
    return { household, kind, hours: String(pick % 30), rate: '22.5', date: on, ...task }
  }
  const spent = moneyText(part < minor ? part : minor, digits)
  // Every seventh was for a line that is in no plan.
  const named =
    pick % 7 === 0 ? { item: 's99', pot: 'materials', what: 'gone', place: '1' } : line && lineName(line)
  return {
    household,
    kind,
    amount,
    date: on,
    lines: named === undefined ? [] : [{ ...named, amount: spent }],
    valuation:
      pick % 3 === 0
        ? { documented: moneyText(part, digits), weight: '12.5', unit: 'lb', yardPrice: '3' }
        : {},
  }
}

function marked(
  document: NotebookDocument,
  notebook: Notebook,
  find: FindLine,
  line: ReturnType<typeof plannedLines>[number],
  household: 'a' | 'b',
  digits: number,
): NotebookDocument {
  const actual = actualsOf(notebook, digits).byPath.get(line.path)?.amount ?? 0n
  if (actual < 0n) return document
  const isMeant = (of: Parameters<FindLine>[0]) => find(of)?.path === line.path
  return markBought(document, lineName(line), isMeant, moneyText(actual, digits), { household, on })
}

function itemAt(pick: number, notebook: Notebook): string | undefined {
  const items = [...notebook.sections, ...notebook.gates, ...notebook.common].map(({ id }) => id)
  return items[pick % Math.max(items.length, 1)]
}

function thingOf({ household, minor, pick }: Doing, notebook: Notebook, digits: number): Json {
  const item = itemAt(pick, notebook)
  return {
    kind: pick % 4 === 0 ? 'borrowed' : pick % 2 === 0 ? 'leftover' : 'salvage',
    what: 'left over',
    household,
    value: moneyText(minor / 10n, digits),
    ...(item === undefined ? {} : { item }),
  }
}

/** A notebook, what is done in its books, and every state of it from the first. */
type Kept = { readonly states: readonly Notebook[]; readonly doings: readonly Doing[] }

function keptAs([document, doings]: readonly [NotebookDocument, readonly Doing[]]): Kept {
  const states: NotebookDocument[] = [document]
  for (const one of doings) {
    const next = doIt(states.at(-1) ?? document, one)
    const read = readDocument(next)
    if (!read.ok) throw new Error(`${one.what} breaks the file: ${JSON.stringify(read.faults)}`)
    states.push(next)
  }
  return { states: states.map(readMade), doings }
}

const keptSteps = fc.tuple(randomNotebook, fc.array(doing, { minLength: 1, maxLength: 12 })).map(keptAs)

/** The same where both are busy with one line, so that marks meet, and lines move after both marked them. */
const busySteps = fc
  .tuple(
    randomNotebook,
    fc.nat({ max: 100 }).map((pick) => 7 * pick + 1),
    fc.array(busyDoing, { minLength: 12, maxLength: 30 }),
  )
  .map(([document, pick, doings]) => keptAs([document, doings.map((one) => ({ ...one, pick }))]))

/** The same where both are busy with one thing that is there from the first. */
const stepsOnOneThing = fc
  .tuple(
    randomNotebook,
    fc.constantFrom(1, 2, 3),
    fc.array(
      doing.chain((one) =>
        fc
          .constantFrom<Doing['what'][]>(
            ...(['mark thing', 'mark thing', 'mark thing', 'change thing', 'change thing'] as const),
            ...(['unmark thing', 'take thing off', 'put thing back'] as const),
          )
          .map((what) => ({ ...one, what })),
      ),
      { minLength: 8, maxLength: 16 },
    ),
  )
  .map(([document, pick, [first, ...others]]) =>
    keptAs([
      document,
      first === undefined
        ? []
        : [{ ...first, what: 'thing', pick }, ...others.map((one) => ({ ...one, pick }))],
    ]),
  )
const keptBooks = keptSteps.map(({ states }) => states)

function sides(entry: JournalEntry): readonly [bigint, bigint] {
  const sum = (side: 'debit' | 'credit') =>
    entry.postings.filter((one) => one.side === side).reduce((total, { amount }) => total + amount, 0n)
  return [sum('debit'), sum('credit')]
}

function heldStatement(notebook: Notebook): Statement | undefined {
  const statement = statementOf(notebook)
  return statement.ok ? statement.value : undefined
}

describe('the books in double entry, after any sequence of what can be done in them', () => {
  test('every entry balances, and the trial balance is zero', () => {
    fc.assert(
      fc.property(keptBooks, (states) => {
        for (const notebook of states) {
          const journal = journalOf(notebook, heldStatement(notebook)?.asked)
          for (const entry of journal) {
            const [debit, credit] = sides(entry)
            expect(debit).toBe(credit)
            expect(debit > 0n).toBe(true)
          }
          const { rows, debit, credit } = trialBalance(journal)
          expect(debit).toBe(credit)
          expect(rows.reduce((sum, { balance }) => sum + balance, 0n)).toBe(0n)
        }
      }),
    )
  })

  test('the households’ accounts are what the statement says was given and is left to give', () => {
    fc.assert(
      fc.property(keptBooks, (states) => {
        for (const notebook of states) {
          const statement = heldStatement(notebook)
          if (statement === undefined) continue
          const journal = journalOf(notebook, statement.asked)
          expect(givenByJournal(journal)).toEqual(statement.contributed)
          const balance = new Map(trialBalance(journal).rows.map((row) => [row.account, row.balance]))
          expect({ a: balance.get('a'), b: balance.get('b') }).toEqual(statement.balance)
          // Whoever sells is paid and whoever buys has paid; what the plan asks for and nobody has met is outstanding.
          expect(balance.get('suppliers')).toBe(0n)
          expect(-(balance.get('plan') ?? 0n) - (balance.get('fence') ?? 0n)).toBe(statement.outstanding)
        }
      }),
    )
  })

  test('what is on lines, on items, on nothing and on lines that are gone is all that was given', () => {
    fc.assert(
      fc.property(keptBooks, (states) => {
        for (const notebook of states) {
          const digits = digitsOf(notebook)
          const standing = plannedAgainstActual(notebook, digits)
          const given = givenByJournal(journalOf(notebook, undefined))
          const signOf = (entry: number) => (notebook.contributions[entry]?.kind === 'refund' ? -1n : 1n)
          const gone = standing.actuals.gone.reduce((sum, one) => sum + signOf(one.entry) * one.amount, 0n)
          const onItems = standing.items.reduce(
            (sum, item) => sum + item.onLines + item.onNoLine - item.things,
            0n,
          )
          expect(onItems + standing.onNothing + gone).toBe(given.a + given.b)
        }
      }),
    )
  })

  test('each item comes to what the statement says of it', () => {
    fc.assert(
      fc.property(keptBooks, (states) => {
        for (const notebook of states) {
          const statement = heldStatement(notebook)
          if (statement === undefined) continue
          const { items } = plannedAgainstActual(notebook, digitsOf(notebook))
          expect(items.map(({ counts }) => counts)).toEqual(statement.items.map(({ total }) => total))
        }
      }),
    )
  })

  test('the plan as it is signed is moved by nothing that is done in them', () => {
    fc.assert(
      fc.property(keptBooks, (states) => {
        const sharesOf = (notebook: Notebook) => {
          const planned = plannedStatement(notebook)
          return planned.ok
            ? [planned.value.items, planned.value.asked, planned.value.promised]
            : planned.faults
        }
        for (const notebook of states) expect(sharesOf(notebook)).toEqual(sharesOf(states[0] ?? notebook))
      }),
    )
  })

  test('a line counts at what both marked last, and as planned where they never did', () => {
    fc.assert(
      fc.property(busySteps, ({ states }) => {
        for (const notebook of states) {
          const digits = digitsOf(notebook)
          const find = lineFinder(notebook)
          const held = new Map(
            notebook.books.bought.flatMap((bought) => {
              const { a, b } = bought.marks
              return a === undefined || b === undefined ? [] : [[find(bought)?.path, bought.amount]]
            }),
          )
          for (const { lines } of plannedAgainstActual(notebook, digits).items)
            for (const { line, bought, counts, planned, moved, actual } of lines) {
              const marked = held.get(line.path)
              const credit = line.pot === 'materials' && line.line.credit
              const amount = marked === undefined ? planned : minorUnits(marked, digits)
              expect(counts).toBe(marked !== undefined && credit ? -amount : amount)
              expect(bought).toBe(marked !== undefined)
              expect(moved).toBe(bought && counts !== actual)
            }
        }
      }),
    )
  })

  test('one household alone moves no line: each step that does has the other’s mark before it', () => {
    fc.assert(
      fc.property(busySteps, ({ states, doings }) => {
        doings.forEach(({ what, household }, step) => {
          const [before, after] = [states[step], states[step + 1]]
          if (before === undefined || after === undefined)
            throw new Error('a state before and after each step')
          const digits = digitsOf(before)
          const other = household === 'a' ? 'b' : 'a'
          const linesOf = (notebook: Notebook) =>
            plannedAgainstActual(notebook, digits).items.flatMap(({ lines }) => lines)
          const then = linesOf(after)
          linesOf(before).forEach((line, at) => {
            if (line.counts === then[at]?.counts) return
            expect(what).toBe('mark')
            expect(line.marks.pending[other]?.amount).toBe(line.markable)
          })
        })
      }),
      { numRuns: 150 },
    )
  })

  test('one household alone moves no thing, neither its value nor who has it nor the item that it is of', () => {
    fc.assert(
      fc.property(stepsOnOneThing, ({ states, doings }) => {
        doings.forEach(({ what, household }, step) => {
          const [before, after] = [states[step], states[step + 1]]
          if (before === undefined || after === undefined)
            throw new Error('a state before and after each step')
          const digits = digitsOf(before)
          const other = household === 'a' ? 'b' : 'a'
          const [was, is] = [countedThings(before, digits), countedThings(after, digits)]
          for (const index of before.books.things.keys()) {
            const [one, now] = [was, is].map((counted) => counted.find((thing) => thing.index === index))
            const same =
              one?.value === now?.value && one?.household === now?.household && one?.item === now?.item
            if (same) continue
            expect(what).toBe('mark thing')
            expect(before.books.things[index]?.marks[other]).toBeDefined()
          }
        })
      }),
      { numRuns: 150 },
    )
  })

  test('what is done there moves lines after both marked them, and has both mark again: the laws look at something', () => {
    let moved = 0
    let markedAgain = 0
    for (const { states } of fc.sample(busySteps, { numRuns: 60, seed: 1 }))
      for (const [at, notebook] of states.entries()) {
        const linesOf = (one: Notebook) =>
          plannedAgainstActual(one, digitsOf(one)).items.flatMap(({ lines }) => lines)
        const [lines, before] = [linesOf(notebook), linesOf(states[at - 1] ?? notebook)]
        moved += lines.filter((line) => line.moved).length
        markedAgain += lines.filter(
          (line, place) => before[place]?.bought && line.counts !== before[place].counts,
        ).length
      }
    expect(moved).toBeGreaterThan(20)
    expect(markedAgain).toBeGreaterThan(5)
    let toAnotherItem = 0
    for (const { states } of fc.sample(stepsOnOneThing, { numRuns: 60, seed: 1 }))
      toAnotherItem += states
        .flatMap((notebook) => notebook.books.things)
        .filter(({ agreed, item }) => agreed !== undefined && agreed.item !== item).length
    expect(toAnotherItem).toBeGreaterThan(5)
  })

  test('a household has one mark at most on a line that waits for the other’s', () => {
    fc.assert(
      fc.property(busySteps, ({ states }) => {
        for (const notebook of states) {
          const find = lineFinder(notebook)
          const alone = notebook.books.bought.flatMap((bought) => {
            const [only, more] = Object.keys(bought.marks)
            return more === undefined ? [`${only} ${find(bought)?.path}`] : []
          })
          expect(new Set(alone).size).toBe(alone.length)
        }
      }),
    )
  })
})
