import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'

/** What Debian's `pdfsig` (poppler) says about the signatures of a PDF; its status is 1 where one does not hold. */
export async function pdfsig(pdf: Uint8Array): Promise<string> {
  const folder = mkdtempSync(path.join(tmpdir(), 'mearing-pdfsig-'))
  const file = path.join(folder, 'record.pdf')
  try {
    writeFileSync(file, pdf)
    return await new Promise((resolve, reject) => {
      execFile('pdfsig', [file], (failed, out, error) => {
        if (failed?.code === 'ENOENT')
          reject(new Error('pdfsig is needed for this test: apt-get install poppler-utils'))
        else resolve(out + error)
      })
    })
  } finally {
    rmSync(folder, { recursive: true })
  }
}
