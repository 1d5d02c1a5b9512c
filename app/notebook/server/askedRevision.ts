import { notFound } from 'next/navigation'
import type { Opened } from './opened.ts'
import type { FrozenRevision } from './standingRevision.ts'

/** The revision that an address asks for by `?revision=2`; undefined where it asks for none, "not found" where there is none. */
export function askedRevision(opened: Opened, request: Request): FrozenRevision | undefined {
  const asked = new URL(request.url).searchParams.get('revision')
  if (asked === null) return undefined
  const revisions = opened.revisions
  return revisions.find(({ revision }) => String(revision.number) === asked) ?? notFound()
}
