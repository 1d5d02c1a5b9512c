import { execFile } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { promisify } from 'node:util'

/** The bytes of a file that is attached to a PDF, taken out by poppler's `pdfdetach`. */
export async function detachedByPoppler(pdf: Uint8Array, attachment: string): Promise<Uint8Array> {
  const folder = mkdtempSync(path.join(tmpdir(), 'mearing-poppler-'))
  try {
    const [paper, taken] = [path.join(folder, 'paper.pdf'), path.join(folder, 'taken')]
    writeFileSync(paper, pdf)
    mkdirSync(taken)
    await promisify(execFile)('pdfdetach', ['-saveall', '-o', taken, paper])
    return readFileSync(path.join(taken, attachment))
  } catch (error) {
    const { code, syscall } = error as NodeJS.ErrnoException
    if (code !== 'ENOENT' || !syscall?.startsWith('spawn')) throw error
    throw new Error('pdfdetach is needed for this test and is not installed: apt-get install poppler-utils')
  } finally {
    rmSync(folder, { recursive: true })
  }
}
