import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs'
import { networkInterfaces, tmpdir } from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { networkAddress } from '../../lib/commands/addresses.mjs'
import { requireFreePort } from '../../lib/commands/startSettings.mjs'
import { freePort, type ServedProgram, serveProgram } from './servedProgram.ts'

/** Every process that descends from the given one, as Linux tells it in /proc/PID/stat (proc(5)). */
function descendants(ancestor: number): number[] {
  const parents = new Map<number, number>()
  for (const name of readdirSync('/proc').filter((entry) => /^\d+$/.test(entry))) {
    try {
      const afterName = readFileSync(`/proc/${name}/stat`, 'utf8').split(') ').at(-1) ?? ''
      parents.set(Number(name), Number(afterName.split(' ')[1]))
    } catch {
      // It ended while we were looking.
    }
  }
  const childrenOf = (parent: number): number[] =>
    [...parents.entries()]
      .filter(([, its]) => its === parent)
      .flatMap(([child]) => [child, ...childrenOf(child)])
  return childrenOf(ancestor)
}

/** Whether a process is there and still running, not merely waiting to be collected. */
function isRunning(pid: number): boolean {
  try {
    return !/\) [ZX] /.test(readFileSync(`/proc/${pid}/stat`, 'utf8'))
  } catch {
    return false
  }
}

async function allEnd(pids: number[], milliseconds: number): Promise<number[]> {
  const lastMoment = Date.now() + milliseconds
  while (pids.some(isRunning) && Date.now() < lastMoment) await new Promise((next) => setTimeout(next, 100))
  return pids.filter(isRunning)
}

describe('a start of the program', () => {
  let dataFolder: string
  let port: number
  let program: ServedProgram | undefined

  beforeEach(async () => {
    dataFolder = path.join(mkdtempSync(path.join(tmpdir(), 'mearing-serve-')), 'made', 'at', 'start')
    port = await freePort()
  })
  afterEach(async () => {
    program?.process.kill('SIGTERM')
    await program?.ended
    rmSync(path.join(dataFolder, '../../..'), { recursive: true, force: true })
  })

  async function start(milliseconds?: number): Promise<ServedProgram> {
    program = await serveProgram(dataFolder, port, milliseconds)
    return program
  }

  test('answers, says where, and makes its data folder for its owner alone', async () => {
    const { output, address } = await start()

    expect((await fetch(address)).status).toBe(200)
    expect(output()).toContain(`http://localhost:${port}`)
    expect(output()).toContain(dataFolder)
    expect(statSync(path.join(dataFolder, 'mearing.db')).size).toBeGreaterThan(0)
    expect(statSync(dataFolder).mode & 0o077).toBe(0)
  })

  test('is reached from other devices: at the address it names, and not only on its own', async () => {
    const { output } = await start()
    const host = networkAddress(networkInterfaces())
    if (host === undefined) {
      // A machine without a network has no address to answer at; then the start must say so.
      expect(output()).toContain('no network address found')
      return
    }
    expect(output()).toContain(`http://${host}:${port}`)
    expect((await fetch(`http://${host}:${port}`)).status).toBe(200)
  })

  test.each(['SIGTERM', 'SIGINT'] as const)(
    '%s ends all that it started and frees the port',
    async (signal) => {
      const { process: started, ended, address } = await start()
      // A browser keeps its connection open; the stop must not wait for it.
      await (await fetch(address)).text()
      const family = descendants(started.pid ?? 0)
      expect(family.length).toBeGreaterThan(0)

      started.kill(signal)

      expect(await ended).toBe(0)
      expect(await allEnd(family, 1_000)).toEqual([])
      await requireFreePort(port)
    },
  )

  test('leaves no orphan when it is ended by force', async () => {
    const { process: started, ended } = await start()
    const family = descendants(started.pid ?? 0)
    expect(family.length).toBeGreaterThan(0)

    started.kill('SIGKILL')
    await ended

    expect(await allEnd(family, 10_000)).toEqual([])
    await requireFreePort(port)
  })

  test('does only what has changed: the second start prepares nothing and is up within 15 seconds', async () => {
    const first = await start()
    expect(first.output()).toContain('Preparing the database')
    first.process.kill('SIGTERM')
    await first.ended

    const second = await start(15_000)

    expect(second.output()).not.toMatch(/Installing|Generating|Building|Preparing/)
    expect((await fetch(second.address)).status).toBe(200)
  })

  test('makes the database anew where the data folder was deleted in between', async () => {
    const first = await start()
    first.process.kill('SIGTERM')
    await first.ended
    rmSync(dataFolder, { recursive: true })

    const second = await start(30_000)

    expect(second.output()).toContain('Preparing the database')
    expect((await fetch(second.address)).status).toBe(200)
  })

  test('refuses a port that it is running on already', async () => {
    await start()

    await expect(serveProgram(dataFolder, port, 15_000)).rejects.toThrow(`Port ${port} is in use`)
  })
})
