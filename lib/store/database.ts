import { PrismaBetterSQLite3 } from '@prisma/adapter-better-sqlite3'
import { Mutex } from 'async-mutex'
import { type Prisma, PrismaClient } from '../../prisma/generated/client.ts'
import { databasePath } from './dataFolder.ts'

/** What work on the database is given: every model, no way to open a transaction of its own. */
export type Tables = Prisma.TransactionClient

export type Database = {
  /**
   * The one door for writing. Runs `work` in one transaction that is alone on the database from its first statement on,
   * in this process and beside others; what `work` throws rolls everything back. When it resolves, the work is on disk.
   * Not to be called from within `work`: it would wait for itself.
   */
  readonly write: <Result>(work: (tables: Tables) => Promise<Result>) => Promise<Result>
  /** Reads what has been committed, and never what is still being written. Refuses to write. */
  readonly read: <Result>(work: (tables: Tables) => Promise<Result>) => Promise<Result>
  readonly close: () => Promise<void>
}

/** How long to wait for another process that is writing, and how long one piece of work may take, in milliseconds. */
const usualPatience = 15_000

/** In WAL better-sqlite3 would fall back to synchronous=NORMAL, which may lose the last commits in a power cut. */
const everyConnection = 'PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON;'

/**
 * The adapter has one connection for everything, so a plain statement beside an open transaction would run inside it
 * and vanish when it rolls back. Hence two clients: one that only ever runs whole transactions, one that only reads.
 */
class Connection extends PrismaBetterSQLite3 {
  readonly #pragmas: string

  constructor(path: string, patience: number, pragmas: string) {
    // A missing file means that the install was never set up; an empty database made here would only hide that.
    super({ url: `file:${path}`, timeout: patience, fileMustExist: true })
    this.#pragmas = pragmas
  }

  override async connect() {
    const connection = await super.connect()
    await connection.executeScript(this.#pragmas)
    return connection
  }
}

/** Opens a database file that the migrations have been applied to; `patience` is in milliseconds. */
export function openDatabase(path: string, patience = usualPatience): Database {
  const transactionOptions = { maxWait: patience, timeout: patience }
  const writer = new PrismaClient({
    adapter: new Connection(path, patience, everyConnection),
    transactionOptions,
  })
  const reader = new PrismaClient({
    adapter: new Connection(path, patience, `${everyConnection} PRAGMA query_only=ON;`),
    transactionOptions,
  })
  // Whoever waits here waits as long as it takes; waiting at the adapter would be refused once the patience is over.
  const oneAtATime = new Mutex()

  return {
    write: (work) =>
      oneAtATime.runExclusive(() =>
        writer.$transaction(async (tables) => {
          // The first statement writes, so that SQLite takes its write lock now: a transaction that began by reading
          // is refused when another process wrote in between.
          await tables.$executeRaw`
            INSERT INTO "WriteLock" ("id", "taken") VALUES (1, 1)
            ON CONFLICT ("id") DO UPDATE SET "taken" = "taken" + 1`
          return work(tables)
        }),
      ),
    read: (work) => work(reader),
    close: async () => {
      await writer.$disconnect()
      await reader.$disconnect()
    },
  }
}

// On globalThis, because a server built by Next holds this file several times over, and each would have a lock of its own.
const shared = globalThis as { mearingDatabases?: Map<string, Database> }

/** The database of this install, opened at its first use. */
export function database(): Database {
  shared.mearingDatabases ??= new Map()
  const path = databasePath()
  let opened = shared.mearingDatabases.get(path)
  if (opened === undefined) {
    opened = openDatabase(path)
    shared.mearingDatabases.set(path, opened)
  }
  return opened
}

/** Closes the database of this install; the next use opens it again. */
export async function closeDatabase(): Promise<void> {
  const path = databasePath()
  const opened = shared.mearingDatabases?.get(path)
  shared.mearingDatabases?.delete(path)
  await opened?.close()
}
