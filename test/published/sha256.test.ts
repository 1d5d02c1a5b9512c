import { expect, test } from 'vitest'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'

// FIPS 180-4 and its examples, from memory of the standard, recomputed.
test.each([
  ['nothing', '', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['“abc”', 'abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'the message of 448 bits',
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  [
    'a million times a',
    'a'.repeat(1_000_000),
    'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0',
  ],
])('SHA-256 of %s', (_, message, digest) => {
  expect(sha256Hex(message)).toBe(digest)
  expect(sha256Hex(new TextEncoder().encode(message))).toBe(digest)
})

test('recomputed: the fingerprint of data is the SHA-256 of its canonical text', () => {
  expect(fingerprintOf({ b: 'x', a: 1 })).toBe(
    'ecf9e98ec0641e23113ff3ce8bdc78d0ddd249886517fd4a7f68cc83d4e65667',
  )
})
