import { createHash, verify, X509Certificate } from 'node:crypto'
import type { RecordProblem, RecordSeal } from '../core/agreement/recordFindings.ts'
import { fingerprintOf } from './certificate.ts'
import { type Der, derTags, firstDer, identifierText, insideDer, sameDer, timeOf } from './der.ts'
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

/**
 * Takes ContentInfo apart (RFC 5652, 5.1 and 5.3). `undefined` where it has any other form than our own: what the signature
 * does not cover may be spelt in one way only, so that no byte of it can be changed unseen.
 */
function signerParts(bytes: Uint8Array): SignerParts | undefined {
  const outer = firstDer(bytes)
  // Behind the signature the room that was kept for it is filled up with zeros.
  if (outer === undefined || outer.rest.some((byte) => byte !== 0)) return undefined
  const [type, wrapped, ...moreOutside] = insideDer(outer.value, derTags.sequence) ?? []
  const [signedData, ...moreWrapped] = insideDer(wrapped, derTags.zero) ?? []
  const [version, digestAlgorithms, content, certificates, signers, ...moreInside] =
    insideDer(signedData, derTags.sequence) ?? []
  const [digestAlgorithm, ...moreAlgorithms] = insideDer(digestAlgorithms, derTags.set) ?? []
  const [contentType, ...contents] = insideDer(content, derTags.sequence) ?? []
  const [certificate, ...moreCertificates] = insideDer(certificates, derTags.zero) ?? []
  const [signer, ...moreSigners] = insideDer(signers, derTags.set) ?? []
  const more = [moreOutside, moreWrapped, moreInside, moreAlgorithms, contents, moreCertificates, moreSigners]
  if (
    identifierText(type) !== identifiers.signedData ||
    identifierText(contentType) !== identifiers.data ||
    !isOne(version) ||
    !isAlgorithm(digestAlgorithm, identifiers.sha256) ||
    more.some((values) => values.length > 0) ||
    signer === undefined ||
    certificate === undefined
  )
    return undefined
  return partsOf(signer, certificate)
}

function partsOf(signer: Der, certificate: Der): SignerParts | undefined {
  const [version, named, digestAlgorithm, signed, signatureAlgorithm, signature, ...more] =
    insideDer(signer, derTags.sequence) ?? []
  const read = selfMade(certificate, named)
  const attributes = attributesOf(signed)
  if (
    !read ||
    !attributes ||
    !signed ||
    signature?.tag !== derTags.octets ||
    !isOne(version) ||
    !isAlgorithm(digestAlgorithm, identifiers.sha256) ||
    !(
      isAlgorithm(signatureAlgorithm, identifiers.rsa) ||
      isAlgorithm(signatureAlgorithm, identifiers.rsaWithSha256)
    ) ||
    more.length > 0
  )
    return undefined
  const signedAttributes = Buffer.from(signed.whole)
  signedAttributes[0] = derTags.set
  return { certificate: read, signedAttributes, attributes, signature: signature.content }
}

/**
 * The certificate, if it is the one that the signer names by issuer and serial number, and signed by its own key (RFC 5280,
 * 4.1): every seal of this program carries such a one, and so its bytes too are covered by a signature.
 */
function selfMade(certificate: Der, named: Der | undefined): X509Certificate | undefined {
  const [issuer, serial, ...more] = insideDer(named, derTags.sequence) ?? []
  const [toBeSigned, , signature] = insideDer(certificate, derTags.sequence) ?? []
  const [version, itsSerial, , itsIssuer] = insideDer(toBeSigned, derTags.sequence) ?? []
  if (
    more.length > 0 ||
    version?.tag !== derTags.zero ||
    !sameDer(itsSerial, serial) ||
    !sameDer(itsIssuer, issuer) ||
    signature?.tag !== derTags.bits ||
    signature.content[0] !== 0
  )
    return undefined
  try {
    const read = new X509Certificate(certificate.whole)
    return read.verify(read.publicKey) ? read : undefined
  } catch {
    return undefined
  }
}

/** Each attribute has one value and stands once (RFC 5652, 11). */
function attributesOf(signed: Der | undefined): Map<string, Der> | undefined {
  const attributes = new Map<string, Der>()
  for (const attribute of insideDer(signed, derTags.zero) ?? []) {
    const [type, values] = insideDer(attribute, derTags.sequence) ?? []
    const [value, ...more] = insideDer(values, derTags.set) ?? []
    const name = identifierText(type)
    if (name === undefined || value === undefined || more.length > 0 || attributes.has(name)) return undefined
    attributes.set(name, value)
  }
  return attributes
}

/** The version number 1. */
function isOne(der: Der | undefined): boolean {
  return der?.tag === derTags.integer && der.content.length === 1 && der.content[0] === 1
}

/** An algorithm without parameters, which are written as nothing. */
function isAlgorithm(der: Der | undefined, identifier: string): boolean {
  const [name, parameters, ...more] = insideDer(der, derTags.sequence) ?? []
  return (
    identifierText(name) === identifier &&
    parameters?.tag === derTags.nothing &&
    parameters.content.length === 0 &&
    more.length === 0
  )
}
