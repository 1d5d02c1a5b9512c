// Which migrations a database has had, told from the record that Prisma keeps inside it. Asking the file itself, and not a
// note beside it, stays true when a data folder is restored from a backup, moved or deleted.
import { existsSync } from 'node:fs'
import path from 'node:path'

/**
 * @typedef {new (file: string, options: { readonly: boolean }) => {
 *   prepare(sql: string): { pluck(): { all(): unknown[] } },
 *   close(): void,
 * }} DatabaseDriver better-sqlite3's constructor, as far as it is used here
 */

const databaseFile = 'mearing.db'

/**
 * @param {DatabaseDriver} Driver
 * @param {string} dataFolder
 * @param {string[]} known the migrations of this program
 * @returns {{ pending: boolean, unknown: string[] }} whether any is still to be applied; which ones the database has had that
 *   this program does not know
 */
export function pendingMigrations(Driver, dataFolder, known) {
  const applied = appliedMigrations(Driver, path.join(dataFolder, databaseFile))
  return {
    pending: known.some((name) => !applied.includes(name)),
    unknown: applied.filter((name) => !known.includes(name)),
  }
}

/**
 * @param {DatabaseDriver} Driver
 * @param {string} file
 * @returns {string[]} empty for a file that is missing or holds no such record: then Prisma has the word
 */
function appliedMigrations(Driver, file) {
  if (!existsSync(file)) return []
  try {
    const database = new Driver(file, { readonly: true })
    try {
      const finished = 'SELECT migration_name FROM _prisma_migrations WHERE finished_at IS NOT NULL'
      return database.prepare(`${finished} AND rolled_back_at IS NULL`).pluck().all().map(String)
    } finally {
      database.close()
    }
  } catch {
    return []
  }
}
