// npm test: every check there is, from a new clone on. The last line it prints counts them: N passed, N failed.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { endOwnedOnSignal, runOwned } from './ownedProcess.mjs'
import {
  build,
  generateClient,
  inProject,
  installMissing,
  projectFolder,
  stepEnvironment,
} from './prepare.mjs'
import { runCommand } from './refusal.mjs'
import { requireNode } from './startSettings.mjs'
import { countTests, totalCount } from './testCount.mjs'

/** @typedef {import('./testCount.mjs').Count} Count */

// Whatever keeps the checks from being counted, the last line is there.
let counted = false
process.on('exit', () => {
  if (!counted) console.log('0 passed, 1 failed')
})

await runCommand(async () => {
  requireNode(process.versions.node)
  endOwnedOnSignal((signal) => (signal === 'SIGINT' ? 130 : 143))
  await installMissing()
  await generateClient()

  const reports = mkdtempSync(path.join(tmpdir(), 'mearing-check-'))
  const types = await check('types', checkTypes)
  const lint = await check('lint', () =>
    run('node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.'),
  )
  const tests = await runTests('tests', 'test/vitest.config.mts', reports)
  const built = await check('build', build)
  // A browser test waits more than it works: two halves at once, each with an install of its own, take little more than one.
  const screens = await Promise.all(
    ['1/2', '2/2'].map((half) =>
      runTests(`screens ${half.replace('/', ' of ')}`, 'test/screens/vitest.config.mts', reports, [
        `--shard=${half}`,
      ]),
    ),
  )
  rmSync(reports, { recursive: true, force: true })

  const total = totalCount([types, lint, tests, built, ...screens])
  for (const complaint of total.complaints) console.log(complaint)
  counted = true
  console.log(`${total.passed} passed, ${total.failed} failed`)
  process.exit(total.failed === 0 ? 0 : 1)
})

/** Next writes the types of its own pages first: next-env.d.ts is in no clone. */
async function checkTypes() {
  return (
    (await run('node_modules/next/dist/bin/next', 'typegen')) &&
    (await run('node_modules/typescript/bin/tsc', '--noEmit'))
  )
}

/**
 * @param {string} name
 * @param {() => Promise<boolean>} work
 * @returns {Promise<Count>}
 */
async function check(name, work) {
  console.log(`\n── ${name}`)
  return (await work())
    ? { passed: 1, failed: 0, complaints: [] }
    : { passed: 0, failed: 1, complaints: [`${name}: failed, see above.`] }
}

/**
 * @param {string} name
 * @param {string} config
 * @param {string} reports a folder for the report file
 * @param {string[]} [options] of Vitest
 */
async function runTests(name, config, reports, options = []) {
  console.log(`\n── ${name}`)
  const file = path.join(reports, `${name}.json`)
  const { succeeded } = await runOwned(
    projectFolder,
    [
      inProject('node_modules/vitest/vitest.mjs'),
      'run',
      `--config=${config}`,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
      ...options,
    ],
    { env: stepEnvironment({ NODE_ENV: 'test' }) },
  )
  return countTests(name, readReport(file), succeeded)
}

/** @param {string} file */
function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'))
  } catch {
    return undefined
  }
}

/** @param {string[]} script */
async function run(...script) {
  const [name = '', ...command] = script
  return (await runOwned(projectFolder, [inProject(name), ...command], { env: stepEnvironment() })).succeeded
}
