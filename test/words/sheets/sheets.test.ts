import { describe, expect, test } from 'vitest'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { exampleDocument } from '../../../lib/forms/exampleNotebook.ts'
import { newNotebook } from '../../../lib/forms/newNotebook.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import type { AccountOnSheet } from '../../../lib/words/sheets/buyerMoney.ts'
import { buyerSheet } from '../../../lib/words/sheets/buyerSheet.ts'
import { landRecordsPage } from '../../../lib/words/sheets/landRecordsPage.ts'
import { permitSheet } from '../../../lib/words/sheets/permitSheet.ts'
import type { SheetBlock } from '../../../lib/words/sheets/sheetBlock.ts'
import type { SummaryInput } from '../../../lib/words/summary/summaryInput.ts'
import { notebookWith, sectionOf } from '../../core/madeNotebook.ts'

function notebookOf(document: object): Notebook {
  const read = readNotebook(JSON.stringify(document))
  if (!read.ok) throw new Error('a notebook that holds')
  return read.value.notebook
}

function summaryOf(notebook: Notebook): SummaryInput {
  return {
    notebook,
    statement: statementOf(notebook),
    standing: {
      kind: 'signed',
      number: 2,
      sha256: '0'.repeat(64),
      frozenAt: new Date('2027-04-01T10:00:00Z'),
    },
    signatures: [],
    booksAsOf: '2027-05-01',
  }
}

/** Everything that a reader sees, with plain blanks. */
function textOf(blocks: readonly SheetBlock[]): string {
  return JSON.stringify(blocks).replace(/\u00a0/g, ' ')
}

const example = notebookOf(exampleDocument())
const permit = textOf(permitSheet(summaryOf(example), takeOff(example)))
const buyer = textOf(buyerSheet(summaryOf(example), takeOff(example)))
const records = textOf(landRecordsPage(summaryOf(example)))

describe('the sheet for a permit office', () => {
  test('says who, what stands where off the line, how high from each side, and what was answered', () => {
    expect(permit).toContain('Marnie Oakshott, owner')
    expect(permit).toContain('Section 1: Lane to the gardens, 0 ft to 24 ft')
    expect(permit).toContain('2 in off the line, on the land of no. 12')
    expect(permit).toContain('Seen by no. 12')
    expect(permit).toContain('falls toward the lane')
    expect(permit).toContain('No permit needed up to 6 ft')
    expect(permit).toContain('Still open.')
  })

  test('says of which part nobody wrote the ground or the setback down', () => {
    const stations = [
      { at: '0 ft', setback: { side: 'a', distance: '2 in' }, gradeA: '0 in', gradeB: '-3 in' },
      { at: '90 ft', gradeA: '0 in' },
    ]
    const height = { agreed: '6 ft', measuredFrom: 'a' }
    const section = { ...sectionOf('10', { principle: 'equal' }), from: '0 ft', to: '90 ft', height }
    const notebook = notebookWith({ line: { stations }, sections: [section] })
    const text = textOf(permitSheet(summaryOf(notebook), takeOff(notebook)))
    expect(text).toContain('2 in off the line, on the land of no. 12; of a part of it nothing is said')
    expect(text).toContain('The ground of no. 14 is said at 0 ft only. Elsewhere it is taken as level')
    expect(permit).not.toContain('taken as level')
    expect(permit).not.toContain('nothing is said')
  })

  test('tells no money, no hours and nobody’s share', () => {
    expect(permit).not.toMatch(/\$|hour|asked for|share/i)
  })

  test('gives the greatest height of each stretch alone, redone by hand', () => {
    const rows = permitSheet(summaryOf(example), takeOff(example)).flatMap((block) =>
      block.kind === 'table' && block.caption.startsWith('What stands where') ? block.rows : [],
    )
    const seen = rows.map(({ cells }) => cells.slice(2, 4).map((cell) => cell.replace(/\u00a0/g, ' ')))
    // Section 1 is 4 ft over the higher ground, that of a. b lies lower by 6 in at 0 ft and by 7 in at 24 ft (4 in and
    // -3 in). The post at 24 ft is 6 ft high, but that is section 2.
    expect(seen[0]).toEqual(['4 ft', '4 ft 7 in'])
    // Section 2 is 6 ft; b lies lower by 7 in at 24 ft and by 9 in at 56 ft (1 ft 2 in and 5 in).
    expect(seen[1]).toEqual(['6 ft', '6 ft 9 in'])
    expect(seen).toHaveLength(5)
  })
})

