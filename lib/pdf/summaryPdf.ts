import { AFRelationship } from 'pdf-lib'
import { canonicalText } from '../core/agreement/canonicalText.ts'
import type { Signature } from '../core/agreement/revision.ts'
import { paperWords } from '../words/summary/paperWords.ts'
import { facesOf } from './faces.ts'
import { layOut } from './layOut.ts'
import { bytesOf, makeDocument } from './makeDocument.ts'
import { pageSize } from './pageSize.ts'
import type { SummaryPdfInput } from './pdfInput.ts'

/**
 * The summary as a PDF: content, drawing, and the agreement's canonical bytes attached as `agreement.json`, the
 * signatures as `signatures.json` where there are any; without attachments where none are given. Same input, same bytes.
 */
export async function summaryPdf(input: SummaryPdfInput): Promise<Uint8Array> {
  const { content, drawing, standing, title, language, units, madeAt, fonts, attachments, stop } = input
  const page = pageSize(units)
  const pages = layOut(content, drawing, { title, standing }, facesOf(fonts), page)
  const document = await makeDocument(
    pages,
    page,
    { title: plainTitle(title), language, madeAt, stop },
    fonts,
  )
  const dates = madeAt === undefined ? {} : { creationDate: madeAt, modificationDate: madeAt }
  const attach = (text: string, name: string, description: string) =>
    document.attach(new TextEncoder().encode(text), name, {
      mimeType: 'application/json',
      description,
      afRelationship: AFRelationship.Source,
      ...dates,
    })
  if (attachments === undefined) return bytesOf(document)
  await attach(attachments.agreementText, 'agreement.json', paperWords.agreementAttached)
  if (attachments.signatures.length > 0) {
    await attach(signaturesText(attachments.signatures), 'signatures.json', paperWords.signaturesAttached)
  }
  return bytesOf(document)
}

/** The signatures as canonical JSON, times in ISO 8601. */
export function signaturesText(signatures: readonly Signature[]): string {
  return canonicalText(
    signatures.map(({ signedAt, ...signature }) => ({ ...signature, signedAt: signedAt.toISOString() })),
  )
}

/** A title for the window's bar: without control characters. */
export function plainTitle(title: string): string {
  return title.replace(/[\p{Cc}\p{Cf}]/gu, ' ').trim()
}
