import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { type Database, openDatabase, type Tables } from '../../lib/store/database.ts'
import { makeDatabaseFile } from './temporaryDatabase.ts'

const at = new Date('2025-06-01T18:00:00Z')
let folder: string
let path: string
let database: Database

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'mearing-door-'))
  path = join(folder, 'mearing.db')
  await makeDatabaseFile(path)
  database = openDatabase(path)
})

afterEach(async () => {
  await database.close()
  rmSync(folder, { recursive: true })
})

function addNotebook(id: string) {
  return (tables: Tables) =>
    tables.notebook.create({ data: { id, document: '{}', example: false, createdAt: at, updatedAt: at } })
}

async function notebookIds(): Promise<string[]> {
  const rows = await database.read((tables) => tables.notebook.findMany({ orderBy: { id: 'asc' } }))
  return rows.map((row) => row.id)
}

function gate(): { readonly open: () => void; readonly opened: Promise<void> } {
  let open = (): void => undefined
  const opened = new Promise<void>((resolve) => {
    open = resolve
  })
  return { open, opened }
}

function startProcess(script: string, ...given: string[]): ChildProcess {
  const file = join(import.meta.dirname, 'processes', script)
  return spawn(process.execPath, ['--import', 'tsx', file, ...given], {
    cwd: join(import.meta.dirname, '../..'),
    stdio: ['ignore', 'pipe', 'inherit'],
  })
}

function ended(child: ChildProcess): Promise<number | null> {
  return new Promise((resolve) => child.on('close', resolve))
}

describe('the door for writing', () => {
  test('a write beside a transaction that rolls back is kept', async () => {
    const inside = gate()
    const mayFail = gate()
    const failing = database.write(async (tables) => {
      await addNotebook('rolled-back')(tables)
      inside.open()
      await mayFail.opened
      throw new Error('changed its mind')
    })
    const failed = expect(failing).rejects.toThrow('changed its mind')
    await inside.opened
    const beside = database.write(addNotebook('kept'))
    mayFail.open()
    await failed
    await beside
    expect(await notebookIds()).toEqual(['kept'])
  })

  test('nobody reads what is not yet committed, and a reader does not wait for the writer', async () => {
    const inside = gate()
    const mayCommit = gate()
    const writing = database.write(async (tables) => {
      await addNotebook('first')(tables)
      inside.open()
      await mayCommit.opened
    })
    await inside.opened
    expect(await notebookIds()).toEqual([])
    mayCommit.open()
    await writing
    expect(await notebookIds()).toEqual(['first'])
  })

  test('a transaction sees its own writes and gives back its result', async () => {
    const count = await database.write(async (tables) => {
      await addNotebook('own')(tables)
      return tables.notebook.count()
    })
    expect(count).toBe(1)
  })

  test('50 writes at once all go through, each seeing the one before', async () => {
    await database.write(addNotebook('counted'))
    await Promise.all(
      Array.from({ length: 50 }, () =>
        database.write(async (tables) => {
          const { edit } = await tables.notebook.findUniqueOrThrow({ where: { id: 'counted' } })
          await tables.notebook.update({ where: { id: 'counted' }, data: { edit: edit + 1 } })
        }),
      ),
    )
    const counted = await database.read((tables) =>
      tables.notebook.findUniqueOrThrow({ where: { id: 'counted' } }),
    )
    expect(counted.edit).toBe(50)
  }, 60_000)

  test('a long queue is waited out: the patience is for one piece of work, not for all before it', async () => {
    const hurried = openDatabase(path, 1000)
    await Promise.all(
      Array.from({ length: 12 }, (_, index) =>
        hurried.write(async (tables) => {
          await addNotebook(`number-${index}`)(tables)
          await new Promise((resolve) => setTimeout(resolve, 150))
        }),
      ),
    )
    await hurried.close()
    expect(await notebookIds()).toHaveLength(12)
  }, 30_000)

  test('work that takes too long is rolled back, and the next goes on', async () => {
    const hurried = openDatabase(path, 1000)
    const dawdling = hurried.write(async (tables) => {
      await addNotebook('too-late')(tables)
      await new Promise((resolve) => setTimeout(resolve, 2500))
    })
    const next = hurried.write(addNotebook('next'))
    await expect(dawdling).rejects.toThrow()
    await next
    await hurried.close()
    expect(await notebookIds()).toEqual(['next'])
  }, 30_000)

  test('two processes that each count up 200 times arrive at 400', async () => {
    await database.write(addNotebook('counted'))
    const processes = [1, 2].map(() => startProcess('countUp.ts', path, 'counted', '200'))
    expect(await Promise.all(processes.map(ended))).toEqual([0, 0])
    const counted = await database.read((tables) =>
      tables.notebook.findUniqueOrThrow({ where: { id: 'counted' } }),
    )
    expect(counted.edit).toBe(400)
  }, 120_000)

  test('a process killed in the midst of writing has lost nothing it acknowledged', async () => {
    const acknowledged: string[] = []
    for (const lines of [40, 90, 160]) {
      const child = startProcess('writeUntilKilled.ts', path)
      const end = ended(child)
      let said = ''
      child.stdout?.on('data', (chunk: Buffer) => {
        said += chunk.toString('utf8')
        if (said.split('\n').length > lines) {
          child.kill('SIGKILL')
        }
      })
      await end
      expect(child.signalCode).toBe('SIGKILL')
      acknowledged.push(...said.split('\n').filter((line) => line.length === 22))
    }
    expect(acknowledged.length).toBeGreaterThanOrEqual(290)
    const stored = new Set(await notebookIds())
    expect(acknowledged.filter((id) => !stored.has(id))).toEqual([])
    expect(await database.read((tables) => tables.$queryRaw`PRAGMA integrity_check`)).toEqual([
      { integrity_check: 'ok' },
    ])
  }, 120_000)
})

describe('the connections', () => {
  test('the reader refuses to write', async () => {
    await expect(database.read(addNotebook('smuggled'))).rejects.toThrow(/readonly/)
    await expect(database.read((tables) => tables.$executeRaw`DELETE FROM "Notebook"`)).rejects.toThrow(
      /readonly/,
    )
    expect(await notebookIds()).toEqual([])
  })

  test('both write ahead, wait for the disk and hold foreign keys', async () => {
    async function setting(tables: Tables, name: string): Promise<string> {
      const rows = await tables.$queryRawUnsafe<Record<string, unknown>[]>(`PRAGMA ${name}`)
      return Object.values(rows[0] ?? {}).join()
    }
    async function settings(tables: Tables): Promise<string[]> {
      return [
        await setting(tables, 'journal_mode'),
        await setting(tables, 'synchronous'),
        await setting(tables, 'foreign_keys'),
        await setting(tables, 'query_only'),
      ]
    }
    // 2 is FULL: https://www.sqlite.org/pragma.html#pragma_synchronous
    expect(await database.write(settings)).toEqual(['wal', '2', '1', '0'])
    expect(await database.read(settings)).toEqual(['wal', '2', '1', '1'])
  })

  test('a database that was never set up is not made up on the spot', async () => {
    const missing = openDatabase(join(folder, 'missing.db'))
    await expect(missing.read((tables) => tables.notebook.count())).rejects.toThrow()
    await missing.close()
    expect(existsSync(join(folder, 'missing.db'))).toBe(false)
  })
})
