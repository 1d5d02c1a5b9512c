import { type ChildProcess, spawn } from 'node:child_process'
import { createServer } from 'node:net'
import path from 'node:path'

const projectFolder = path.join(import.meta.dirname, '../..')

/** A start of `npm run serve`, without npm in between. */
export type ServedProgram = {
  readonly process: ChildProcess
  readonly address: string
  /** What the start has printed so far. */
  readonly output: () => string
  /** Resolves with the exit code of the start. */
  readonly ended: Promise<number | null>
}

/**
 * Starts the program and waits until it says where it runs.
 *
 * @param milliseconds how long a start may take; the first one after a change builds the pages
 * @throws Error with what was printed, where the start ends or takes longer
 */
export async function serveProgram(
  dataFolder: string,
  port: number,
  milliseconds = 170_000,
): Promise<ServedProgram> {
  const started = spawn(process.execPath, [path.join(projectFolder, 'lib/commands/serve.mjs')], {
    cwd: projectFolder,
    env: { ...process.env, PORT: String(port), MEARING_DATA: dataFolder, MEARING_URL: '' },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let printed = ''
  const ended = new Promise<number | null>((resolve) => started.once('exit', resolve))
  await new Promise<void>((resolve, reject) => {
    const fail = (reason: string) => {
      started.kill('SIGTERM')
      reject(new Error(`${reason}\n${printed}`))
    }
    const timer = setTimeout(() => fail(`The program did not start within ${milliseconds} ms.`), milliseconds)
    for (const stream of [started.stdout, started.stderr]) {
      stream?.on('data', (piece) => {
        printed += piece
        if (printed.includes('Stop it with Ctrl-C.')) {
          clearTimeout(timer)
          resolve()
        }
      })
    }
    void ended.then((code) => {
      clearTimeout(timer)
      fail(`The program ended with code ${code} instead of starting.`)
    })
  })
  return { process: started, address: `http://localhost:${port}`, output: () => printed, ended }
}

/** A port that nothing listens on at this moment. */
export async function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer()
    probe.once('error', reject)
    probe.listen(0, () => {
      const address = probe.address()
      const port = typeof address === 'object' && address !== null ? address.port : 0
      probe.close(() => resolve(port))
    })
  })
}
