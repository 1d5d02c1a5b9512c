import type { ReaderThing } from '../../lib/access/readerAccess.ts'

/** The function that answers what a reader's link opens, as `everyAddress` names it. */
export function readerFile(thing: ReaderThing): string {
  const folder = 'app/read/[token]'
  if (thing === 'page') return `${folder}/page.tsx#default`
  return thing.includes('.') ? `${folder}/${thing}/route.ts#GET` : `${folder}/${thing}/page.tsx#default`
}
