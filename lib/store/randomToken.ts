import { randomBytes } from 'node:crypto'

/** A secret of 256 random bits, as 43 url-safe characters (base64url, RFC 4648 section 5). Only its hash is stored. */
export function newToken(): string {
  return randomBytes(32).toString('base64url')
}

/** 128 random bits, as 22 url-safe characters: names a notebook, and cannot be guessed. */
export function newNotebookId(): string {
  return randomBytes(16).toString('base64url')
}

/** Whether text could be a token at all; anything else need not be looked up. A browser may send what is no text. */
export function looksLikeToken(text: unknown): boolean {
  return typeof text === 'string' && /^[A-Za-z0-9_-]{43}$/.test(text)
}

/** Whether text could be a notebook's id at all. */
export function looksLikeNotebookId(text: unknown): boolean {
  return typeof text === 'string' && /^[A-Za-z0-9_-]{22}$/.test(text)
}
