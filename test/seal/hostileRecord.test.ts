import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { deflateSync } from 'node:zlib'
import fc from 'fast-check'
import { AFRelationship, PDFDocument, PDFString } from 'pdf-lib'
import { beforeAll, describe, expect, test } from 'vitest'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import type { RecordFindings } from '../../lib/core/agreement/recordFindings.ts'
import { checkRecord } from '../../lib/seal/checkRecord.ts'
import { readLimits } from '../../lib/seal/readLimits.ts'
import { sealPdf } from '../../lib/seal/sealPdf.ts'
import { recordLines } from '../../lib/words/recordText.ts'
import { readPdf } from '../pdf/readPdf.ts'
import { builtPdf, stream } from './builtPdf.ts'
import { oneKey, sealedAt, sealedRecord, signedPaper, smallNotebook, withBytes } from './madeRecord.ts'

let record: Buffer
beforeAll(async () => {
  record = await sealedRecord()
})

/**
 * Checking may not stop the program for everybody else. In milliseconds of a processor, since the machine that tests may be
 * busy with other things; far more than any of these takes.
 */
const patience = 10_000

/** Checks a file that must not hold, within bounded time, and with a sentence for each reason. */
async function refusedBy(pdf: Uint8Array): Promise<RecordFindings> {
  const started = process.cpuUsage()
  const findings = await checkRecord(pdf)
  const { user, system } = process.cpuUsage(started)
  expect((user + system) / 1000).toBeLessThan(patience)
  expect(findings.holds).toBe(false)
  const told = recordLines(findings).filter(({ kind }) => kind === 'fails')
  expect(told.length).toBeGreaterThan(0)
  for (const { text } of told) expect(text).toMatch(/^[\p{Lu}\d].+\.$/u)
  return findings
}

const kindsOf = async (pdf: Uint8Array) => (await refusedBy(pdf)).problems.map(({ kind }) => kind)

async function sealedDocument(change: (document: PDFDocument) => unknown): Promise<Uint8Array> {
  const document = await PDFDocument.load(await signedPaper(smallNotebook()), { updateMetadata: false })
  await change(document)
  return sealPdf(await document.save({ useObjectStreams: false }), await oneKey(), sealedAt)
}

