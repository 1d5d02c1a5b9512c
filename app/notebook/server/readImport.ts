import { type Fault, wholeFile } from '../../../lib/core/faults.ts'
import { type Result, refused } from '../../../lib/core/result.ts'
import { heldUnder } from '../../../lib/files/heldBriefly.ts'
import { withoutTakes } from '../../../lib/forms/gatePassages.ts'
import { type ReadNotebook, readDocument, readNotebook } from '../../../lib/forms/readNotebook.ts'
import { withoutMarks } from '../../../lib/forms/withoutMarks.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import { importRefusals } from '../../../lib/words/workText.ts'

/** A notebook file is text that two people typed; it never comes near this size. */
export const largestImport = 2_000_000

/** Whoever sent a file has its token and nobody else; the start page knows nobody yet. */
export const importOwner = 'whoever has the token'

export type Import =
  | { readonly ok: true; readonly value: ReadNotebook }
  | { readonly ok: false; readonly refused: string }

/** The faults of a file, one a line, each with its path; what is wrong with the whole file says so itself. */
export function fileFaults(faults: readonly Fault[]): string {
  return faults
    .map((fault) => (fault.path === wholeFile ? faultText(fault) : `${fault.path}: ${faultText(fault)}`))
    .join('\n')
}

/**
 * The notebook file that a form brings: `file` itself, or by `held` one that was sent and checked just before. It is read
 * here in either case, at most 2 MB, and only a file that holds. It comes without marks of any kind.
 */
export async function readImport(fields: Readonly<Record<string, FormDataEntryValue>>): Promise<Import> {
  if (fields.held !== undefined) {
    const bytes = heldUnder('import', importOwner, fields.held)
    if (!(bytes instanceof Uint8Array)) return { ok: false, refused: importRefusals.gone }
    return orFaults(checkedImport(bytes))
  }
  return orFaults(await uploaded(fields.file))
}

async function uploaded(upload: FormDataEntryValue | undefined): Promise<Result<ReadNotebook>> {
  if (!(upload instanceof File)) return nothingThere
  if (upload.size > largestImport) {
    return refused({ path: wholeFile, kind: 'too-large', bytes: upload.size, limit: largestImport })
  }
  return checkedImport(new Uint8Array(await upload.arrayBuffer()))
}

const nothingThere = refused({
  path: wholeFile,
  kind: 'unreadable',
  detail: 'no file was chosen, or it is empty',
})

/** Reads the bytes of a notebook file, and takes off what never comes with a file. */
export function checkedImport(bytes: Uint8Array): Result<ReadNotebook> {
  if (bytes.length === 0) return nothingThere
  const read = readNotebook(bytes)
  return read.ok ? readDocument(withoutMarks(withoutTakes(read.value.document))) : read
}

function orFaults(read: Result<ReadNotebook>): Import {
  return read.ok ? read : { ok: false, refused: fileFaults(read.faults) }
}
