import { describe, expect, test } from 'vitest'
import type { RecordFindings, RecordProblem } from '../../lib/core/agreement/recordFindings.ts'
import type { SealKeyFault } from '../../lib/core/agreement/sealKeyFault.ts'
import { recordProblemText } from '../../lib/words/recordProblemText.ts'
import { notProved, recordLines, recordVerdict } from '../../lib/words/recordText.ts'
import { sealKeyText } from '../../lib/words/sealKeyText.ts'
import { readingGrade } from './readingGrade.ts'

const problems: RecordProblem[] = [
  { kind: 'too-large', bytes: 30_000_000, limit: 20_000_000 },
  { kind: 'not-a-pdf' },
  { kind: 'cut-short' },
  { kind: 'encrypted' },
  { kind: 'other-build', detail: 'the root is missing' },
  { kind: 'too-deep', limit: 32 },
  { kind: 'too-much', what: 'unpacked bytes', limit: 64 },
  { kind: 'no-seal' },
  { kind: 'several-seals', count: 2 },
  { kind: 'added-after', bytes: 1 },
  { kind: 'added-after', bytes: 12 },
  { kind: 'range-open' },
  { kind: 'bytes-changed' },
  { kind: 'seal-broken' },
  { kind: 'seal-form' },
  { kind: 'other-certificate', expected: 'ab', found: 'cd' },
  { kind: 'no-agreement' },
  { kind: 'final-account', sha256: 'ab' },
  { kind: 'several-agreements', count: 2 },
  { kind: 'agreement-damaged' },
  { kind: 'agreement-refused', faults: [{ path: '(file)', kind: 'too-deep', limit: 64 }] },
  { kind: 'pages-unreadable' },
  { kind: 'hash-not-printed', page: 3 },
  { kind: 'hash-differs', page: 1, printed: 'ab', found: 'cd' },
  {
    kind: 'statement-refused',
    faults: [{ path: 'common[0].share.together', kind: 'weights-zero', principle: 'benefit' }],
  },
  { kind: 'sums-not-printed' },
  { kind: 'no-signatures' },
  { kind: 'signatures-damaged' },
  { kind: 'signed-other-text' },
  { kind: 'parties-unsigned', names: ['Ada Holm', 'Ben Rook'] },
]

const [file, note] = ['data/seal', 'data/known']
const keyFaults: SealKeyFault[] = [
  { kind: 'missing', file, note },
  { kind: 'unreadable', file, detail: 'it is not a file' },
  { kind: 'open-to-others', file, mode: '644' },
  { kind: 'broken', file, note },
  { kind: 'other-key', file, note, expected: 'ab', found: 'cd' },
  { kind: 'expired', file, note, since: new Date('2047-03-01T08:00:00Z') },
  { kind: 'not-kept', file, detail: 'no room' },
]

const findings: RecordFindings = {
  holds: true,
  bytes: 42_000,
  problems: [],
  seal: { certificateSha256: 'ab', sealedAt: new Date('2027-03-04T20:01:00Z') },
  agreement: { sha256: 'cd', title: 'The lane', names: { a: 'Upper Mill', b: 'Lower Mill' } },
  printedSha256: 'cd',
  asked: { currency: 'USD', total: 12001n, a: 6001n, b: 6000n },
  signatures: [{ household: 'a', partyName: 'Ada Holm', signedAt: new Date('2027-03-04T20:01:00Z') }],
}

describe('the sentences of a check', () => {
  test('read at grade 8 or below, one by one', () => {
    const texts = [
      // What the faults of a notebook file say has its own tests.
      ...problems.filter((one) => !('faults' in one)).map(recordProblemText),
      ...keyFaults.map(sealKeyText),
      ...recordLines(findings, { sealedHere: false, revision: { kind: 'not kept here' } }).map(
        ({ text }) => text,
      ),
      ...recordLines(findings, { sealedHere: true, revision: { kind: 'older', number: 2, newest: 3 } }).map(
        ({ text }) => text,
      ),
      ...notProved,
      recordVerdict(findings),
      recordVerdict({ ...findings, holds: false }),
    ]
    expect(texts.filter((text) => text.split(' ').length >= 8 && readingGrade(text) > 8)).toEqual([])
  })

  test('give every reason a sentence of its own', () => {
    const texts = problems.map(recordProblemText)
    expect(new Set(texts).size).toBe(problems.length)
    for (const text of texts) expect(text).toMatch(/^[\p{Lu}\d].+[.]$/u)
  })

  test('say what a check does not prove', () => {
    expect(notProved.join(' ')).toMatch(/not show who signed[\s\S]*nothing against whoever runs the install/)
  })

  test('put what fails first, and claim no agreement where there is none', () => {
    const lines = recordLines({
      ...findings,
      holds: false,
      printedSha256: 'ef',
      problems: [{ kind: 'hash-differs', page: 1, printed: 'ef', found: 'cd' }, { kind: 'sums-not-printed' }],
    })
    expect(lines.map(({ kind }) => kind)).toEqual([
      'fails',
      'fails',
      'agrees',
      'told',
      'told',
      'told',
      'told',
      'told',
    ])
  })

  test('tell the newest revision from an older one', () => {
    const last = (revision: Parameters<typeof recordLines>[1]) => recordLines(findings, revision).at(-1)?.text
    expect(last({ revision: { kind: 'newest', number: 3 } })).toBe(
      'It is revision 3, the newest of its notebook that has a locked copy.',
    )
    expect(last({ revision: { kind: 'older', number: 2, newest: 3 } })).toContain('revision 3 came after it')
    expect(last({ revision: { kind: 'not kept here' } })).toContain('does not keep this notebook')
  })
})