describe('a changed file gets a clear no:', () => {
  test('cut short, anywhere', async () => {
    const places = Array.from({ length: 60 }, (_, index) => Math.floor((index / 60) * record.length))
    for (const end of [...places, 1, 7, 8, 9, record.length - 1, record.length - 5, record.length - 6]) {
      const [kind, ...more] = await kindsOf(record.subarray(0, end))
      expect(end < 5 ? ['not-a-pdf'] : ['cut-short', 'other-build']).toContain(kind)
      expect(more).toEqual([])
    }
  })

  test('a second revision appended after the seal', async () => {
    const start = record.toString('latin1').lastIndexOf('startxref')
    const table = Number(/startxref\n([0-9]+)/.exec(record.toString('latin1', start))?.[1])
    const root = /\/Root ([0-9]+) 0 R/.exec(record.toString('latin1', table))?.[1]
    const added = `\n${root} 0 obj\n<< /Type /Catalog /Pages 1 0 R >>\nendobj\n`
    const at = record.length + added.length
    const place = String(record.length + 1).padStart(10, '0')
    const revision = `${added}xref\n${root} 1\n${place} 00000 n \ntrailer\n<< /Size 99 /Root ${root} 0 R /Prev ${table} >>\n\nstartxref\n${at}\n%%EOF`
    const changed = Buffer.concat([record, Buffer.from(revision)])
    // Both are PDFs for another reader: only the second shows something else.
    expect((await PDFDocument.load(changed)).getPageCount()).toBeGreaterThan(0)
    expect((await refusedBy(changed)).problems).toEqual([{ kind: 'added-after', bytes: revision.length }])
  })

  test.each(['\n', ' ', '\r\n', '\0', '%%EOF', '\n%%EOF\n', 'x'])('%j behind the end', async (more) => {
    expect((await refusedBy(Buffer.concat([record, Buffer.from(more)]))).problems).toEqual([
      { kind: 'added-after', bytes: more.length },
    ])
  })

  test('something before the beginning', async () => {
    expect(await kindsOf(Buffer.concat([Buffer.from('\n'), record]))).toEqual(['not-a-pdf'])
  })

  test('the notebook file swapped for another of the same length', async () => {
    const from = record.indexOf('stream\n', record.indexOf('/Type /EmbeddedFile')) + 'stream\n'.length
    const room = record.indexOf('\nendstream', from) - from
    const { document } = smallNotebook({ title: 'The', terms: [] })
    const packed = deflateSync(agreementText(document), { level: 9 })
    expect(packed.length).toBeLessThanOrEqual(room)
    const swapped = withBytes(record, from, Buffer.concat([packed, Buffer.alloc(room - packed.length)]))
    expect(swapped.length).toBe(record.length)
    // Another program takes it for the notebook file.
    const { attachments } = await readPdf(swapped)
    expect(Buffer.from(attachments.get('agreement.json') ?? []).toString()).toBe(agreementText(document))
    const { problems, seal } = await refusedBy(swapped)
    expect(problems.map(({ kind }) => kind)).toEqual(['bytes-changed', 'hash-differs', 'signed-other-text'])
    expect(seal).toBeUndefined()
    // Damaged instead of swapped.
    expect(await kindsOf(withBytes(record, from, Buffer.alloc(room, 'x')))).toEqual([
      'bytes-changed',
      'agreement-damaged',
    ])
  })

  test('the ByteRange made to end before the end, or to leave out more than the signature', async () => {
    const at = record.indexOf('/ByteRange [') + '/ByteRange ['.length
    const [a, b, c, d] = record.toString('latin1', at, record.indexOf(']', at)).split(' ').map(Number)
    const tampered = (...range: (number | undefined)[]) => {
      const text = range.join(' ')
      const room = record.indexOf('/Contents', at) - at
      return withBytes(record, at, `${text}]`.padEnd(room - 1, ' '))
    }
    const [one = 0, two = 0, three = 0, four = 0] = [a, b, c, d]
    expect(await kindsOf(tampered(one, two, three, four - 7))).toEqual(['added-after'])
    expect(await kindsOf(tampered(one, two - 10, three, four))).toEqual(['range-open'])
    expect(await kindsOf(tampered(one, two, three + 10, four - 10))).toEqual(['range-open'])
    expect(await kindsOf(tampered(1, two - 1, three, four))).toEqual(['range-open'])
    expect(await kindsOf(tampered(one, two, three, four + 9))).toEqual(['range-open'])
    expect(await kindsOf(tampered(one, two, 0, 0))).toEqual(['range-open'])
    expect(await kindsOf(tampered(one, two))).toEqual(['seal-form'])
    expect(await kindsOf(tampered(one, two, three, four, 0, 0))).toEqual(['seal-form'])
  })

  test('an earlier record’s signature in place of its own', async () => {
    const other = await sealedRecord(smallNotebook({ title: 'The mill fence' }))
    const contents = (pdf: Buffer) => {
      const from = pdf.indexOf('/Contents <') + '/Contents '.length
      return { from, text: pdf.subarray(from, pdf.indexOf('>', from) + 1) }
    }
    const changed = withBytes(record, contents(record).from, contents(other).text)
    expect(await kindsOf(changed)).toEqual(['bytes-changed'])
  })

  test('any byte changed, taken out or put in, at random', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.nat(record.length - 1),
        fc.uint8Array({ maxLength: 4 }),
        fc.nat(4),
        async (at, put, taken) => {
          const changed = Buffer.concat([record.subarray(0, at), put, record.subarray(at + taken)])
          if (changed.equals(record)) return
          expect((await checkRecord(changed)).holds).toBe(false)
        },
      ),
      { numRuns: 150 },
    )
  })
})

