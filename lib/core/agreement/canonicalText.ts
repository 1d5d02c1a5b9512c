import canonicalize from 'canonicalize'
import { assert } from '../assert.ts'

/** The canonical form of JSON data by RFC 8785: same data, same text, whatever the order of keys was. */
export function canonicalText(data: unknown): string {
  const text = canonicalize(data)
  assert(text !== undefined, 'JSON data has a canonical form')
  return text
}

/** Keys of the notebook file that are no part of what is signed: the books, and the letter that first asked. */
export const unsignedKeys = ['contributions', 'books', 'letter'] as const

/**
 * What is signed: the canonical form of the notebook file without its books and its first letter. Receipts go on being
 * logged after signing and change nothing in it.
 */
export function agreementText(document: { readonly [key: string]: unknown }): string {
  const { contributions: _given, books: _books, letter: _letter, ...agreement } = document
  return canonicalText(agreement)
}
