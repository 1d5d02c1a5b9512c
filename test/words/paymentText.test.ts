import { describe, expect, test } from 'vitest'
import { agreedItems } from '../../lib/core/agreement/agreedItems.ts'
import { instalmentStanding } from '../../lib/core/ledger/instalmentStanding.ts'
import { type ConfirmingRefusal, waitingTransfers } from '../../lib/core/ledger/transfers.ts'
import { plannedStatement, statementOf } from '../../lib/core/shares/statement.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { differences, differenceWords } from '../../lib/words/differences.ts'
import { takeBackRefusals } from '../../lib/words/entryText.ts'
import { instalmentSentences, partStandingWords } from '../../lib/words/instalmentText.ts'
import { shareNames } from '../../lib/words/shareText.ts'
import { summaryContent } from '../../lib/words/summary/summaryContent.ts'
import {
  confirmingRefusalText,
  transferFieldWords,
  transferStanding,
  waitingTransferWords,
} from '../../lib/words/transferText.ts'
import { bothMarked, settledDocument } from '../core/ledger/settledBooks.ts'
import { readingGrade } from './readingGrade.ts'

const payment = {
  household: 'b',
  kind: 'transfer',
  amount: '152.00',
  date: '2027-05-18',
  means: 'by bank',
  waits: true,
}
function notebookWithPayments(...contributions: object[]) {
  const read = readDocument(settledDocument({ contributions }))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.value.notebook
}

describe('a payment between the households, in words', () => {
  const waiting = notebookWithPayments(payment)
  const names = shareNames(waiting)
  const { waits: _over, ...rest } = payment
  const [confirmed] = notebookWithPayments({
    ...rest,
    confirmed: { on: '2027-05-19', by: 'a' },
  }).contributions

  test('says that it waits and for whom, and who confirmed it when', () => {
    const [entry] = waiting.contributions
    if (entry === undefined || confirmed === undefined) throw new Error('the entries are there')
    expect(transferStanding(entry, names)).toEqual({
      kind: 'open',
      text: 'Said to be paid, not confirmed: it counts once No. 12 confirms it',
    })
    expect(transferStanding(confirmed, names)?.text).toBe('No. 12 confirmed it on 19 May 2027')
    const [transfer] = waitingTransfers(waiting, 2)
    expect(transfer && waitingTransferWords(transfer, names, 'USD')).toBe(
      '$152.00 is said to be paid by No. 14 to No. 12, by bank, on 18 May 2027. It is not confirmed, and counts once No. 12 confirms it.',
    )
  })

  test('says why it is not confirmed, in words that a twelve-year-old reads', () => {
    if (confirmed === undefined) throw new Error('the entry is there')
    const refusals = ['not a payment', 'taken back', 'confirmed already', 'not the receiver'] as const
    const said = refusals.map((refusal: ConfirmingRefusal) =>
      confirmingRefusalText(refusal, confirmed, names),
    )
    expect(new Set(said).size).toBe(4)
    expect(said[2]).toBe(
      'No. 12 confirmed this payment already, on 19 May 2027. It was not confirmed a second time, and counts once.',
    )
    expect(said[3]).toContain('Only No. 12 can confirm it')
    const all = [
      ...said,
      takeBackRefusals.confirmed,
      ...Object.values(transferFieldWords).map((words) => `${words}.`),
    ]
    expect(readingGrade(all.join('\n'))).toBeLessThanOrEqual(8)
  })

  test('stands in the books’ chapter of a paper as not confirmed, and is in no sum there', () => {
    const words = JSON.stringify(
      summaryContent({
        notebook: waiting,
        statement: plannedStatement(waiting),
        actual: statementOf(waiting),
        standing: { kind: 'draft', sha256: '0'.repeat(64) },
        signatures: [],
        booksAsOf: '2027-06-01',
      }),
    )
    expect(words).toContain('not confirmed: $152.00')
    expect(words).toContain('Means: by bank.')
    expect(words).toContain('["Given so far","$0.00","$0.00"]')
  })
})

describe('a payment plan in words', () => {
  const plan = {
    from: 'b' as const,
    total: '300.00',
    parts: [
      { on: '2027-05-01', amount: '100.00' },
      { on: '2027-06-01', amount: '100.00' },
      { on: '2027-07-01', amount: '100.00' },
    ],
  }
  const paid = { index: 0, from: 'b', to: 'a', date: '2027-05-02', means: '' } as const
  const standing = instalmentStanding(plan, [{ ...paid, amount: 15_000n }], '2027-06-15', 2)

  test('says of each instalment whether it is paid, overdue or not due yet, and what is missing', () => {
    expect(standing.parts.map((part) => partStandingWords(part, 'USD'))).toEqual([
      'paid on 2 May 2027',
      'overdue: $50.00 is still missing',
      'not due yet: $100.00 to pay',
    ])
  })

  test('says what is paid, what is left, and what is overdue', () => {
    expect(instalmentSentences(standing, { a: 'No. 12', b: 'No. 14' }, 'USD').slice(0, 2)).toEqual([
      'No. 14 pays $300.00 to No. 12 in instalments. $150.00 is paid, and $150.00 is left.',
      '$50.00 of the plan is overdue.',
    ])
  })

  const told = (still: bigint, amount = 15_000n) => {
    const held = instalmentStanding(plan, [{ ...paid, amount }], '2027-06-15', 2, still)
    return [
      ...held.parts.map((part) => partStandingWords(part, 'USD')),
      ...instalmentSentences(held, { a: 'No. 12', b: 'No. 14' }, 'USD').slice(0, -1),
    ]
  }

  test('says what the balance asks for no more, and misses none of it', () => {
    expect(told(8000n)).toEqual([
      'paid on 2 May 2027',
      'met otherwise',
      'not due yet: $80.00 still to pay',
      'No. 14 pays $300.00 to No. 12 in instalments. $150.00 is paid, $70.00 is met otherwise, and $80.00 is left.',
      'Met otherwise: No. 14 has only $80.00 left to bring in money, since what it gave in other ways counts too (to a supplier, in goods, in hours), or the fence asks for less of it now. The earliest instalments that are not paid are met first.',
    ])
    expect(told(0n)[3]).toBe(
      'No. 14 pays $300.00 to No. 12 in instalments. $150.00 is paid, $150.00 is met otherwise, and nothing of the plan is left to pay.',
    )
  })

  test('says by how much it falls short', () => {
    expect(told(17_000n)).toContain(
      'The plan falls short by $20.00: No. 14 is still to bring $170.00 in money, and the plan has $150.00 left.',
    )
    expect(told(500n, 30_000n)).toContain(
      'The plan falls short by $5.00: No. 14 is still to bring $5.00 in money, and the plan has nothing left.',
    )
  })
})

test('what an item came to beyond the tolerance is told as a change of it', () => {
  const wire = { item: 's1', pot: 'materials', what: 'wire', place: '1' }
  const at = (amount: string) =>
    agreedItems(
      settledDocument({
        contributions: [
          { household: 'a', kind: 'cash', amount, date: '2027-05-03', lines: [{ ...wire, amount }] },
        ],
        books: { bought: [{ ...wire, amount, marks: bothMarked }] },
      }),
    ).find(({ key }) => key === 'item:s1')?.inputs
  expect(differences(at('100.00'), at('130.01')).map(differenceWords)).toEqual([
    'Cost so far: now $330.01, further above the plan than the tolerance agreed on',
  ])
})
