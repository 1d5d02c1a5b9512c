// Brings a clone to the point where the program can run, doing only what has changed since the last time.
// It runs before anything is installed: only Node's own modules may be imported at the top of this file and its neighbours.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { isInstalled } from './installedPackages.mjs'
import { pendingMigrations } from './migrations.mjs'
import { runOwned } from './ownedProcess.mjs'
import { Refusal } from './refusal.mjs'
import { clientSources, pageSources, stampOfSources } from './sourceStamp.mjs'

/** The folder that holds package.json. */
export const projectFolder = path.dirname(path.dirname(path.dirname(fileURLToPath(import.meta.url))))

const prismaScript = inProject('node_modules/prisma/build/index.js')
const nextScript = inProject('node_modules/next/dist/bin/next')
const clientStamp = inProject('node_modules/.cache/mearing/database-client')
const buildStamp = inProject('.next/mearing-sources')
const buildId = inProject('.next/BUILD_ID')

/** @param {string} name a path relative to the project folder */
export function inProject(name) {
  return path.join(projectFolder, name)
}

/**
 * The environment of every step: no tool reports home, and what is built and served is the production program, whatever
 * the caller's own NODE_ENV says.
 *
 * @param {Record<string, string>} [more]
 * @returns {NodeJS.ProcessEnv}
 */
export function stepEnvironment(more = {}) {
  return {
    ...process.env,
    NEXT_TELEMETRY_DISABLED: '1',
    CHECKPOINT_DISABLE: '1',
    PRISMA_HIDE_UPDATE_MESSAGE: '1',
    NODE_ENV: 'production',
    ...more,
  }
}

/**
 * Installs the packages that package-lock.json asks for, where node_modules holds something else, and compiles the
 * database driver, where it does not load in this Node.
 *
 * @throws {Refusal} where npm fails
 */
