import { createPrivateKey, generateKeyPair, verify, X509Certificate } from 'node:crypto'
import { promisify } from 'node:util'
import forge from 'node-forge'

/** A private key and its certificate, both as PEM (RFC 7468). The fingerprint is SHA-256 of the certificate's DER, hex. */
export type SealKey = {
  readonly privateKeyPem: string
  readonly certificatePem: string
  readonly fingerprint: string
}

/** On every certificate: it names no person, because the seal says nothing about who signed. */
export const sealSubject = "Mearing notebook, this install's own seal"

const yearsValid = 20

/** A new RSA key of 2048 bits and a certificate signed by itself, good for 20 years from `now`. */
export async function makeSealKey(now: Date): Promise<SealKey> {
  const pair = await promisify(generateKeyPair)('rsa', {
    modulusLength: 2048,
    publicExponent: 0x10001,
    publicKeyEncoding: { type: 'spki', format: 'pem' },
    privateKeyEncoding: { type: 'pkcs8', format: 'pem' },
  })
  const certificate = forge.pki.createCertificate()
  certificate.publicKey = forge.pki.publicKeyFromPem(pair.publicKey)
  certificate.serialNumber = serialNumber()
  certificate.validity.notBefore = now
  certificate.validity.notAfter = new Date(now)
  certificate.validity.notAfter.setUTCFullYear(now.getUTCFullYear() + yearsValid)
  const name = [{ name: 'commonName', value: sealSubject }]
  certificate.setSubject(name)
  certificate.setIssuer(name)
  certificate.setExtensions([
    { name: 'basicConstraints', cA: false, critical: true },
    { name: 'keyUsage', digitalSignature: true, nonRepudiation: true, critical: true },
  ])
  certificate.sign(forge.pki.privateKeyFromPem(pair.privateKey), forge.md.sha256.create())
  return sealKeyOf(pair.privateKey, forge.pki.certificateToPem(certificate))
}

/**
 * Puts the two together. Throws where either can't be read, or where what the one signs is not what the other verifies: a
 * key that is damaged in part would sign all the same, and its seals would not hold.
 */
export function sealKeyOf(privateKeyPem: string, certificatePem: string): SealKey {
  const certificate = new X509Certificate(certificatePem)
  if (!certificate.verify(certificate.publicKey)) throw new Error('the certificate is damaged')
  if (!certificate.checkPrivateKey(createPrivateKey(privateKeyPem)))
    throw new Error('the private key is not that of the certificate')
  const trial = 'a trial of the seal'
  const digest = forge.md.sha256.create().update(trial)
  // Signed the way a seal is, verified another way.
  const signature = forge.pki.privateKeyFromPem(privateKeyPem).sign(digest)
  if (!verify('sha256', Buffer.from(trial), certificate.publicKey, Buffer.from(signature, 'binary')))
    throw new Error('the private key is damaged')
  return { privateKeyPem, certificatePem, fingerprint: fingerprintOf(certificate) }
}

/** SHA-256 of the certificate as 64 lower-case hexadecimal digits. */
export function fingerprintOf(certificate: X509Certificate): string {
  return certificate.fingerprint256.replaceAll(':', '').toLowerCase()
}

/** Positive and never twice (RFC 5280, 4.1.2.2): 127 random bits. */
function serialNumber(): string {
  const bytes = forge.util.bytesToHex(forge.random.getBytesSync(16))
  return (Number.parseInt(bytes.slice(0, 1), 16) % 7) + 1 + bytes.slice(1)
}
