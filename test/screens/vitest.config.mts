import path from 'node:path'
import { defineConfig } from 'vitest/config'

/** Tests of the built program, most of them in a browser: one at a time, since each moves the same install. */
export default defineConfig({
  root: path.join(import.meta.dirname, '../..'),
  test: {
    environment: 'node',
    include: ['test/screens/**/*.test.{ts,tsx}'],
    globalSetup: ['test/screens/startProgram.ts'],
    pool: 'forks',
    maxWorkers: 1,
    fileParallelism: false,
    testTimeout: 600_000,
    hookTimeout: 180_000,
    teardownTimeout: 30_000,
  },
})