describe('the sheet for a later buyer', () => {
  test('says who owns and keeps what, and what was agreed', () => {
    expect(buyer).toContain('["Section 5: Orchard end","112 ft to 132 ft","no. 14","no. 14"]')
    expect(buyer).toContain('no. 12 was asked for $4,834.70 and no. 14 for $3,873.70')
  })

  test('names tube sizes for repairs, and posts by their distance from the start', () => {
    expect(buyer).toContain('pipe for posts, 2 3/8 in round, wall 0.154 in')
    expect(buyer).toContain('from its start, iron pin at the lane: post 1, end post, at 0 ft')
  })

  test('says whether money is open', () => {
    const owing = notebookOf({
      ...exampleDocument(),
      contributions: [{ household: 'a', kind: 'cash', amount: '9000.00', date: '2027-04-02' }],
    })
    const text = textOf(buyerSheet(summaryOf(owing), takeOff(owing)))
    expect(text).toMatch(/Money is open as of 1 May 2027: no\. 14 owes \$[0-9,.]+ to no\. 12/)
  })

  /** Halves of a line of $900.00: each is asked for $450.00, and a bought $300.00 of it so far. */
  function moneyOf(parts: Record<string, unknown>, account?: AccountOnSheet): string {
    const notebook = notebookWith({ sections: [sectionOf('900', { principle: 'equal' })], ...parts })
    return textOf(buyerSheet(summaryOf(notebook), takeOff(notebook), account))
  }
  const cash = (household: 'a' | 'b', amount: string) => ({
    household,
    kind: 'cash',
    amount,
    date: '2027-04-02',
  })
  const allGiven = { contributions: [cash('a', '450'), cash('b', '450')] }
  const signedOn = new Date('2027-04-20T10:00:00Z')

  test('tells what is still to come apart from the balance of what was given so far', () => {
    const instalments = { from: 'b', total: '200', parts: [{ on: '2027-06-01', amount: '200' }] }
    const text = moneyOf({ contributions: [cash('a', '300')], arrangements: { instalments } })
    expect(text).toContain('Given as of 1 May 2027: $300.00 by no. 12 and $0.00 by no. 14.')
    expect(text).toContain('On that alone no payment between the two is due.')
    expect(text).toContain('Still to be given of what was planned: $600.00.')
    expect(text).toContain('By the payment plan no. 14 has still to pay $200.00 to no. 12.')
    expect(text).not.toContain('Neither owes the other anything')
  })

  test('says whether a final account was signed by all', () => {
    expect(moneyOf(allGiven)).toContain('That is all that was asked for. No final account is signed')
    expect(moneyOf(allGiven, { number: 1 })).toContain('Final account 1 is drawn up but not signed by all')
    expect(moneyOf(allGiven, { number: 1, signedOn })).toContain(
      'All have signed final account 1, last on 20 April 2027: nothing is owed',
    )
  })

  test('does not say that nothing is owed where the books were changed after the final account', () => {
    const text = moneyOf({ contributions: [cash('a', '500'), cash('b', '450')] }, { number: 1, signedOn })
    expect(text).toContain('$50.00 more has been given than was asked for.')
    expect(text).toContain('last on 20 April 2027; the books were changed since.')
    expect(text).not.toContain('nothing is owed')
  })

  test('says whom it binds and whom not', () => {
    expect(buyer).toContain('It may not bind whoever buys either home, unless it is put on the land records.')
  })
})

describe('the page for the land records', () => {
  test('has room for what only title, a lawyer and a notary can fill in, and says to ask a lawyer', () => {
    expect(records).toContain('Names as on title, and legal description of the parcel of no. 12')
    expect(records).toContain('Notary or recording officer')
    expect(records).toContain('Ask a lawyer before you record this')
    expect(records.match(/"kind":"room"/g)).toHaveLength(6)
  })

  test('says of each part who owns it and who keeps it, as far as that was said', () => {
    const part = (more: object) => ({ ...sectionOf('900', { principle: 'equal' }), ...more })
    const text = textOf(
      landRecordsPage(
        summaryOf(
          notebookWith({
            sections: [
              part({ id: 's1', owner: 'a', upkeep: 'both' }),
              part({ id: 's2', upkeep: 'b' }),
              part({ id: 's3', owner: 'both' }),
            ],
            gates: [part({ id: 'g1' })],
          }),
        ),
      ),
    )
    expect(text).toMatch(/Section 1[^"]*: owned by no\. 12, kept by both households"/)
    expect(text).toMatch(/Section 2[^"]*: kept by no\. 14; it is not said who owns it"/)
    expect(text).toMatch(/Section 3[^"]*: owned by both households; it is not said who keeps it"/)
    expect(text).toMatch(/Gate 1[^"]*: it is not said who owns it and who keeps it"/)
    expect(text).not.toContain('by not said')
  })

  test('tells no money', () => {
    expect(records).not.toContain('$')
  })
})

test('an empty notebook has sheets too, which say what is not said', () => {
  const empty = notebookOf(
    newNotebook({ title: '', currency: 'USD', households: { a: { name: 'A' }, b: { name: 'B' } } }),
  )
  const summary = summaryOf(empty)
  expect(textOf(permitSheet(summary, takeOff(empty)))).toContain('a start that is not described')
  expect(textOf(buyerSheet(summary, takeOff(empty)))).toContain('Still open.')
  expect(textOf(landRecordsPage(summary))).toContain('Memorandum of a fence agreement')
})
