import { pdflibAddPlaceholder } from '@signpdf/placeholder-pdf-lib'
import { P12Signer } from '@signpdf/signer-p12'
import { SignPdf } from '@signpdf/signpdf'
import forge from 'node-forge'
import { PDFDocument } from 'pdf-lib'
import { type SealKey, sealSubject } from './certificate.ts'
import { verifyDetached } from './detachedSignature.ts'
import { everyDictionary } from './everyDictionary.ts'
import { readPdfFile } from './pdfFile.ts'
import { sealedRange } from './sealedRange.ts'

/** What a reader of PDFs shows as the reason of the signature. */
export const sealReason = 'Locked copy: nothing changed since'

/** Hexadecimal digits kept free for the signature; one with our certificate takes about 3,200. */
const roomForSignature = 8192

/**
 * The same document with a signature field over the whole of it: a detached PKCS#7 signature (ISO 32000-1, 12.8.3.3), its
 * ByteRange the whole file but the signature itself. `at` is the signing time, whole seconds; no clock is asked. Same
 * document, key and time, same bytes.
 *
 * `pdf` is a PDF without a signature as `lib/pdf` makes it; throws where it is none, and where the seal would not hold: no
 * such paper is handed out.
 */
export async function sealPdf(pdf: Uint8Array, key: SealKey, at: Date): Promise<Uint8Array> {
  const signingTime = new Date(Math.floor(at.getTime() / 1000) * 1000)
  const document = await PDFDocument.load(pdf, { updateMetadata: false })
  pdflibAddPlaceholder({
    pdfDoc: document,
    reason: sealReason,
    name: sealSubject,
    contactInfo: '',
    location: '',
    signingTime,
    signatureLength: roomForSignature,
  })
  const prepared = await document.save({ useObjectStreams: false, updateFieldAppearances: false })
  const sealed = await new SignPdf().sign(prepared, new P12Signer(bundleOf(key)), signingTime)
  assertSealed(sealed)
  return new Uint8Array(sealed)
}

/** Looks at the seal as whoever checks the record will. */
function assertSealed(sealed: Uint8Array): void {
  const file = readPdfFile(sealed)
  const range = sealedRange(file, everyDictionary(file))
  const seal = 'kind' in range ? range : verifyDetached(range)
  if ('kind' in seal) throw new Error(`the seal that was made does not hold: ${seal.kind}`)
}

/** Key and certificate in the form that the signer takes (PKCS#12); it never leaves the memory, so it has no passphrase. */
function bundleOf(key: SealKey): Buffer {
  const bundle = forge.pkcs12.toPkcs12Asn1(
    forge.pki.privateKeyFromPem(key.privateKeyPem),
    [forge.pki.certificateFromPem(key.certificatePem)],
    '',
    { algorithm: '3des', count: 1 },
  )
  return Buffer.from(forge.asn1.toDer(bundle).getBytes(), 'binary')
}
