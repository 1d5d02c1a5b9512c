import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { contributed } from '../../../lib/core/ledger/contributed.ts'
import { journalOf, trialBalance } from '../../../lib/core/ledger/journal.ts'
import {
  confirmingRefusal,
  transfersThatCount,
  waitingTransfers,
} from '../../../lib/core/ledger/transfers.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { withTransferConfirmed, withTransferEntered } from '../../../lib/forms/transfers.ts'
import { documentWith, notebookWith } from '../madeNotebook.ts'

const paid = { household: 'b', kind: 'transfer', amount: '120.00', date: '2027-05-04', means: 'by bank' }
const readBack = (document: Parameters<typeof readDocument>[0]) => {
  const read = readDocument(document)
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.value.notebook
}

describe('a payment between the households', () => {
  test('counts as nothing for either while its receiver has not confirmed it', () => {
    const { contributions } = notebookWith({ contributions: [{ ...paid, waits: true }] })
    expect(contributed(contributions, 2)).toEqual({ a: 0n, b: 0n })
  })

  test('entered by the one who paid, it waits', () => {
    const notebook = readBack(withTransferEntered(documentWith({ contributions: [paid] }), 'b', '2027-05-05'))
    expect(waitingTransfers(notebook, 2)).toEqual([
      { index: 0, from: 'b', to: 'a', amount: 12000n, date: '2027-05-04', means: 'by bank' },
    ])
    expect(transfersThatCount(notebook, 2)).toEqual([])
  })

  test('entered by the one who received it, it is confirmed at once, whatever the form says of that', () => {
    const forged = { ...paid, waits: true, confirmed: { on: '2020-01-01', by: 'b' } }
    const notebook = readBack(
      withTransferEntered(documentWith({ contributions: [forged] }), 'a', '2027-05-05'),
    )
    expect(notebook.contributions[0]).toMatchObject({
      waits: false,
      confirmed: { on: '2027-05-05', by: 'a' },
    })
    expect(contributed(notebook.contributions, 2)).toEqual({ a: -12000n, b: 12000n })
  })

  test('no other kind of entry is made to wait', () => {
    const document = documentWith({
      contributions: [{ household: 'b', kind: 'cash', amount: '5.00', date: '2027-05-04' }],
    })
    expect(withTransferEntered(document, 'b', '2027-05-05')).toBe(document)
  })

  test('is confirmed by its receiver alone, and once', () => {
    const entered = withTransferEntered(documentWith({ contributions: [paid] }), 'b', '2027-05-05')
    const [waiting] = readBack(entered).contributions
    if (waiting === undefined) throw new Error('the entry is not there')
    expect(confirmingRefusal(waiting, 'b')).toBe('not the receiver')
    expect(confirmingRefusal(waiting, 'a')).toBeUndefined()

    const confirmed = readBack(withTransferConfirmed(entered, 0, { on: '2027-05-06', by: 'a' }))
    const [now] = confirmed.contributions
    if (now === undefined) throw new Error('the entry is not there')
    expect(confirmingRefusal(now, 'a')).toBe('confirmed already')
    expect(contributed(confirmed.contributions, 2)).toEqual({ a: -12000n, b: 12000n })
  })

  test('that was taken back, or is none, can’t be confirmed', () => {
    const struck = { on: '2027-05-06', by: 'b', why: 'sent to the wrong account' }
    const [back, cash] = notebookWith({
      contributions: [
        { ...paid, waits: true, struck },
        { household: 'b', kind: 'cash', amount: '5.00', date: '2027-05-04' },
      ],
    }).contributions
    if (back === undefined || cash === undefined) throw new Error('the entries are not there')
    expect(confirmingRefusal(back, 'a')).toBe('taken back')
    expect(confirmingRefusal(cash, 'a')).toBe('not a payment')
  })

  test('payments that count come by their days, those of one day in the order of the book', () => {
    const on = (date: string, amount: string) => ({ ...paid, date, amount })
    const notebook = notebookWith({
      contributions: [on('2027-06-01', '1.00'), on('2027-05-01', '2.00'), on('2027-06-01', '3.00')],
    })
    expect(transfersThatCount(notebook, 2).map(({ amount }) => amount)).toEqual([200n, 100n, 300n])
  })

  test('whatever is paid, waits, is confirmed or taken back: both sides of the journal are equal, and waiting moves nothing', () => {
    const entry = fc.record({
      household: fc.constantFrom('a', 'b'),
      amount: fc.integer({ min: 0, max: 999_999 }).map((cents) => (cents / 100).toFixed(2)),
      waits: fc.boolean(),
      struck: fc.option(fc.constant({ on: '2027-06-01', by: 'a', why: 'wrong' }), { nil: undefined }),
    })
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 8 }), (entries) => {
        const contributions = entries.map(({ struck, ...one }) => ({
          ...paid,
          ...one,
          ...(struck && { struck }),
        }))
        const notebook = notebookWith({ contributions })
        const { debit, credit } = trialBalance(journalOf(notebook, undefined))
        expect(debit).toBe(credit)
        const silent = notebookWith({ contributions: contributions.filter(({ waits }) => !waits) })
        expect(contributed(notebook.contributions, 2)).toEqual(contributed(silent.contributions, 2))
      }),
    )
  })
})
