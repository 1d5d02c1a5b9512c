import { closeSync, fstatSync, openSync, readFileSync } from 'node:fs'
import type { RecordFindings } from '../core/agreement/recordFindings.ts'
import { checkRecord, tooLargeRecord } from '../seal/checkRecord.ts'
import { readLimits } from '../seal/readLimits.ts'
import { recordFile } from '../words/recordFile.ts'
import { notProved, recordLines, recordVerdict } from '../words/recordText.ts'

const given = process.argv.slice(2)
const json = given.includes('--json')
const files = given.filter((argument) => argument !== '--json')
if (files.length === 0 || files.some((file) => file.startsWith('--'))) {
  process.stderr.write(
    '(file): Name the PDF to check: npm run -s check-record -- FILE.pdf [FILE.pdf …], with --json before it for machines\n',
  )
  process.exit(1)
}

type Checked =
  | { readonly file: string; readonly findings: RecordFindings }
  | { readonly file: string; readonly unreadable: string }

/** Reads no file that is larger than a locked copy, and nothing that is no file. */
async function check(file: string): Promise<Checked> {
  let handle: number | undefined
  try {
    handle = openSync(file, 'r')
    const stat = fstatSync(handle)
    if (!stat.isFile()) return { file, unreadable: 'it is no file' }
    if (stat.size > readLimits.file) return { file, findings: tooLargeRecord(stat.size) }
    return { file, findings: await checkRecord(readFileSync(handle)) }
  } catch (error) {
    return { file, unreadable: error instanceof Error ? error.message : String(error) }
  } finally {
    if (handle !== undefined) closeSync(handle)
  }
}

const signs = { agrees: '+', fails: 'x', told: '-' } as const

function plainText(one: Checked): string {
  if ('unreadable' in one)
    return `${oneLine(one.file)}\nThe file can't be read: ${oneLine(one.unreadable)}.\n`
  const lines = recordLines(one.findings).map(({ kind, text }) => `  ${signs[kind]} ${oneLine(text)}`)
  return [oneLine(one.file), recordVerdict(one.findings), ...lines, ''].join('\n')
}

/** Titles and names come from the file: no line's end and no sign that a terminal obeys gets out of them. */
function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, ' ')
}

const checked: Checked[] = []
for (const file of files) {
  const one = await check(file)
  checked.push(one)
  if (!json) process.stdout.write(`${plainText(one)}\n`)
}
if (json) {
  const printed = checked.map((one) =>
    'unreadable' in one
      ? { file: one.file, holds: false, unreadable: one.unreadable }
      : { file: one.file, ...recordFile(one.findings) },
  )
  process.stdout.write(`${JSON.stringify(printed, null, 2)}\n`)
} else {
  process.stdout.write(`What this does not show:\n${notProved.map((text) => `  - ${text}\n`).join('')}`)
}
process.exitCode = checked.every((one) => 'findings' in one && one.findings.holds) ? 0 : 1
