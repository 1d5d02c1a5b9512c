import type { Household } from '../core/people/household.ts'
import { database } from './database.ts'

/** The newest entry of the log that a household has said it has seen; 0 where it never said so. */
export async function seenUpTo(notebookId: string, household: Household): Promise<number> {
  const look = await database().read((tables) =>
    tables.look.findUnique({ where: { notebookId_household: { notebookId, household } } }),
  )
  return look?.newest ?? 0
}

/** Says, for one household, that everything up to an entry of the log was seen. Never goes back. */
export async function haveSeen(look: {
  readonly notebookId: string
  readonly household: Household
  readonly newest: number
  readonly at: Date
}): Promise<void> {
  const { notebookId, household, newest, at } = look
  await database().write(async (tables) => {
    const place = { notebookId_household: { notebookId, household } }
    const before = await tables.look.findUnique({ where: place })
    const known = await tables.change.count({ where: { id: newest, notebookId } })
    if (known === 0 || (before !== null && before.newest >= newest)) return
    await tables.look.upsert({
      where: place,
      create: { notebookId, household, newest, at },
      update: { newest, at },
    })
  })
}
