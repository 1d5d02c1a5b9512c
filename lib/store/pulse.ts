import type { Household } from '../core/people/household.ts'
import { database } from './database.ts'
import { storedHousehold } from './storedHousehold.ts'

/** Where a notebook stands: another text wherever anything in it has changed. */
export type Pulse = {
  readonly text: string
  /** What last went on record, and by whom; undefined while nothing has. */
  readonly newest?: { readonly household: Household; readonly itemKey: string; readonly kind: string }
}

/** Two short reads by index: cheap enough to be asked again every second by every page that is open. */
export async function pulseOf(notebookId: string): Promise<Pulse | undefined> {
  return database().read(async (tables) => {
    const notebook = await tables.notebook.findUnique({
      where: { id: notebookId },
      select: { edit: true },
    })
    if (notebook === null) return undefined
    const newest = await tables.change.findFirst({
      where: { notebookId },
      orderBy: { id: 'desc' },
      select: { id: true, household: true, itemKey: true, kind: true },
    })
    const text = `${notebook.edit}.${newest?.id ?? 0}`
    if (newest === null) return { text }
    const { household, itemKey, kind } = newest
    return { text, newest: { household: storedHousehold(household), itemKey, kind } }
  })
}
