import { describe, expect, test } from 'vitest'
import { looksLikeNotebookId, looksLikeToken, newNotebookId, newToken } from '../../lib/store/randomToken.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'

describe('a hash', () => {
  // NIST, "Cryptographic Standards and Guidelines: Examples with Intermediate Values", SHA-256, one block message "abc".
  // From memory; `printf abc | sha256sum` says the same.
  test('of "abc" is the published one', () => {
    expect(sha256Hex('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
  })

  test('of text is that of its UTF-8 bytes', () => {
    expect(sha256Hex('Ł ⅜')).toBe(sha256Hex(new Uint8Array([0xc5, 0x81, 0x20, 0xe2, 0x85, 0x9c])))
  })
})

describe('random names', () => {
  test('have 256 and 128 bits and fit in an address as they are', () => {
    for (let time = 0; time < 200; time += 1) {
      const token = newToken()
      const id = newNotebookId()
      expect(Buffer.from(token, 'base64url')).toHaveLength(32)
      expect(Buffer.from(id, 'base64url')).toHaveLength(16)
      expect(encodeURIComponent(token + id)).toBe(token + id)
      expect(looksLikeToken(token)).toBe(true)
      expect(looksLikeNotebookId(id)).toBe(true)
    }
  })

  test('do not come twice', () => {
    const many = Array.from({ length: 1000 }, newToken)
    expect(new Set(many).size).toBe(1000)
  })

  test.each(['', 'x', '../../etc/passwd', `${'A'.repeat(42)}=`, 'A'.repeat(44), `${'A'.repeat(43)}\n`])(
    'are not mistaken: %j is neither',
    (text) => {
      expect(looksLikeToken(text)).toBe(false)
      expect(looksLikeNotebookId(text)).toBe(false)
    },
  )
})
