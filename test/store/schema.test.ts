import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PrismaBetterSQLite3 } from '@prisma/adapter-better-sqlite3'
import { describe, expect, test } from 'vitest'
import { openDatabase } from '../../lib/store/database.ts'
import { migrationScripts } from './temporaryDatabase.ts'

const root = join(import.meta.dirname, '../..')

function prisma(environment: Record<string, string>, ...command: string[]): string {
  const program = join(root, 'node_modules/prisma/build/index.js')
  return execFileSync(process.execPath, [program, ...command, '--config', 'prisma/prisma.config.ts'], {
    cwd: root,
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', CHECKPOINT_DISABLE: '1', ...environment },
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  })
}

type Connection = Awaited<ReturnType<PrismaBetterSQLite3['connect']>>

async function rows(connection: Connection, sql: string): Promise<unknown[][]> {
  return (await connection.queryRaw({ sql, args: [], argTypes: [] })).rows
}

/** Tables, columns, indexes and foreign keys, in an order that does not hang on how they came about. */
async function layoutOf(scripts: readonly string[]): Promise<Record<string, unknown>> {
  const connection = await new PrismaBetterSQLite3({ url: ':memory:' }).connect()
  for (const script of scripts) {
    await connection.executeScript(script)
  }
  const layout: Record<string, unknown> = {}
  const tables = await rows(
    connection,
    `SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name`,
  )
  for (const [table] of tables) {
    const indexes = await rows(
      connection,
      `SELECT i.name, i."unique", i.origin, group_concat(c.name) FROM pragma_index_list('${table}') i, pragma_index_info(i.name) c GROUP BY i.name ORDER BY i.name`,
    )
    layout[String(table)] = {
      columns: await rows(
        connection,
        `SELECT name, type, "notnull", dflt_value, pk FROM pragma_table_info('${table}') ORDER BY name`,
      ),
      indexes,
      foreignKeys: await rows(
        connection,
        `SELECT "table", "from", "to", on_update, on_delete FROM pragma_foreign_key_list('${table}') ORDER BY "from"`,
      ),
    }
  }
  await connection.dispose()
  return layout
}

describe('the migrations and the schema', () => {
  test('lay out the same tables, columns, indexes and foreign keys', async () => {
    const fromEmpty = prisma(
      {},
      'migrate',
      'diff',
      '--from-empty',
      '--to-schema-datamodel',
      'prisma/schema.prisma',
      '--script',
    )
    const migrated = await layoutOf(migrationScripts())
    expect(Object.keys(migrated)).toHaveLength(20)
    expect(migrated).toEqual(await layoutOf([fromEmpty]))
  }, 30_000)

  test('would be found apart after any drift', async () => {
    const migrated = await layoutOf(migrationScripts())
    for (const drift of [
      'ALTER TABLE "Notebook" ADD COLUMN "colour" TEXT',
      'DROP INDEX "Session_tokenHash_key"',
      'CREATE INDEX "extra" ON "Mark"("at")',
      'CREATE TABLE "Extra" ("id" INTEGER PRIMARY KEY)',
    ]) {
      expect(await layoutOf([...migrationScripts(), drift]), drift).not.toEqual(migrated)
    }
  })
})

test('the install makes its data folder and its database, and a second time changes nothing', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'mearing-install-'))
  const data = join(folder, 'not/there/yet')
  prisma({ MEARING_DATA: data }, 'migrate', 'deploy')
  expect(existsSync(join(data, 'mearing.db'))).toBe(true)
  const at = new Date('2025-06-01T18:00:00Z')
  const database = openDatabase(join(data, 'mearing.db'))
  await database.write((tables) =>
    tables.notebook.create({
      data: { id: 'kept', document: '{}', example: false, createdAt: at, updatedAt: at },
    }),
  )
  // Prisma migrates only a database that it has for itself: never while the app runs.
  await database.close()
  expect(prisma({ MEARING_DATA: data }, 'migrate', 'deploy')).toContain('No pending migrations to apply')
  const reopened = openDatabase(join(data, 'mearing.db'))
  expect(await reopened.read((tables) => tables.notebook.count())).toBe(1)
  await reopened.close()
  rmSync(folder, { recursive: true })
}, 30_000)