describe('a file made to deceive gets a clear no:', () => {
  test('two places for a seal', async () => {
    const twice = builtPdf([
      '<< /Type /Catalog /Pages 2 0 R /AcroForm << /Fields [3 0 R 5 0 R] >> >>',
      '[]',
      '<< /FT /Sig /V 4 0 R >>',
      '<< /Type /Sig /ByteRange [0 1 2 3] /Contents <00> >>',
      '<< /FT /Sig /V 6 0 R >>',
      '<< /Type /Sig /ByteRange [0 1 2 3] /Contents <00> >>',
    ])
    expect((await refusedBy(twice)).problems[0]).toEqual({ kind: 'several-seals', count: 2 })
  })

  test('a sealed paper is not sealed a second time', async () => {
    await expect(sealPdf(record, await oneKey(), sealedAt)).rejects.toThrow('several-seals')
  })

  test('a second notebook file of the same name', async () => {
    const pdf = await sealedDocument((document) =>
      document.attach(Buffer.from('{}'), 'agreement.json', { afRelationship: AFRelationship.Source }),
    )
    expect((await refusedBy(pdf)).problems).toEqual([{ kind: 'several-agreements', count: 2 }])
  })

  test('a second notebook file that no list names, its name in capitals', async () => {
    const pdf = await sealedDocument(({ context }) => {
      const file = context.register(context.flateStream('{}', { Type: 'EmbeddedFile' }))
      const named = { Type: 'Filespec', UF: PDFString.of('Agreement.JSON'), EF: { F: file } }
      return context.register(context.obj(named))
    })
    expect((await refusedBy(pdf)).problems).toEqual([{ kind: 'several-agreements', count: 2 }])
  })

  test('a page that prints no hash', async () => {
    const pdf = await sealedDocument((document) => document.addPage([200, 200]).drawSquare())
    const { problems } = await refusedBy(pdf)
    expect(problems).toEqual([{ kind: 'hash-not-printed', page: expect.any(Number) }])
  })

  test('a paper of another program under a good seal', async () => {
    const document = await PDFDocument.create({ updateMetadata: false })
    document.addPage([200, 200])
    const pdf = await sealPdf(await document.save({ useObjectStreams: false }), await oneKey(), sealedAt)
    const findings = await refusedBy(pdf)
    expect(findings.seal?.sealedAt).toEqual(sealedAt)
    expect(findings.problems.map(({ kind }) => kind)).toEqual(['no-agreement'])
  })

  test('saved anew by another program, packed or with a password', async () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'mearing-hostile-'))
    try {
      const [from, to] = [path.join(folder, 'a.pdf'), path.join(folder, 'b.pdf')]
      writeFileSync(from, record)
      const qpdf = (...options: string[]) => {
        execFileSync('qpdf', [...options, from, to])
        return readFileSync(to)
      }
      expect(await kindsOf(qpdf('--object-streams=generate'))).toEqual(['other-build'])
      expect(await kindsOf(qpdf('--encrypt', 'one', 'two', '256', '--'))).toEqual(['encrypted'])
      expect(await kindsOf(qpdf('--linearize'))).toEqual(['other-build'])
    } finally {
      rmSync(folder, { recursive: true })
    }
  })
})

const catalog = '<< /Type /Catalog /Pages 2 0 R >>'
const agreement = (bytes: Buffer, more = '') => [
  '<< /Type /Filespec /F (agreement.json) /EF << /F 4 0 R >> >>',
  stream(`/Type /EmbeddedFile /Filter /FlateDecode ${more}`, bytes),
]

