import { notFound } from 'next/navigation'
import type { Opened, Standing } from './opened.ts'

/** The standing of one agreed item; "not found" where there is none with this key. */
export function standingOf(opened: Opened, itemKey: string): Standing {
  return opened.standings.find((standing) => standing.item.key === itemKey) ?? notFound()
}
