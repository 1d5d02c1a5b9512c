import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import type { TestProject } from 'vitest/node'
import { freePort, serveProgram } from './servedProgram.ts'

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built program answers, such as http://localhost:41234. */
    baseUrl: string
    /** The data folder of that install, new at each run. */
    dataFolder: string
  }
}

/** Starts the program on a free port with a data folder of its own, for all screen tests; stops it at the end. */
export default async function startProgram(project: TestProject): Promise<() => Promise<void>> {
  const dataFolder = mkdtempSync(path.join(tmpdir(), 'mearing-screens-'))
  const program = await serveProgram(dataFolder, await freePort())
  project.provide('baseUrl', program.address)
  project.provide('dataFolder', dataFolder)
  return async () => {
    program.process.kill('SIGTERM')
    await program.ended
    rmSync(dataFolder, { recursive: true, force: true })
  }
}
