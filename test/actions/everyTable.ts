import { database } from '../../lib/store/database.ts'

/** All that the install remembers, table by table, row by row. */
export type Remembered = Readonly<Record<string, readonly Record<string, unknown>[]>>

/**
 * Every table of the database as it stands. The count of write transactions is left out unless it is asked for: a
 * household whose form is refused has still been at the door for writing.
 */
export async function everyTable(options: { readonly withDoor?: boolean } = {}): Promise<Remembered> {
  return database().read(async (tables) => {
    const named = await tables.$queryRawUnsafe<{ name: string }[]>(
      `SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name`,
    )
    const remembered: Record<string, Record<string, unknown>[]> = {}
    for (const { name } of named) {
      if (name === 'WriteLock' && !options.withDoor) continue
      remembered[name] = await tables.$queryRawUnsafe(`SELECT * FROM "${name}" ORDER BY rowid`)
    }
    return remembered
  })
}

/** The rows that are new in a table. */
export function newRows(
  before: Remembered,
  after: Remembered,
  table: string,
): readonly Record<string, unknown>[] {
  const known = new Set((before[table] ?? []).map((row) => JSON.stringify(row)))
  return (after[table] ?? []).filter((row) => !known.has(JSON.stringify(row)))
}
