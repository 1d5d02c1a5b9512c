import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { pendingMigrations } from '../../lib/commands/migrations.mjs'

const Database = createRequire(import.meta.url)('better-sqlite3')

let dataFolder: string
beforeEach(() => {
  dataFolder = mkdtempSync(path.join(tmpdir(), 'mearing-migrations-'))
})
afterEach(() => {
  rmSync(dataFolder, { recursive: true, force: true })
})

/** Writes a database with Prisma's own record: each migration's name, whether it was finished, whether it was taken back. */
function databaseThatHad(...migrations: [name: string, finished: boolean, takenBack: boolean][]) {
  const database = new Database(path.join(dataFolder, 'mearing.db'))
  database.exec(
    'CREATE TABLE _prisma_migrations (migration_name TEXT, finished_at INTEGER, rolled_back_at INTEGER)',
  )
  const record = database.prepare('INSERT INTO _prisma_migrations VALUES (?, ?, ?)')
  for (const [name, finished, takenBack] of migrations)
    record.run(name, finished ? 1 : null, takenBack ? 1 : null)
  database.close()
}

const asked = (...known: string[]) => pendingMigrations(Database, dataFolder, known)

describe('a start prepares the database', () => {
  test('when there is none', () => {
    expect(asked('first')).toEqual({ pending: true, unknown: [] })
  })

  test('when a migration is new', () => {
    databaseThatHad(['first', true, false])
    expect(asked('first', 'second')).toEqual({ pending: true, unknown: [] })
  })

  test('when a migration broke off or was taken back', () => {
    databaseThatHad(['first', false, false], ['second', true, true])
    expect(asked('first', 'second')).toEqual({ pending: true, unknown: [] })
  })

  test('when the file is no database: then Prisma says what is wrong with it', () => {
    writeFileSync(path.join(dataFolder, 'mearing.db'), 'a shopping list')
    expect(asked('first')).toEqual({ pending: true, unknown: [] })
  })

  test('but not when it has had them all', () => {
    databaseThatHad(['first', true, false], ['second', true, false])
    expect(asked('first', 'second')).toEqual({ pending: false, unknown: [] })
  })
})

test('a migration that this program does not know is named', () => {
  databaseThatHad(['first', true, false], ['from a newer version', true, false])
  expect(asked('first').unknown).toEqual(['from a newer version'])
})
