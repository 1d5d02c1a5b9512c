import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { stepEnvironment } from '../../lib/commands/prepare.mjs'
import { freePort } from './servedProgram.ts'

const packages = path.join(import.meta.dirname, '../../node_modules')
const nextScript = path.join(packages, 'next/dist/bin/next')

const sources = {
  'package.json': '{ "name": "bare-page", "private": true, "type": "module" }',
  // The packages are linked from elsewhere, and Next takes only what lies below its root.
  'next.config.js': "export default { turbopack: { root: '/' } }",
  'app/layout.jsx':
    'export default function Layout({ children }) { return <html lang="en"><body>{children}</body></html> }',
  'app/page.jsx': 'export default function Page() { return <p>One line.</p> }',
}

/**
 * The least page that this program's own Next and React make: one layout, one line of text, nothing of ours. It is built and
 * served in a folder of its own; `stop` ends it and takes the folder away.
 *
 * @throws Error with what was printed, where it does not build or start
 */
export async function serveBarePage(): Promise<{ readonly address: string; stop(): Promise<void> }> {
  const folder = mkdtempSync(path.join(tmpdir(), 'mearing-bare-'))
  mkdirSync(path.join(folder, 'app'))
  for (const [name, text] of Object.entries(sources)) writeFileSync(path.join(folder, name), text)
  symlinkSync(packages, path.join(folder, 'node_modules'))
  const port = await freePort()
  try {
    const building = next(folder, 'build')
    const [code] = await once(building.process, 'exit')
    if (code !== 0) throw new Error(`The bare page does not build.\n${building.printed()}`)
    const serving = next(folder, 'start', '--port', String(port))
    const ended = once(serving.process, 'exit')
    const address = `http://localhost:${port}`
    const stop = async () => {
      serving.process.kill('SIGTERM')
      await ended
      rmSync(folder, { recursive: true, force: true })
    }
    const answered = await Promise.race([answers(address), ended.then(() => false)])
    if (answered) return { address, stop }
    await stop()
    throw new Error(`The bare page is not served.\n${serving.printed()}`)
  } catch (error) {
    rmSync(folder, { recursive: true, force: true })
    throw error
  }
}

function next(folder: string, ...command: string[]): { process: ChildProcess; printed: () => string } {
  const started = spawn(process.execPath, [nextScript, ...command], {
    cwd: folder,
    env: stepEnvironment(),
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let printed = ''
  for (const stream of [started.stdout, started.stderr]) {
    stream.on('data', (piece) => {
      printed += piece
    })
  }
  return { process: started, printed: () => printed }
}

/** True as soon as the address answers; false after a minute. */
async function answers(address: string): Promise<boolean> {
  for (let attempt = 0; attempt < 600; attempt += 1) {
    const answer = await fetch(address).catch(() => undefined)
    if (answer?.ok) return true
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
  return false
}
