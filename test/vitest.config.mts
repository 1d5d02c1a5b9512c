import { createRequire } from 'node:module'
import path from 'node:path'
import { defineConfig } from 'vitest/config'

const require = createRequire(import.meta.url)

/** Every test that needs no built program and no browser; those are in test/screens with a configuration of their own. */
export default defineConfig({
  root: path.join(import.meta.dirname, '..'),
  resolve: {
    // The marker package throws outside of Next's server build; tests run server code directly.
    alias: { 'server-only': path.join(path.dirname(require.resolve('server-only')), 'empty.js') },
  },
  test: {
    environment: 'node',
    include: [
      'test/{core,words,forms,store,access,pdf,drawing,published,worked-examples,golden,commands,architecture,actions}/**/*.test.{ts,tsx}',
    ],
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 30_000,
    hookTimeout: 30_000,
  },
})
