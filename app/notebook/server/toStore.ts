import { wholeFile } from '../../../lib/core/faults.ts'
import { held, type Result, refused } from '../../../lib/core/result.ts'
import { documentText } from '../../../lib/forms/parts.ts'
import { type NotebookDocument, type ReadNotebook, readNotebook } from '../../../lib/forms/readNotebook.ts'
import { largestImport } from './readImport.ts'

/**
 * A document as it will be stored and exported. It is read back from its text, as every page and every import will read
 * it: what is stored can always be opened, and what is exported can always be imported. Shares that can't be worked out
 * keep nothing from being stored, and are told on their own pages, not with what somebody mistyped elsewhere.
 */
export function toStore(document: NotebookDocument): Result<ReadNotebook & { readonly text: string }> {
  const text = documentText(document)
  const bytes = Buffer.byteLength(text)
  if (bytes > largestImport)
    return refused({ path: wholeFile, kind: 'too-large', bytes, limit: largestImport })
  const read = readNotebook(text, 'file only')
  return read.ok ? held({ ...read.value, text }) : read
}
