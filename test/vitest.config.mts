import path from 'node:path'
import { defineConfig } from 'vitest/config'

/** Every test that needs no built program and no browser; those are in test/screens with a configuration of their own. */
export default defineConfig({
  root: path.join(import.meta.dirname, '..'),
  test: {
    environment: 'node',
    include: ['test/**/*.test.{ts,tsx}'],
    exclude: ['test/screens/**'],
    pool: 'forks',
    maxWorkers: 2,
    // Long enough for the heaviest paper on a loaded machine of two cores; no test asserts a time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
})
