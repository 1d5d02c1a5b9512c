import { mkdirSync } from 'node:fs'
import { PrismaBetterSQLite3 } from '@prisma/adapter-better-sqlite3'
import { defineConfig } from 'prisma/config'
import { databasePath, dataFolder } from '../lib/store/dataFolder.ts'

/**
 * Used with `--config prisma/prisma.config.ts`. The JavaScript engine needs no binary, so nothing is fetched.
 * `migrate deploy` makes the data folder where it is missing; `generate` touches no file outside prisma/generated.
 */
export default defineConfig({
  experimental: { adapter: true },
  engine: 'js',
  schema: 'schema.prisma',
  migrations: { path: 'migrations' },
  adapter: async () => {
    mkdirSync(dataFolder(), { recursive: true })
    return new PrismaBetterSQLite3({ url: `file:${databasePath()}` })
  },
})
