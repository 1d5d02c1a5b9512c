import { createHash, verify, X509Certificate } from 'node:crypto'
import type { RecordProblem, RecordSeal } from '../core/agreement/recordFindings.ts'
import { fingerprintOf } from './certificate.ts'
import { type Der, derTags, firstDer, identifierText, insideDer, timeOf } from './der.ts'
import type { SealedRange } from './sealedRange.ts'

const identifiers = {
  data: '1.2.840.113549.1.7.1',
  signedData: '1.2.840.113549.1.7.2',
  contentType: '1.2.840.113549.1.9.3',
  messageDigest: '1.2.840.113549.1.9.4',
  signingTime: '1.2.840.113549.1.9.5',
  sha256: '2.16.840.1.101.3.4.2.1',
  rsa: '1.2.840.113549.1.1.1',
  rsaWithSha256: '1.2.840.113549.1.1.11',
} as const

/** Shorter keys can be broken; longer ones than this only cost time. In bits. */
const [shortestKey, longestKey] = [2048, 8192]

type SignerParts = {
  readonly certificate: X509Certificate
  /** The signed attributes as they are signed: a SET (RFC 5652, 5.4). */
  readonly signedAttributes: Buffer
  readonly attributes: ReadonlyMap<string, Der>
  readonly signature: Uint8Array
}

/**
 * Verifies a detached PKCS#7 signature (RFC 5652) over the sealed bytes: one signer, SHA-256 with RSA, the certificate
 * inside. Who made the certificate is nobody's word but its own, so nothing is asked about it.
 */
export function verifyDetached({ pieces, signature }: SealedRange): RecordSeal | RecordProblem {
  const parts = signerParts(signature)
  if (parts === undefined) return { kind: 'seal-form' }
  const { certificate, attributes } = parts
  const digest = createHash('sha256').update(pieces[0]).update(pieces[1]).digest()
  const stated = attributes.get(identifiers.messageDigest)
  if (
    stated?.tag !== derTags.octets ||
    identifierText(attributes.get(identifiers.contentType)) !== identifiers.data
  )
    return { kind: 'seal-form' }
  if (!digest.equals(stated.content)) return { kind: 'bytes-changed' }
  const key = certificate.publicKey
  const bits = key.asymmetricKeyDetails?.modulusLength ?? 0
  if (key.asymmetricKeyType !== 'rsa' || bits < shortestKey || bits > longestKey) return { kind: 'seal-form' }
  if (!verifies(parts)) return { kind: 'seal-broken' }
  const sealedAt = timeOf(attributes.get(identifiers.signingTime))
  return { certificateSha256: fingerprintOf(certificate), ...(sealedAt && { sealedAt }) }
}

function verifies({ certificate, signedAttributes, signature }: SignerParts): boolean {
  try {
    return verify('sha256', signedAttributes, certificate.publicKey, signature)
  } catch {
    // A key of figures that no key has.
    return false
  }
}

/** Takes ContentInfo apart (RFC 5652, 5.1 and 5.3). `undefined` where it has any other form. */
function signerParts(bytes: Uint8Array): SignerParts | undefined {
  const outer = firstDer(bytes)
  // Behind the signature the room that was kept for it is filled up with zeros.
  if (outer === undefined || outer.rest.some((byte) => byte !== 0)) return undefined
  const [type, wrapped] = insideDer(outer.value) ?? []
  if (identifierText(type) !== identifiers.signedData || wrapped?.tag !== derTags.zero) return undefined
  const [, , content, ...others] = insideDer(insideDer(wrapped)?.[0]) ?? []
  const [contentType, ...contents] = insideDer(content) ?? []
  if (identifierText(contentType) !== identifiers.data || contents.length > 0) return undefined
  const signers = insideDer(others.find(({ tag }) => tag === derTags.set)) ?? []
  const certificates = insideDer(others.find(({ tag }) => tag === derTags.zero)) ?? []
  const [signer] = signers
  if (signer === undefined || signers.length !== 1 || certificates.length > 8) return undefined
  return partsOf(signer, certificates)
}

function partsOf(signer: Der, certificates: readonly Der[]): SignerParts | undefined {
  const [, named, digestAlgorithm, signed, signatureAlgorithm, signature] = insideDer(signer) ?? []
  const [issuer, serial] = insideDer(named) ?? []
  const algorithm = identifierText(insideDer(signatureAlgorithm)?.[0])
  if (
    !issuer ||
    !serial ||
    signed?.tag !== derTags.zero ||
    signature?.tag !== derTags.octets ||
    identifierText(insideDer(digestAlgorithm)?.[0]) !== identifiers.sha256 ||
    (algorithm !== identifiers.rsa && algorithm !== identifiers.rsaWithSha256)
  )
    return undefined
  const attributes = attributesOf(signed)
  const certificate = certificates.find((one) => isNamed(one, issuer, serial))
  if (!attributes || !certificate) return undefined
  const signedAttributes = Buffer.from(signed.whole)
  signedAttributes[0] = derTags.set
  try {
    const read = new X509Certificate(certificate.whole)
    // Asked for here because a key that can't be read throws.
    return read.publicKey && { certificate: read, signedAttributes, attributes, signature: signature.content }
  } catch {
    return undefined
  }
}

/** Each attribute has one value and stands once (RFC 5652, 11). */
function attributesOf(signed: Der): Map<string, Der> | undefined {
  const attributes = new Map<string, Der>()
  for (const attribute of insideDer(signed) ?? []) {
    const [type, values] = insideDer(attribute) ?? []
    const [value, ...more] = insideDer(values) ?? []
    const name = identifierText(type)
    if (name === undefined || value === undefined || more.length > 0 || attributes.has(name)) return undefined
    attributes.set(name, value)
  }
  return attributes
}

/** Whether a certificate has this issuer and this serial number (RFC 5280, 4.1). */
function isNamed(certificate: Der, issuer: Der, serial: Der): boolean {
  const parts = insideDer(insideDer(certificate)?.[0]) ?? []
  // The version comes first, unless it is the oldest one.
  const [itsSerial, , itsIssuer] = parts[0]?.tag === derTags.zero ? parts.slice(1) : parts
  return same(itsSerial, serial) && same(itsIssuer, issuer)
}

function same(one: Der | undefined, other: Der): boolean {
  return one !== undefined && Buffer.from(one.whole).equals(other.whole)
}
