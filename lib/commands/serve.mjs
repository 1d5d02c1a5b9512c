// npm run serve: from a new clone to the running program, and at every later start only what has changed.
// Settings: PORT (3000), MEARING_DATA (the folder data), MEARING_URL (the address printed for other devices).
import { request } from 'node:http'
import { networkInterfaces } from 'node:os'
import { startLines } from './addresses.mjs'
import { endOwned, endOwnedOnSignal, startOwned } from './ownedProcess.mjs'
import {
  buildWhenChanged,
  generateClient,
  inProject,
  installMissing,
  prepareDatabase,
  prepareSeal,
  projectFolder,
  stepEnvironment,
} from './prepare.mjs'
import { Refusal, runCommand } from './refusal.mjs'
import {
  makeDataFolder,
  readDataFolder,
  readPort,
  readPublicAddress,
  requireFreePort,
  requireNode,
} from './startSettings.mjs'

const longestStart = 60_000

await runCommand(async () => {
  requireNode(process.versions.node)
  const port = readPort(process.env.PORT)
  const publicAddress = readPublicAddress(process.env.MEARING_URL)
  const dataFolder = readDataFolder(process.env.MEARING_DATA, process.cwd(), projectFolder)
  await requireFreePort(port)
  makeDataFolder(dataFolder)

  endOwnedOnSignal(() => 0)
  await installMissing()
  await generateClient()
  await buildWhenChanged()
  await prepareDatabase(dataFolder)
  await prepareSeal(dataFolder)

  // Without a host Next listens on all interfaces.
  const server = startOwned(
    projectFolder,
    [inProject('node_modules/next/dist/bin/next'), 'start', '--port', String(port)],
    { env: stepEnvironment({ MEARING_DATA: dataFolder }), quiet: true },
  )
  const answered = await Promise.race([answers(port), server.endedByItself.then(() => false)])
  if (!answered) {
    await endOwned()
    throw new Refusal(`${server.output().trim()}\nThe program did not start; the reason is above.`)
  }
  // Next's own banner names addresses that may be wrong from outside; what it prints later is for the one who runs the install.
  server.show()
  for (const line of startLines({ port, publicAddress, interfaces: networkInterfaces(), dataFolder })) {
    console.log(line)
  }
  await server.endedByItself
  await endOwned()
  throw new Refusal('The program ended by itself; its last words are above.')
})

/**
 * @param {number} port
 * @returns {Promise<boolean>} true as soon as the port answers a request, whatever the answer; false after a minute
 */
async function answers(port) {
  const lastMoment = Date.now() + longestStart
  while (Date.now() < lastMoment) {
    const answered = await new Promise((resolve) => {
      const question = request({
        host: 'localhost',
        port,
        method: 'HEAD',
        timeout: longestStart,
        agent: false,
      })
      question.once('response', (response) => {
        response.resume()
        resolve(true)
      })
      question.once('timeout', () => question.destroy())
      question.once('error', () => resolve(false))
      question.end()
    })
    if (answered) return true
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
  return false
}
