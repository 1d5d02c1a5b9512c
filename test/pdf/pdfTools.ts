import { execFile } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { promisify } from 'node:util'

const run = promisify(execFile)

/** Runs a required tool; a missing one is said in a plain sentence. */
async function tool(name: string, debianPackage: string, args: readonly string[]): Promise<string> {
  try {
    return (await run(name, [...args], { maxBuffer: 64 * 1024 * 1024 })).stdout
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error
    throw new Error(`${name} is needed for this test and is not installed: apt-get install ${debianPackage}`)
  }
}

/** Hands the bytes to `use` as a file in a folder of its own, which is gone afterwards. */
async function inFolder<Answer>(
  pdf: Uint8Array,
  use: (file: string, folder: string) => Promise<Answer>,
): Promise<Answer> {
  const folder = mkdtempSync(path.join(tmpdir(), 'mearing-pdf-'))
  try {
    const file = path.join(folder, 'paper.pdf')
    writeFileSync(file, pdf)
    return await use(file, folder)
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** What `qpdf --check` says; it ends with an error on a broken file. */
export function qpdfCheck(pdf: Uint8Array): Promise<string> {
  return inFolder(pdf, (file) => tool('qpdf', 'qpdf', ['--check', file]))
}

/** The words of a PDF as poppler's `pdftotext` reads them. */
export function plainTextOf(pdf: Uint8Array): Promise<string> {
  return inFolder(pdf, (file) => tool('pdftotext', 'poppler-utils', [file, '-']))
}

/** What poppler's `pdfinfo` says about a PDF, by its labels. */
export async function infoOf(pdf: Uint8Array): Promise<ReadonlyMap<string, string>> {
  const said = await inFolder(pdf, (file) => tool('pdfinfo', 'poppler-utils', [file]))
  return new Map(said.split('\n').map((line) => [line.split(':')[0] ?? '', line.replace(/^[^:]*: */, '')]))
}

/** The structure of a PDF, indented, as poppler's `pdfinfo` reads it; with its text, for which it takes a second a page. */
export function structureTextOf(pdf: Uint8Array, withText: boolean): Promise<string> {
  const option = withText ? '-struct-text' : '-struct'
  return inFolder(pdf, (file) => tool('pdfinfo', 'poppler-utils', [option, file]))
}

export type GreyPage = { readonly width: number; readonly height: number; readonly levels: Uint8Array }

/** Every page as grey levels, 0 is black: `pdftoppm -gray` writes portable grey maps (PGM, binary form P5). */
export function renderGrey(pdf: Uint8Array, dotsPerInch: number): Promise<GreyPage[]> {
  return inFolder(pdf, async (file, folder) => {
    const prefix = path.join(folder, 'page')
    await tool('pdftoppm', 'poppler-utils', ['-gray', '-r', String(dotsPerInch), file, prefix])
    const listed = readdirSync(folder)
    return listed
      .filter((name) => name.endsWith('.pgm'))
      .sort()
      .map((name) => readPgm(readFileSync(path.join(folder, name))))
  })
}

function readPgm(bytes: Buffer): GreyPage {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'))
  if (!head) throw new Error('not a binary grey map of 255 levels')
  const [whole, width, height] = head
  return {
    width: Number(width),
    height: Number(height),
    levels: new Uint8Array(bytes.subarray(whole.length)),
  }
}

/** The ink of each point of a box of a page, row by row: 0 is white, 255 is black. */
export function inkPoints(
  page: GreyPage,
  box: { x: number; y: number; width: number; height: number },
): number[] {
  const points: number[] = []
  for (let y = Math.round(box.y); y < Math.round(box.y + box.height); y += 1) {
    for (let x = Math.round(box.x); x < Math.round(box.x + box.width); x += 1) {
      points.push(255 - (page.levels[y * page.width + x] ?? 255))
    }
  }
  return points
}