export async function installMissing() {
  const wanted = JSON.parse(readFileSync(inProject('package-lock.json'), 'utf8'))
  if (!isInstalled(wanted, readJson(inProject('node_modules/.package-lock.json')))) {
    console.log('Installing packages (the first time this takes a few minutes) …')
    // Scripts of packages stay off: the only one that is needed runs below, and others would fetch from hosts of their own.
    await npm(['ci', '--ignore-scripts', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'])
  }
  if (!(await driverLoads())) {
    console.log('Preparing the database driver …')
    await npm(['rebuild', 'better-sqlite3', '--ignore-scripts=false', '--loglevel=error'])
    if (!(await driverLoads())) {
      throw new Refusal(
        'The database driver better-sqlite3 does not load. Where its ready-made file can’t be fetched, it is compiled, which needs Python 3, make and a C++ compiler (Debian: apt-get install python3 make g++). Install them, delete node_modules and start again.',
      )
    }
  }
}

/**
 * Generates the database client, where the schema or the packages changed since the last time.
 *
 * @throws {Refusal} where Prisma fails
 */
export async function generateClient() {
  const stamp = stampOfSources(projectFolder, clientSources)
  if (existsSync(inProject('prisma/generated/client.ts')) && readText(clientStamp) === stamp) return
  console.log('Generating the database client …')
  await step('The database client could not be generated.', [
    prismaScript,
    'generate',
    '--config',
    'prisma/prisma.config.ts',
  ])
  mkdirSync(path.dirname(clientStamp), { recursive: true })
  writeFileSync(clientStamp, stamp)
}

/**
 * Brings the database of a data folder to the newest migration, making it where it is missing.
 *
 * @param {string} dataFolder absolute path
 * @throws {Refusal} where the database is newer than this program, or Prisma fails
 */
export async function prepareDatabase(dataFolder) {
  const known = readdirSync(inProject('prisma/migrations'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
  const { pending, unknown } = pendingMigrations(databaseDriver(), dataFolder, known)
  if (unknown.length > 0) {
    throw new Refusal(
      `The data in ${dataFolder} was written by a newer version of this program (it has the change ${unknown[0]}). Update the program, or set MEARING_DATA to another folder.`,
    )
  }
  if (!pending) return
  console.log('Preparing the database …')
  await step(
    'The database could not be prepared.',
    [prismaScript, 'migrate', 'deploy', '--config', 'prisma/prisma.config.ts'],
    { MEARING_DATA: dataFolder },
  )
}

/**
 * Makes the install's own seal where it is missing, and shows what is wrong with it where something is. Never stops the
 * start: without a seal only the locking of records waits.
 *
 * @param {string} dataFolder absolute path
 */
export async function prepareSeal(dataFolder) {
  const { output } = await runOwned(
    projectFolder,
    ['--import', 'tsx', inProject('lib/commands/makeSeal.ts')],
    { env: stepEnvironment({ MEARING_DATA: dataFolder }), quiet: true },
  )
  if (output.trim() !== '') console.log(output.trim())
}

/**
 * Builds the pages, where their sources changed since the last time.
 *
 * @throws {Refusal} where the build fails
 */
export async function buildWhenChanged() {
  const upToDate = readText(buildStamp) === stampOfSources(projectFolder, pageSources)
  if (upToDate && existsSync(buildId)) return
  console.log('Building the pages (this can take a few minutes) …')
  if (!(await build())) throw new Refusal('The pages could not be built; the reason is above.')
}

/**
 * Builds the pages, changed or not, showing what the build prints.
 *
 * @returns {Promise<boolean>} whether it succeeded
 */
export async function build() {
  // Taken before the build: what is edited during it counts as changed at the next start.
  const stamp = stampOfSources(projectFolder, pageSources)
  rmSync(buildStamp, { force: true })
  rmSync(buildId, { force: true })
  const { succeeded } = await runOwned(projectFolder, [nextScript, 'build'], { env: stepEnvironment() })
  // Next writes the id at the very end: without it there is nothing to serve, whatever the exit code.
  const built = succeeded && existsSync(buildId)
  if (built) writeFileSync(buildStamp, stamp)
  return built
}

/**
 * @param {string} complaint the sentence shown where it fails, under what the step printed
 * @param {string[]} script
 * @param {Record<string, string>} [environment]
 */
async function step(complaint, script, environment) {
  const { succeeded, output } = await runOwned(projectFolder, script, {
    env: stepEnvironment(environment),
    quiet: true,
  })
  if (!succeeded) throw new Refusal(`${output.trim()}\n${complaint}`)
}

/** @param {string[]} command */
async function npm(command) {
  const { succeeded } = await runOwned(projectFolder, [npmScript(), ...command])
  if (!succeeded) throw new Refusal(`npm ${command[0]} failed; the reason is above.`)
}

/**
 * npm's own script, so that it runs in this Node and ends with us: the one that runs us, else the one beside Node.
 *
 * @returns {string}
 */
function npmScript() {
  const running = process.env.npm_execpath ?? ''
  const folders = (process.env.PATH ?? '').split(path.delimiter)
  const found = [
    path.basename(running) === 'npm-cli.js' ? running : '',
    path.join(path.dirname(process.execPath), '../lib/node_modules/npm/bin/npm-cli.js'),
    path.join(path.dirname(process.execPath), 'node_modules/npm/bin/npm-cli.js'),
    ...folders.map((folder) => path.join(folder, 'npm')),
  ].find((place) => place !== '' && existsSync(place))
  if (found === undefined)
    throw new Refusal('npm was not found. Install Node together with npm and start again.')
  return found
}

/**
 * Whether the database driver loads in this Node. Tried in a process of its own: once a process has met the file that was
 * compiled for another Node, it doesn't see the new one.
 *
 * @returns {Promise<boolean>}
 */
async function driverLoads() {
  const trial = "new (require('better-sqlite3'))(':memory:').close()"
  const script = ['--input-type=commonjs', '--eval', trial]
  return (await runOwned(projectFolder, script, { quiet: true })).succeeded
}

/**
 * The driver's constructor; asked for only now, as it may have been installed a moment ago.
 *
 * @returns {import('./migrations.mjs').DatabaseDriver}
 */
function databaseDriver() {
  return createRequire(inProject('package.json'))('better-sqlite3')
}

/** @param {string} file */
function readText(file) {
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}

/** @param {string} file */
function readJson(file) {
  try {
    return JSON.parse(readText(file) ?? 'null') ?? undefined
  } catch {
    return undefined
  }
}
