import { type Fault, wholeFile } from '../../../lib/core/faults.ts'
import { type Result, refused } from '../../../lib/core/result.ts'
import { withoutTakes } from '../../../lib/forms/gatePassages.ts'
import { type ReadNotebook, readDocument, readNotebook } from '../../../lib/forms/readNotebook.ts'
import { withoutMarks } from '../../../lib/forms/withoutMarks.ts'
import { faultText } from '../../../lib/words/faultText.ts'

/** A notebook file is text that two people typed; it never comes near this size. */
export const largestImport = 2_000_000

/** The faults of a file, one a line, each with its path. */
export function fileFaults(faults: readonly Fault[]): string {
  return faults.map((fault) => `${fault.path}: ${faultText(fault)}`).join('\n')
}

/** Reads an uploaded notebook file: at most 2 MB, and only a file that holds. It comes without marks of any kind. */
export async function readImport(upload: FormDataEntryValue | undefined): Promise<Result<ReadNotebook>> {
  if (!(upload instanceof File) || upload.size === 0) {
    return refused({ path: wholeFile, kind: 'unreadable', detail: 'no file was chosen, or it is empty' })
  }
  if (upload.size > largestImport) {
    return refused({ path: wholeFile, kind: 'too-large', bytes: upload.size, limit: largestImport })
  }
  const read = readNotebook(new Uint8Array(await upload.arrayBuffer()))
  return read.ok ? readDocument(withoutMarks(withoutTakes(read.value.document))) : read
}
