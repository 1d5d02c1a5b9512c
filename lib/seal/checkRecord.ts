import { createHash } from 'node:crypto'
import type { RecordFindings, RecordProblem } from '../core/agreement/recordFindings.ts'
import { statementOf } from '../core/shares/statement.ts'
import { readNotebook } from '../forms/readNotebook.ts'
import { householdName, notebookTitle } from '../words/labels.ts'
import { attachedFile } from './attachedFile.ts'
import { verifyDetached } from './detachedSignature.ts'
import { everyDictionary, type PlacedDictionary } from './everyDictionary.ts'
import { type PdfFile, readPdfFile } from './pdfFile.ts'
import type { UnpackedLeft } from './pdfStream.ts'
import { printedAccountHash, printedHashes, sumsArePrinted } from './printedFigures.ts'
import { type PrintedPiece, printedPages } from './printedText.ts'
import { readLimits } from './readLimits.ts'
import { RecordRefusal } from './recordRefusal.ts'
import { bytesAddedAfter, sealedRange } from './sealedRange.ts'
import { signaturesInside } from './signaturesInside.ts'

/** Everything but whether it holds, which follows from the problems. */
type Found = Omit<RecordFindings, 'holds' | 'bytes' | 'problems'>
type Looked = { readonly found: Found; readonly problems: readonly RecordProblem[] }

export type RecordOptions = {
  /** SHA-256 of the certificate that the seal has to carry; without it any certificate will do. */
  readonly expectedCertificate?: string
}

/**
 * Looks through a PDF that claims to be a locked copy: whether its seal holds over the whole file, and whether the hash
 * and the sums that the pages print, the notebook file and the signatures inside agree with one another. Pure, on any bytes, without a database;
 * never throws, and reads no more than `readLimits` says. Needs no clock and no network.
 */
export async function checkRecord(bytes: Uint8Array, options: RecordOptions = {}): Promise<RecordFindings> {
  if (bytes.length > readLimits.file) return tooLargeRecord(bytes.length)
  const { found, problems } = await lookThrough(bytes, options)
  return { holds: problems.length === 0, bytes: bytes.length, problems, ...found }
}

/** The findings of a file so large that it is not even read. `bytes` is its size. */
export function tooLargeRecord(bytes: number): RecordFindings {
  return { holds: false, bytes, problems: [{ kind: 'too-large', bytes, limit: readLimits.file }] }
}

async function lookThrough(bytes: Uint8Array, options: RecordOptions): Promise<Looked> {
  const file = await refusable(() => readPdfFile(bytes))
  if ('kind' in file) {
    const added = file.kind === 'not-a-pdf' ? 0 : bytesAddedAfter(bytes)
    return failing(added > 0 ? { kind: 'added-after', bytes: added } : file)
  }
  const dictionaries = everyDictionary(file)
  const seal = lookAtSeal(file, dictionaries, options)
  const content = await refusable(() => lookInside(file, dictionaries))
  const inside = 'kind' in content ? failing(content) : content
  return { found: { ...seal.found, ...inside.found }, problems: [...seal.problems, ...inside.problems] }
}

function lookAtSeal(
  file: PdfFile,
  dictionaries: readonly PlacedDictionary[],
  { expectedCertificate }: RecordOptions,
): Looked {
  const range = sealedRange(file, dictionaries)
  if ('kind' in range) return failing(range)
  const seal = verifyDetached(range)
  if ('kind' in seal) return failing(seal)
  const found = seal.certificateSha256
  const other = expectedCertificate !== undefined && expectedCertificate !== found
  return {
    found: { seal },
    problems: other ? [{ kind: 'other-certificate', expected: expectedCertificate, found }] : [],
  }
}

/** The notebook file, what is worked out from it, and whether pages and signatures say the same. */
async function lookInside(file: PdfFile, dictionaries: readonly PlacedDictionary[]): Promise<Looked> {
  const left: UnpackedLeft = { bytes: readLimits.unpacked }
  const attached = attachedFile(file, dictionaries, 'agreement.json', left)
  if (attached.kind === 'none') return failing(await withoutAgreement(file, left))
  if (attached.kind === 'several') return failing({ kind: 'several-agreements', count: attached.count })
  if (attached.kind === 'damaged') return failing({ kind: 'agreement-damaged' })
  const signatures = attachedFile(file, dictionaries, 'signatures.json', left)
  const pages = await printedPages(file, left)
  const sha256 = createHash('sha256').update(attached.bytes).digest('hex')
  const hashes = pages ? printedHashes(pages, sha256) : failing({ kind: 'pages-unreadable' })
  const rest = lookAtAgreement(
    attached.bytes,
    sha256,
    pages,
    signatures.kind === 'one' ? signatures.bytes : undefined,
  )
  const unsigned: RecordProblem[] =
    signatures.kind === 'one'
      ? []
      : [{ kind: signatures.kind === 'none' ? 'no-signatures' : 'signatures-damaged' }]
  return {
    found: {
      agreement: { sha256 },
      ...('printedSha256' in hashes && { printedSha256: hashes.printedSha256 }),
      ...rest.found,
    },
    problems: [...hashes.problems, ...rest.problems, ...unsigned],
  }
}

/** What a paper with no notebook file inside is: a final account, by its pages, or none of this program's that is locked. */
async function withoutAgreement(file: PdfFile, left: UnpackedLeft): Promise<RecordProblem> {
  const read = await refusable(async () => ({ pages: await printedPages(file, left) }))
  const sha256 = 'pages' in read && read.pages ? printedAccountHash(read.pages) : undefined
  return sha256 === undefined ? { kind: 'no-agreement' } : { kind: 'final-account', sha256 }
}

function lookAtAgreement(
  agreement: Uint8Array,
  sha256: string,
  pages: readonly (readonly PrintedPiece[])[] | undefined,
  signatures: Uint8Array | undefined,
): Looked {
  const read = readNotebook(agreement)
  if (!read.ok) return failing({ kind: 'agreement-refused', faults: read.faults })
  const { notebook } = read.value
  const names = { a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  const signed = signatures ? signaturesInside(signatures, sha256, notebook) : { problems: [] }
  const found: Found = {
    agreement: { sha256, title: notebookTitle(notebook), names },
    ...('signatures' in signed && { signatures: signed.signatures }),
  }
  const statement = statementOf(notebook)
  if (!statement.ok)
    return { found, problems: [{ kind: 'statement-refused', faults: statement.faults }, ...signed.problems] }
  const { currency, total, asked } = statement.value
  const printed = pages === undefined || sumsArePrinted(pages, notebook, statement.value)
  return {
    found: { ...found, asked: { currency, total, a: asked.a, b: asked.b } },
    problems: [...(printed ? [] : [{ kind: 'sums-not-printed' as const }]), ...signed.problems],
  }
}

function failing(problem: RecordProblem): Looked {
  return { found: {}, problems: [problem] }
}

/** What `look` finds, or why it refuses. */
async function refusable<Value extends object>(
  look: () => Value | Promise<Value>,
): Promise<Value | RecordProblem> {
  try {
    return await look()
  } catch (error) {
    if (error instanceof RecordRefusal) return error.problem
    throw error
  }
}
