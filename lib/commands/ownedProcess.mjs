// Processes that end with the one that started them. Each is the head of a process group of its own, so that what it
// starts in turn can be ended with it, and holds a line to its owner, so that it notices when the owner dies.
import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { Refusal } from './refusal.mjs'

const leaveWithParent = new URL('./leaveWithParent.mjs', import.meta.url).href
const patience = 5_000
const keptOutput = 200_000

/** @type {Set<OwnedProcess>} */
const owned = new Set()
let ending = false

/**
 * @typedef {object} OwnedProcess
 * @property {number | undefined} pid also the id of its process group
 * @property {Promise<void>} ended
 * @property {Promise<number | null>} endedByItself its exit code; never comes once we end it, so that no stop looks like a failure
 * @property {() => string} output what it has printed, where it was started quietly (the last 200,000 characters)
 * @property {() => void} show from now on shows what it prints, where it was started quietly
 */

/**
 * Starts a Node script as an owned process.
 *
 * @param {string} folder the working directory
 * @param {string[]} script path of the script and its arguments
 * @param {{ env?: NodeJS.ProcessEnv, quiet?: boolean }} [options] quiet: keep what it prints instead of showing it
 * @returns {OwnedProcess}
 */
export function startOwned(folder, script, { env = process.env, quiet = false } = {}) {
  if (ending) throw new Refusal('Stopped.')
  const printing = quiet ? 'pipe' : 'inherit'
  const child = spawn(process.execPath, ['--import', leaveWithParent, ...script], {
    cwd: folder,
    env: { ...env, MEARING_OWNER: String(process.pid) },
    detached: true,
    stdio: ['ignore', printing, printing, 'ipc'],
  })
  let printed = ''
  let shown = false
  for (const name of /** @type {const} */ (['stdout', 'stderr'])) {
    child[name]?.on('data', (chunk) => {
      printed = (printed + chunk).slice(-keptOutput)
      if (shown) process[name].write(chunk)
    })
  }
  /** @type {Promise<number | null>} */
  const exitCode = new Promise((resolve) => {
    child.once('error', () => resolve(1))
    child.once('close', resolve)
  })
  /** @type {OwnedProcess} */
  const self = {
    pid: child.pid,
    ended: exitCode.then(() => {}),
    endedByItself: exitCode.then((code) => (ending ? new Promise(() => {}) : code)),
    output: () => printed,
    show: () => {
      shown = true
    },
  }
  owned.add(self)
  self.ended.then(() => owned.delete(self))
  return self
}

/**
 * Runs a Node script to its end.
 *
 * @param {string} folder the working directory
 * @param {string[]} script path of the script and its arguments
 * @param {{ env?: NodeJS.ProcessEnv, quiet?: boolean }} [options]
 * @returns {Promise<{ succeeded: boolean, output: string }>}
 */
export async function runOwned(folder, script, options) {
  const step = startOwned(folder, script, options)
  const code = await step.endedByItself
  return { succeeded: code === 0, output: step.output() }
}

/**
 * Ends every owned process with its whole group: asks, waits five seconds, then ends by force.
 *
 * @param {NodeJS.Signals} [signal]
 */
export async function endOwned(signal = 'SIGTERM') {
  ending = true
  await Promise.all([...owned].map((child) => endGroup(child, signal)))
}

/**
 * @param {OwnedProcess} child
 * @param {NodeJS.Signals} signal
 */
async function endGroup(child, signal) {
  if (child.pid === undefined) return
  const group = child.pid
  signalGroup(group, signal)
  const lastMoment = Date.now() + patience
  while (signalGroup(group, 0) && Date.now() < lastMoment) await delay(50)
  if (signalGroup(group, 'SIGKILL')) await Promise.race([child.ended, delay(1_000)])
}

/**
 * @param {number} group
 * @param {NodeJS.Signals | 0} signal 0 asks only whether the group is there
 * @returns {boolean} whether there was anyone to signal
 */
function signalGroup(group, signal) {
  try {
    process.kill(-group, signal)
    return true
  } catch {
    return false
  }
}

/**
 * Ends all that was started, then this process, at Ctrl-C or SIGTERM; a second one does it by force at once. Under
 * `npm run` also when npm is gone, since npm ended by force tells nobody.
 *
 * @param {(signal: NodeJS.Signals) => number} exitCode
 */
export function endOwnedOnSignal(exitCode) {
  /** @type {NodeJS.Signals[]} */
  const signals = ['SIGINT', 'SIGTERM']
  for (const signal of signals) {
    process.on(signal, async () => {
      await endOwned(ending ? 'SIGKILL' : signal)
      process.exit(exitCode(signal))
    })
  }
  if (process.env.npm_lifecycle_event === undefined) return
  const starters = findStarters()
  setInterval(() => {
    if (findStarters() !== starters) process.kill(process.pid, 'SIGTERM')
  }, 500).unref()
}

/**
 * The shell that npm put in between, and npm itself, as far as the system tells (proc(5) on Linux).
 *
 * @returns {string}
 */
function findStarters() {
  const shell = process.ppid
  try {
    const afterName = readFileSync(`/proc/${shell}/stat`, 'utf8').split(') ').at(-1) ?? ''
    return `${shell} ${afterName.split(' ')[1]}`
  } catch {
    return String(shell)
  }
}

/** @param {number} milliseconds */
function delay(milliseconds) {
  return new Promise((resolve) => setTimeout(resolve, milliseconds))
}
