import { beforeAll, describe, expect, test } from 'vitest'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { summaryPdf } from '../../lib/pdf/summaryPdf.ts'
import { checkRecord } from '../../lib/seal/checkRecord.ts'
import { sealPdf } from '../../lib/seal/sealPdf.ts'
import { exampleNotebook, notebookWith, sha256Of, signatureOf, summaryInputFor } from '../pdf/madeSummary.ts'
import { readPdf, wordsOf } from '../pdf/readPdf.ts'
import { allSignatures, oneKey, sealedAt, sealedRecord, signedPaper, smallNotebook } from './madeRecord.ts'

const kinds = async (pdf: Uint8Array) => (await checkRecord(pdf)).problems.map(({ kind }) => kind)
const sealed = async (pdf: Uint8Array) => sealPdf(pdf, await oneKey(), sealedAt)

describe('a locked copy', () => {
  let record: Buffer
  beforeAll(async () => {
    record = await sealedRecord()
  })

  test('holds, and tells the seal, the hash, the sums and the signatures', async () => {
    const { fingerprint } = await oneKey()
    const { attachments } = await readPdf(record)
    const sha256 = sha256Of(attachments.get('agreement.json') ?? '')
    expect(await checkRecord(record, { expectedCertificate: fingerprint })).toEqual({
      holds: true,
      bytes: record.length,
      problems: [],
      seal: { certificateSha256: fingerprint, sealedAt },
      agreement: { sha256, title: 'The lane fence', names: { a: 'Upper Mill', b: 'Lower Mill' } },
      printedSha256: sha256,
      // 120.01 in two halves: the odd cent goes to a, who has been asked for no more than b so far.
      asked: { currency: 'USD', total: 12001n, a: 6001n, b: 6000n },
      signatures: [
        { household: 'a', partyName: 'Ada Holm', signedAt: new Date('2027-03-04T20:01:00Z') },
        { household: 'b', partyName: 'Ben Rook', signedAt: new Date('2027-03-04T20:01:00Z') },
      ],
    })
  })

  test('of the example tells the sums that another program reads on its pages', async () => {
    const example = await sealedRecord(exampleNotebook())
    const { asked } = await checkRecord(example)
    const words = wordsOf(...(await readPdf(example)).pages)
    const money = (minor = 0n) =>
      `$${(Number(minor) / 100).toLocaleString('en-US', { minimumFractionDigits: 2 })}`
    expect(asked?.total).toBeGreaterThan(0n)
    expect(words).toContain(
      `Asked for, after caps ${money(asked?.total)} ${money(asked?.a)} ${money(asked?.b)}`,
    )
  })

  test.each([
    ['other money, which is wide', { currency: 'KWD' }],
    ['nothing to share', { common: [] }],
    [
      'names and notes that can’t all be printed',
      { title: 'Łąka 🌿 “lane” (north)', terms: [{ topic: 'Trees', text: '木 and 🌳' }] },
    ],
    [
      'a term that reads like the foot of a page, and like a row of the sums',
      {
        terms: [
          { topic: 'Notes', text: `SHA-256 of agreement.json: ${'0'.repeat(64)}` },
          { topic: 'Notes', text: 'Asked for, after caps $1.00 $1.00 $0.00' },
        ],
      },
    ],
    ['a cap', { caps: { a: '10.00' } }],
  ])('holds with %s', async (_, more) => {
    expect(await kinds(await sealedRecord(smallNotebook(more)))).toEqual([])
  })
})

describe('a sealed paper whose parts don’t agree is told apart:', () => {
  test('a paper that was never sealed', async () => {
    expect(await kinds(await signedPaper(smallNotebook()))).toEqual(['no-seal'])
  })

  test('a draft', async () => {
    const draft = await summaryPdf(summaryInputFor(smallNotebook()))
    expect(await kinds(draft)).toEqual(['no-seal', 'no-signatures'])
  })

  test('pages of one notebook, the file of another', async () => {
    const [read, other] = [smallNotebook(), smallNotebook({ title: 'Another fence' })]
    const input = summaryInputFor(read, { standing: { kind: 'signed' }, signatures: allSignatures(other) })
    const attachments = { agreementText: agreementText(other.document), signatures: allSignatures(other) }
    const findings = await checkRecord(await sealed(await summaryPdf({ ...input, attachments })))
    const [printed, found] = [read, other].map((one) => allSignatures(one)[0]?.sha256)
    expect(findings.problems).toEqual([{ kind: 'hash-differs', page: 1, printed, found }])
    expect(findings.seal).toBeDefined()
  })

  test('the printed hash is right, but the sums on the pages are of another notebook', async () => {
    const read = smallNotebook()
    const dearer = smallNotebook({ common: [] })
    const { content } = summaryInputFor(dearer, { standing: { kind: 'signed' } })
    const input = summaryInputFor(read, { standing: { kind: 'signed' }, signatures: allSignatures(read) })
    expect(await kinds(await sealed(await summaryPdf({ ...input, content })))).toEqual(['sums-not-printed'])
  })

  test('the signature of one party is missing', async () => {
    const read = smallNotebook()
    const findings = await checkRecord(await sealed(await signedPaper(read, [signatureOf(read, 'a', 0)])))
    expect(findings.problems).toEqual([{ kind: 'parties-unsigned', names: ['Ben Rook'] }])
  })

  test('a signature was given for another text', async () => {
    const read = smallNotebook()
    const [first, second] = allSignatures(read)
    if (!first || !second) throw new Error('two parties sign')
    const paper = await signedPaper(read, [first, { ...second, sha256: sha256Of('another text') }])
    expect(await kinds(await sealed(paper))).toEqual(['signed-other-text'])
  })

  test('no signature at all', async () => {
    expect(await kinds(await sealed(await signedPaper(smallNotebook(), [])))).toEqual(['no-signatures'])
  })

  test('the notebook file is no notebook file', async () => {
    const read = smallNotebook()
    const input = summaryInputFor(read, { standing: { kind: 'signed' }, signatures: allSignatures(read) })
    const text = '{"format":"mearing-notebook","version":1,"currency":"XXX"}'
    const paper = await summaryPdf({
      ...input,
      standing: { ...input.standing, sha256: sha256Of(text) },
      attachments: { agreementText: text, signatures: allSignatures(read) },
    })
    const findings = await checkRecord(await sealed(paper))
    expect(findings.problems.map(({ kind }) => kind)).toEqual(['agreement-refused'])
    expect(findings.agreement?.sha256).toBe(sha256Of(text))
  })

  test('the shares can’t be worked out', async () => {
    const read = notebookWith({
      households: {
        a: { parties: [{ name: 'Ada Holm', capacity: 'owner' }] },
        b: { parties: [{ name: 'Ben Rook', capacity: 'owner' }] },
      },
      common: [
        {
          id: 'c',
          materials: [{ quantity: '1', unitPrice: '1', suppliedBy: 'bought' }],
          share: { together: { principle: 'benefit', a: '0', b: '0' } },
        },
      ],
    })
    expect(await kinds(await sealed(await signedPaper(read)))).toEqual(['statement-refused'])
  })
})
