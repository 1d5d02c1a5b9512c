import { X509Certificate } from 'node:crypto'
import { beforeAll, describe, expect, test } from 'vitest'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { signaturesText } from '../../lib/pdf/summaryPdf.ts'
import { makeSealKey } from '../../lib/seal/certificate.ts'
import { checkRecord } from '../../lib/seal/checkRecord.ts'
import { verifyDetached } from '../../lib/seal/detachedSignature.ts'
import { sealPdf } from '../../lib/seal/sealPdf.ts'
import { exampleNotebook } from '../pdf/madeSummary.ts'
import { qpdfCheck } from '../pdf/pdfTools.ts'
import { readPdf, wordsOf } from '../pdf/readPdf.ts'
import {
  allSignatures,
  madeAt,
  oneKey,
  sealedAt,
  sealedRecord,
  signedPaper,
  smallNotebook,
  withBytes,
} from './madeRecord.ts'
import { pdfsig } from './pdfsig.ts'

let record: Buffer
/** Where the signature begins and ends, brackets included. */
let gap: { from: number; to: number }

beforeAll(async () => {
  record = await sealedRecord()
  const from = record.indexOf('/Contents <') + '/Contents '.length
  gap = { from, to: record.indexOf('>', from) + 1 }
})

describe('a sealed paper', () => {
  test('is valid and signed as a whole for poppler, with the time that was given', async () => {
    const said = await pdfsig(record)
    expect(said).toContain('Signature is Valid.')
    expect(said).toContain('Total document signed')
    expect(said).toContain('Signing Hash Algorithm: SHA-256')
    expect(said).toContain('Signature Type: adbe.pkcs7.detached')
    expect(said).toContain("Common Name: Mearing notebook, this install's own seal")
    expect(said).toContain('Signing Time: Mar 04 2027 20:01:00')
    expect(said.match(/Signature #/g)).toHaveLength(1)
  })

  test('is clean for qpdf', async () => {
    expect(await qpdfCheck(record)).toContain('No syntax or stream encoding errors found')
  })

  // ISO 32000-1, 12.8.1: pairs of offset and length that cover the whole file except the value of Contents.
  test('has the ByteRange that ISO 32000 asks for: from 0 to the end, without exactly the text of Contents', () => {
    const [, a, b, c, d] =
      /\/ByteRange \[([0-9]+) ([0-9]+) ([0-9]+) ([0-9]+)\]/.exec(record.toString('latin1'))?.map(Number) ?? []
    expect([a, b, c]).toEqual([0, gap.from, gap.to])
    expect(Number(c) + Number(d)).toBe(record.length)
    expect(record.subarray(b, c).toString('latin1')).toMatch(/^<[0-9a-f]+>$/)
  })

  test('says in plain words what the seal is for', () => {
    expect(record.toString('latin1')).toContain('/Reason (Locked copy: nothing changed since)')
  })

  test('is the same bytes again: same paper, same key, same time', async () => {
    expect((await sealedRecord()).equals(record)).toBe(true)
  })

  test('still reads as before, with the notebook file and the signatures inside', async () => {
    const read = smallNotebook()
    const [before, after] = [await readPdf(await signedPaper(read)), await readPdf(record)]
    expect(wordsOf(...after.pages)).toBe(wordsOf(...before.pages))
    const attached = (name: string) => Buffer.from(after.attachments.get(name) ?? []).toString('utf8')
    expect(attached('agreement.json')).toBe(agreementText(read.document))
    expect(attached('signatures.json')).toBe(signaturesText(allSignatures(read)))
  })

  test('holds for the example too', async () => {
    const example = await sealedRecord(exampleNotebook())
    expect(await pdfsig(example)).toMatch(/Total document signed[\s\S]*Signature is Valid/)
    expect(await checkRecord(example)).toMatchObject({ holds: true, problems: [] })
  })
})

describe('one changed byte', () => {
  test('breaks the seal for poppler, wherever it is', async () => {
    const places = Array.from({ length: 24 }, (_, index) => Math.floor(((index + 0.5) / 24) * record.length))
    // In the room that is kept for the signature there are zeros that poppler does not look at.
    const sealed = places.filter((place) => place < gap.from || place >= gap.to)
    expect(sealed.length).toBeGreaterThan(18)
    for (const place of [...sealed, gap.from + 500, gap.from + 2000]) {
      const said = await pdfsig(withBytes(record, place, Uint8Array.of((record[place] ?? 0) ^ 1)))
      expect(said, `byte ${place}`).not.toContain('Signature is Valid')
    }
  })

  test('breaks it for the check, wherever it is and whichever bit it is', async () => {
    const step = Math.floor(record.length / 150)
    const spread = Array.from({ length: 150 }, (_, index) => index * step)
    const signature = Array.from({ length: 50 }, (_, index) => gap.from + index * 163)
    for (const place of [...spread, ...signature, gap.to - 1, record.length - 1]) {
      const changed = withBytes(record, place, Uint8Array.of((record[place] ?? 0) ^ (1 << (place % 8))))
      expect((await checkRecord(changed)).holds, `byte ${place}`).toBe(false)
    }
  })

  test('breaks the signature itself, whichever of its bits it is', () => {
    const [from, to] = [record.subarray(0, gap.from), record.subarray(gap.to)]
    const signature = Buffer.from(record.toString('latin1', gap.from + 1, gap.to - 1), 'hex')
    const verified = (changed: Uint8Array) => verifyDetached({ pieces: [from, to], signature: changed })
    expect(verified(signature)).not.toHaveProperty('kind')
    const end = signature.length - signature.toString('hex').replace(/(00)*$/, '').length / 2
    const used = signature.length - end + 2
    expect(used).toBeGreaterThan(1000)
    const unseen: string[] = []
    for (let place = 0; place < used; place += 1)
      for (let bit = 0; bit < 8; bit += 1) {
        const changed = withBytes(signature, place, Uint8Array.of((signature[place] ?? 0) ^ (1 << bit)))
        if (!('kind' in verified(changed))) unseen.push(`byte ${place}, bit ${bit}`)
      }
    expect(unseen).toEqual([])
  })

  test('breaks it even where a digit of the signature only becomes a capital', async () => {
    const place = record.indexOf('a', gap.from)
    const changed = withBytes(record, place, 'A')
    expect((await checkRecord(changed)).problems.map(({ kind }) => kind)).toEqual(['seal-form'])
  })
})

describe('the certificate', () => {
  test('is a self-made one of 2048 bits for 20 years that names nobody', async () => {
    const { certificatePem, fingerprint } = await oneKey()
    const certificate = new X509Certificate(certificatePem)
    expect(certificate.publicKey.asymmetricKeyDetails?.modulusLength).toBe(2048)
    expect(certificate.subject).toBe("CN=Mearing notebook\\, this install's own seal")
    expect(certificate.issuer).toBe(certificate.subject)
    expect(certificate.verify(certificate.publicKey)).toBe(true)
    expect(new Date(certificate.validFrom)).toEqual(madeAt)
    expect(new Date(certificate.validTo)).toEqual(new Date('2047-03-01T08:00:00Z'))
    expect(certificate.ca).toBe(false)
    expect(fingerprint).toBe(certificate.fingerprint256.replaceAll(':', '').toLowerCase())
  })

  test('is another one in another install, and the check names it', async () => {
    const other = await makeSealKey(madeAt)
    const sealed = await sealPdf(await signedPaper(smallNotebook()), other, sealedAt)
    expect((await checkRecord(sealed)).seal?.certificateSha256).toBe(other.fingerprint)
    const { fingerprint } = await oneKey()
    expect(other.fingerprint).not.toBe(fingerprint)
    const findings = await checkRecord(sealed, { expectedCertificate: fingerprint })
    expect(findings.holds).toBe(false)
    expect(findings.problems.map(({ kind }) => kind)).toEqual(['other-certificate'])
  })
})

test('the seal takes its time from the caller, to the second', async () => {
  const paper = await signedPaper(smallNotebook())
  const at = new Date('2031-12-31T23:59:59.999Z')
  const sealed = await sealPdf(paper, await oneKey(), at)
  expect((await checkRecord(sealed)).seal?.sealedAt).toEqual(new Date('2031-12-31T23:59:59Z'))
})

test('what is no PDF can’t be sealed', async () => {
  await expect(sealPdf(Buffer.from('not a paper'), await oneKey(), sealedAt)).rejects.toThrow()
})