describe('a file made to stop the program gets a clear no in bounded time:', () => {
  const huge = Buffer.alloc(1_000_000)
  test.each<[string, () => Uint8Array, string]>([
    ['nothing', () => Buffer.alloc(0), 'not-a-pdf'],
    ['a megabyte of nothing', () => Buffer.alloc(1_000_000), 'not-a-pdf'],
    ['a text', () => Buffer.from('Dear neighbours'), 'not-a-pdf'],
    ['a picture', () => Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'), 'not-a-pdf'],
    ['a first line and no more', () => Buffer.from('%PDF-1.7\n'), 'cut-short'],
    [
      'a first line, a last line and no more',
      () => Buffer.from('%PDF-1.7\n%\x81\x81\x81\x81\n\nstartxref\n0\n%%EOF', 'latin1'),
      'other-build',
    ],
    ['too many bytes', () => Buffer.concat([record, Buffer.alloc(readLimits.file)]), 'too-large'],
    [
      'a table of a billion objects',
      () =>
        Buffer.from(
          '%PDF-1.7\n%\x81\x81\x81\x81\n\nxref\n0 1000000000\n0000000000 65535 f \ntrailer\n<<>>\nstartxref\n16\n%%EOF',
          'latin1',
        ),
      'too-much',
    ],
    ['lists inside one another', () => builtPdf([catalog, '['.repeat(9_000_000)]), 'too-deep'],
    ['lists, all closed', () => builtPdf([catalog, '['.repeat(100) + ']'.repeat(100)]), 'too-deep'],
    ['dictionaries inside one another', () => builtPdf([catalog, '<</A'.repeat(1_000_000)]), 'too-deep'],
    ['nine million numbers', () => builtPdf([catalog, `[${'0 '.repeat(9_000_000)}]`]), 'too-much'],
    [
      'a million keys',
      () =>
        builtPdf([catalog, `<<${Array.from({ length: 1_000_000 }, (_, index) => `/${index} 0`).join('')}>>`]),
      'too-much',
    ],
    [
      'a text of 19 MB that does not end',
      () => builtPdf([catalog, `(${'('.repeat(19_000_000)}`]),
      'other-build',
    ],
    ['a text of 19 MB of digits', () => builtPdf([catalog, `<${'0'.repeat(19_000_000)}>`]), 'other-build'],
    ['a name of 19 MB', () => builtPdf([catalog, `/${'x'.repeat(19_000_000)}`]), 'other-build'],
    ['a number of 19 MB', () => builtPdf([catalog, '1'.repeat(19_000_000)]), 'other-build'],
    ['19 MB of blanks', () => builtPdf([catalog, `[${' '.repeat(19_000_000)}]`]), 'no-seal'],
    [
      'a key that stands twice',
      () => builtPdf(['<< /Type /Catalog /Pages 2 0 R /Pages 3 0 R >>', '[]']),
      'other-build',
    ],
    [
      'a stream longer than the file',
      () => builtPdf([catalog, '<< /Length 99999999 >>\nstream\nx\nendstream']),
      'other-build',
    ],
    [
      'a stream of less than nothing',
      () => builtPdf([catalog, '<< /Length -5 >>\nstream\nx\nendstream']),
      'other-build',
    ],
    ['a root that is not there', () => builtPdf(['[]'], '').fill('9', 20, 21), 'other-build'],
    ['a comment between values', () => builtPdf([catalog, '[ % hidden\n ]']), 'other-build'],
    ['an object that stands for itself', () => builtPdf([catalog, '2 0 R']), 'no-seal'],
    [
      'pages that are their own pages',
      () => builtPdf([catalog, '<< /Kids [2 0 R 2 0 R] >>', ...agreement(deflateSync('{}'))]),
      'no-seal',
    ],
    [
      'a page with ten thousand times the same content',
      () =>
        builtPdf([
          catalog,
          '<< /Kids [5 0 R] >>',
          ...agreement(deflateSync('{}')),
          `<< /Type /Page /Contents [${'6 0 R '.repeat(10_000)}] >>`,
          stream('/Filter /FlateDecode', deflateSync(Buffer.alloc(1_900_000, ' '))),
        ]),
      'no-seal',
    ],
    [
      'fifty thousand pages that are one page of a million letters',
      () =>
        builtPdf([
          catalog,
          `<< /Kids [${'5 0 R '.repeat(50_000)}] >>`,
          ...agreement(deflateSync('{}')),
          '<< /Type /Page /Contents 6 0 R >>',
          stream('/Filter /FlateDecode', deflateSync(`${`<${'0'.repeat(80_000)}> Tj `.repeat(12)}`)),
        ]),
      'no-seal',
    ],
    [
      'a notebook file that unpacks to 200 MB',
      () => builtPdf([catalog, '[]', ...agreement(deflateSync(Buffer.alloc(200_000_000)))]),
      'no-seal',
    ],
    [
      'a notebook file that is packed twice, to 100 MB',
      () =>
        builtPdf([
          catalog,
          '[]',
          '<< /Type /Filespec /F (agreement.json) /EF << /F 4 0 R >> >>',
          stream('/Filter [/FlateDecode /FlateDecode]', deflateSync(deflateSync(Buffer.alloc(100_000_000)))),
        ]),
      'no-seal',
    ],
    [
      'a million lists inside one another as the notebook file',
      () =>
        builtPdf([catalog, '[]', ...agreement(deflateSync('['.repeat(1_000_000) + ']'.repeat(1_000_000)))]),
      'no-seal',
    ],
    ['a packed stream of noise', () => builtPdf([catalog, '[]', ...agreement(huge)]), 'no-seal'],
  ])('%s', async (_, make, kind) => {
    expect((await kindsOf(make()))[0]).toBe(kind)
  })

  test('what unpacks to too much is told', async () => {
    const bomb = builtPdf([catalog, '[]', ...agreement(deflateSync(Buffer.alloc(200_000_000)))])
    expect((await refusedBy(bomb)).problems).toEqual([
      { kind: 'no-seal' },
      { kind: 'too-much', what: 'unpacked bytes', limit: readLimits.attachment },
    ])
  })

  test('in bounded memory', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'mearing-memory-'))
    try {
      const files = [
        builtPdf([catalog, '[]', ...agreement(deflateSync(Buffer.alloc(200_000_000)))]),
        builtPdf([catalog, `[${'0 '.repeat(9_000_000)}]`]),
        builtPdf([catalog, `(${'('.repeat(19_000_000)}`]),
      ].map((pdf, index) => {
        const file = path.join(folder, `${index}.pdf`)
        writeFileSync(file, pdf)
        return file
      })
      const program = path.join(import.meta.dirname, 'processes/checkAndTellMemory.ts')
      const said = execFileSync(process.execPath, ['--import', 'tsx', program, ...files], {
        encoding: 'utf8',
      })
      const { start, most } = JSON.parse(said)
      // In kilobytes: the files themselves have 20 MB each.
      expect(most - start).toBeLessThan(300_000)
    } finally {
      rmSync(folder, { recursive: true })
    }
  })
})
