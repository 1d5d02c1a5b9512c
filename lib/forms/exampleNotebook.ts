import example from '../../prisma/example/notebook.json' with { type: 'json' }
import { assert } from '../core/assert.ts'
import { type NotebookDocument, readDocument } from './readNotebook.ts'

/** The example that every install brings: a scenario of our own. It passes the same check as any import. */
export function exampleDocument(): NotebookDocument {
  const read = readDocument(example)
  assert(read.ok, 'the example that ships holds')
  return read.value.document
}
