import { readFileSync } from 'node:fs'
import type { Fault } from '../core/faults.ts'
import { wholeFile } from '../core/faults.ts'
import { type Result, refused } from '../core/result.ts'
import { type ReadNotebook, readNotebook } from '../forms/readNotebook.ts'
import { faultText } from '../words/faultText.ts'

/** Reads a notebook file from disk; what the operating system refuses is a fault of the whole file. */
export function readNotebookFile(path: string): Result<ReadNotebook> {
  let bytes: Uint8Array
  try {
    bytes = readFileSync(path)
  } catch (error) {
    return refused({
      path: wholeFile,
      kind: 'unreadable',
      detail: error instanceof Error ? error.message : String(error),
    })
  }
  return readNotebook(bytes)
}

/** One line a fault: the path of the field and what would be right. */
export function faultLine(fault: Fault): string {
  return `${fault.path}: ${faultText(fault)}`.replace(/\s+/g, ' ')
}

/** Prints every fault on standard error and ends with exit status 1; nothing goes to standard output. */
export function stopWithFaults(faults: readonly Fault[]): never {
  process.stderr.write(`${faults.map(faultLine).join('\n')}\n`)
  process.exit(1)
}
