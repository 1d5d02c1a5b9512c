import type { Household } from '../core/people/household.ts'
import { findEntryKey } from '../store/entryKeys.ts'

/** What the token in an opened address lets someone do. */
export type OpenedKey =
  | { readonly kind: 'link'; readonly notebookId: string; readonly household: Household }
  | { readonly kind: 'invitation'; readonly notebookId: string; readonly household: Household }
  | { readonly kind: 'used-invitation'; readonly notebookId: string; readonly usedAt: Date }

/**
 * Looks at a token without using it up: a preview of the link, made by a messenger, must not let anyone in. An unknown,
 * a revoked and a malformed token look the same, so that nobody learns from the answer what once was.
 */
export async function lookAtToken(token: string): Promise<OpenedKey | undefined> {
  const key = await findEntryKey(token)
  if (key === undefined || key.revokedAt !== undefined) {
    return undefined
  }
  const { kind, notebookId, household, usedAt } = key
  if (kind === 'invitation' && usedAt !== undefined) {
    return { kind: 'used-invitation', notebookId, usedAt }
  }
  return { kind, notebookId, household }
}
