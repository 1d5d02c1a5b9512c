import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { agreedItems } from '../../lib/core/agreement/agreedItems.ts'
import { agreementText, canonicalText } from '../../lib/core/agreement/canonicalText.ts'
import { readNotebook, unknownKeys } from '../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'

/** See never-regenerate.md: these files stay as they are for ever. */
const folder = join(import.meta.dirname, 'version-1')

type Digests = { 'canonical.txt': string; 'agreement.txt': string; marks: Record<string, string> }

const names = readdirSync(folder)

test('the two notebooks that were kept first are still there', () => {
  expect(names).toEqual(expect.arrayContaining(['full', 'small']))
})

describe.each(names)('the %s notebook of version 1', (name) => {
  const kept = (file: string) => readFileSync(join(folder, name, file), 'utf8')
  const digests = JSON.parse(kept('sha256.json')) as Digests
  const read = readNotebook(kept('notebook.json'))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  const { document } = read.value

  test('holds, and has no key that the program does not know', () => {
    expect(unknownKeys(document)).toEqual([])
  })

  test('has the canonical text it always had', () => {
    expect(canonicalText(document)).toBe(kept('canonical.txt'))
    expect(sha256Hex(canonicalText(document))).toBe(digests['canonical.txt'])
  })

  test('has the text to sign that it always had', () => {
    expect(agreementText(document)).toBe(kept('agreement.txt'))
    expect(sha256Hex(agreementText(document))).toBe(digests['agreement.txt'])
  })

  test('keeps its kept texts unharmed', () => {
    for (const file of ['canonical.txt', 'agreement.txt'] as const)
      expect(sha256Hex(readFileSync(join(folder, name, file)))).toBe(digests[file])
  })

  test('has the fingerprints that marks were set on', () => {
    const marks = agreedItems(document).map(({ key, inputs }) => [key, fingerprintOf(inputs)])
    expect(Object.fromEntries(marks)).toEqual(digests.marks)
  })

  test('reads back from its canonical text as the same notebook', () => {
    const again = readNotebook(kept('canonical.txt'))
    expect(again.ok && again.value.notebook).toEqual(read.value.notebook)
  })
})

test('the full notebook uses every key of the example in the format’s description', () => {
  const text = readFileSync(join(import.meta.dirname, '../../lib/forms/notebook-format.md'), 'utf8')
  const commented = /```jsonc\n([\s\S]*?)```/.exec(text)?.[1] ?? ''
  const example = commented.replaceAll(/\/\/.*$/gm, '')
  const described = new Set([...example.matchAll(/"([A-Za-z]+)":/g)].map(([, key]) => key))
  const full = readFileSync(join(folder, 'full/notebook.json'), 'utf8')
  const used = new Set([...full.matchAll(/"([A-Za-z]+)":/g)].map(([, key]) => key))
  expect(described.size).toBeGreaterThan(60)
  expect([...described].filter((key) => !used.has(key))).toEqual([])
})
