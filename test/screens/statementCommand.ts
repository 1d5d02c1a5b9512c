import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { promisify } from 'node:util'
import type { StatementFile } from '../../lib/core/shares/statementFile.ts'

const projectFolder = path.join(import.meta.dirname, '../..')

/** What `npm run -s statement` prints for a notebook file; it ends with an error where the file is refused. */
export async function statementPrinted(notebookFile: Uint8Array): Promise<StatementFile> {
  const folder = mkdtempSync(path.join(tmpdir(), 'mearing-statement-'))
  try {
    const file = path.join(folder, 'notebook.json')
    writeFileSync(file, notebookFile)
    const { stdout } = await promisify(execFile)('npm', ['run', '-s', 'statement', '--', file], {
      cwd: projectFolder,
    })
    return JSON.parse(stdout) as StatementFile
  } finally {
    rmSync(folder, { recursive: true })
  }
}
