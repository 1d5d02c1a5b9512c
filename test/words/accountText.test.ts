import { describe, expect, test } from 'vitest'
import type { OpenForAccount } from '../../lib/core/ledger/openForAccount.ts'
import { plannedAgainstActual } from '../../lib/core/ledger/plannedAgainstActual.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import {
  accountIntent,
  accountRefusals,
  accountWords,
  openForAccountWords,
} from '../../lib/words/account/accountText.ts'
import { shareNames } from '../../lib/words/shareText.ts'
import { settledDocument } from '../core/ledger/settledBooks.ts'
import { readingGrade } from './readingGrade.ts'

const read = readDocument(settledDocument())
if (!read.ok) throw new Error(JSON.stringify(read.faults))
const { notebook } = read.value
const [section] = plannedAgainstActual(notebook, 2).items
if (section === undefined) throw new Error('there is a section')

const [{ line: wire } = { line: undefined }] = section.lines
if (wire === undefined) throw new Error('there is a line')

const inWords = (open: OpenForAccount) =>
  openForAccountWords(open, shareNames(notebook), () => 'Along the gardens')

const said: readonly (readonly [OpenForAccount, string])[] = [
  [
    { kind: 'nothing signed' },
    'There is no revision yet that all have signed, so there is nothing to settle.',
  ],
  [
    { kind: 'lines', item: section, lines: ['wire'] },
    'Along the gardens, still to be marked by both as bought, worked or not needed: “wire”.',
  ],
  [
    { kind: 'lines', item: section, lines: ['wire', 'posts', ' ', 'ties', 'paint'] },
    'Along the gardens, still to be marked by both as bought, worked or not needed: “wire”, “posts”, “a line with no name” and 2 more.',
  ],
  [
    { kind: 'line moved', moved: { line: wire, held: 10400n, actual: 11000n, markedBy: [] } },
    'Along the gardens: wire: both marked $104.00; it has come to $110.00 since. $104.00 counts until both mark another amount.',
  ],
  [
    { kind: 'thing', what: 'mesh', why: 'changed since both marked it' },
    'mesh: it was changed since both marked it. What both marked counts until both mark the change.',
  ],
  [
    { kind: 'thing', what: '', why: 'taken off by one' },
    'A thing without a name: one household took it off the list. What both marked counts until the other marks that too.',
  ],
  [
    {
      kind: 'payment waits',
      transfer: { index: 3, from: 'b', to: 'a', amount: 2000n, date: '2027-05-28', means: 'in cash' },
    },
    '$20.00 is said to be paid by No. 14 to No. 12, in cash, on 28 May 2027. It is not confirmed, and counts once No. 12 confirms it.',
  ],
  [
    { kind: 'thing', what: 'auger', why: 'not brought back' },
    'auger: it has not been brought back. Enter the day on which it was.',
  ],
  [
    { kind: 'conversion waits', item: 's1' },
    'Along the gardens: hours and money were to be exchanged, and one household has not marked it.',
  ],
  [{ kind: 'outstanding', amount: 500n }, '$5.00 of the whole has not been given by anyone yet.'],
  [
    { kind: 'outstanding', amount: -500n },
    '$5.00 more was given than counts. Say which lines it was for and mark what they came to, or take it back.',
  ],
  [{ kind: 'owed', evening: { from: 'b', to: 'a', amount: 100n } }, 'No. 14 still owes No. 12 $1.00.'],
  [
    {
      kind: 'beyond tolerance',
      item: {
        kind: 'section',
        index: 0,
        path: 'sections[0]',
        id: 's1',
        name: 'Along the gardens',
        planned: 30000n,
        actual: 33001n,
        percent: '10',
        allowed: 33000n,
      },
    },
    'Along the gardens came to $330.01, more than 10 percent above the plan: both look at it again.',
  ],
]

describe('what is open before the final account', () => {
  test.each(said)('%o', (open, sentence) => {
    expect(inWords(open)).toBe(sentence)
  })

  test('every kind has a word for the link to where it is settled', () => {
    for (const [{ kind }] of said) expect(accountWords.settle[kind]).toMatch(/^[A-Z]/)
  })

  test('can be read by a twelve-year-old', () => {
    const all = [
      ...said.map(([, sentence]) => sentence),
      ...Object.values(accountRefusals),
      accountWords.lead,
    ]
    expect(readingGrade(all.join('\n'))).toBeLessThanOrEqual(8)
  })
})

test('the sentence that is ticked says who signs, as what, for whom, and that nothing is owed', () => {
  const place = { household: 'a', partyIndex: 0, name: 'Marnie Oakshott', capacity: 'trustee' } as const
  expect(accountIntent(place, 'No. 12')).toBe(
    'I, Marnie Oakshott, sign this final account as trustee for No. 12. I have read it, I agree that nothing is owed between the households for this fence, and I mean my typed name to be my signature.',
  )
})
