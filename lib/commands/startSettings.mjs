// What a start depends on, read from the environment: each function gives the setting or refuses it in a plain sentence.
import { mkdirSync, statSync } from 'node:fs'
import { createServer } from 'node:net'
import path from 'node:path'
import { Refusal } from './refusal.mjs'

/** The oldest Node release that every dependency runs on. */
const oldestNode = { major: 20, minor: 19 }
const usualPort = 3000

/**
 * @param {string} version such as `20.19.4`
 * @throws {Refusal} below 20.19
 */
export function requireNode(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number)
  const recent = major > oldestNode.major || (major === oldestNode.major && minor >= oldestNode.minor)
  if (!recent) {
    throw new Refusal(
      `This program needs Node ${oldestNode.major}.${oldestNode.minor} or later; this is Node ${version}. Install a newer Node and start again.`,
    )
  }
}

/**
 * @param {string | undefined} setting PORT
 * @returns {number} 1 to 65535; 3000 where nothing is set
 * @throws {Refusal}
 */
export function readPort(setting) {
  const text = setting?.trim() ?? ''
  if (text === '') return usualPort
  const port = /^\d{1,5}$/.test(text) ? Number(text) : 0
  if (port < 1 || port > 65535) {
    throw new Refusal(`PORT must be a whole number from 1 to 65535; it is “${text}”.`)
  }
  return port
}

/**
 * @param {string | undefined} setting MEARING_URL, the address at which other devices reach this install
 * @returns {string | undefined} the address without a slash at its end; undefined where nothing is set
 * @throws {Refusal}
 */
export function readPublicAddress(setting) {
  const text = setting?.trim() ?? ''
  if (text === '') return undefined
  const address = URL.canParse(text) ? new URL(text) : undefined
  if (address?.protocol !== 'http:' && address?.protocol !== 'https:') {
    throw new Refusal(`MEARING_URL must be a web address such as http://192.168.1.20:3000; it is “${text}”.`)
  }
  return text.replace(/\/+$/, '')
}

/**
 * @param {string | undefined} setting MEARING_DATA
 * @param {string} workingFolder a relative setting counts from here
 * @param {string} projectFolder holds `data`, the folder used where nothing is set
 * @returns {string} an absolute path
 */
export function readDataFolder(setting, workingFolder, projectFolder) {
  const text = setting?.trim() ?? ''
  return text === '' ? path.join(projectFolder, 'data') : path.resolve(workingFolder, text)
}

/**
 * Makes the data folder where it is missing, readable by its owner alone: it holds both households' papers.
 *
 * @param {string} folder
 * @throws {Refusal} where it can't be made
 */
export function makeDataFolder(folder) {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    if (statSync(folder).isDirectory()) return
  } catch {
    // The sentence below says what to do; the system's own wording adds nothing to it.
  }
  throw new Refusal(
    `The data folder ${folder} can't be made. Set MEARING_DATA to a folder that you may write to.`,
  )
}

/**
 * @param {number} port
 * @throws {Refusal} where it is in use or not allowed
 */
export async function requireFreePort(port) {
  const problem = await new Promise((resolve) => {
    const probe = createServer()
    probe.once('error', (error) => resolve(/** @type {NodeJS.ErrnoException} */ (error).code))
    probe.listen(port, () => probe.close(() => resolve(undefined)))
  })
  if (problem === undefined) return
  if (problem === 'EADDRINUSE') {
    throw new Refusal(
      `Port ${port} is in use by another program. Stop that program, or set PORT to another number, such as PORT=${port === 65535 ? 3000 : port + 1}.`,
    )
  }
  if (problem === 'EACCES') {
    throw new Refusal(`This user may not listen on port ${port}. Set PORT to a number from 1024 to 65535.`)
  }
  throw new Refusal(`Port ${port} can't be used (${problem}). Set PORT to another number.`)
}
