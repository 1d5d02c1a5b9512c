import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PrismaBetterSQLite3 } from '@prisma/adapter-better-sqlite3'
import { afterEach, beforeEach } from 'vitest'
import { closeDatabase } from '../../lib/store/database.ts'
import { databasePath } from '../../lib/store/dataFolder.ts'

const migrations = join(import.meta.dirname, '../../prisma/migrations')

/** The SQL of every migration, in the order in which they are applied. */
export function migrationScripts(): string[] {
  return readdirSync(migrations, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => readFileSync(join(migrations, name, 'migration.sql'), 'utf8'))
}

/** Makes a database file with every migration applied. */
export async function makeDatabaseFile(path: string): Promise<void> {
  const connection = await new PrismaBetterSQLite3({ url: `file:${path}` }).connect()
  for (const script of migrationScripts()) {
    await connection.executeScript(script)
  }
  await connection.dispose()
}

/** Gives every test of the file a data folder of its own, with a real database file in it. */
export function temporaryDatabaseForEachTest(): void {
  let folder = ''
  const setBefore = process.env.MEARING_DATA

  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'mearing-store-'))
    process.env.MEARING_DATA = folder
    await makeDatabaseFile(databasePath())
  })

  afterEach(async () => {
    await closeDatabase()
    rmSync(folder, { recursive: true })
    if (setBefore === undefined) {
      delete process.env.MEARING_DATA
    } else {
      process.env.MEARING_DATA = setBefore
    }
  })
}
