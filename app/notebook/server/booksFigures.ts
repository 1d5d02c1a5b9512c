import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Result } from '../../../lib/core/result.ts'
import { type Statement, statementOf } from '../../../lib/core/shares/statement.ts'
import type { Opened } from './opened.ts'
import { draftDiffers } from './standingRevision.ts'

/**
 * What the books are held against: the newest revision that all have signed; the draft only while nothing is signed.
 * One household must not move the balance by editing the draft.
 */
export type BooksFigures = {
  readonly notebook: Notebook
  readonly statement: Result<Statement>
  /** Number of the signed revision; undefined where nothing is signed yet. */
  readonly signed: number | undefined
  /** The draft, where it says something else than what was signed. */
  readonly draft: Result<Statement> | undefined
}

export function booksFigures(opened: Opened): BooksFigures {
  const signed = opened.revisions.find(({ stillToSign }) => stillToSign.length === 0)
  const draft = () => statementOf(opened.inForce)
  if (!signed) return { notebook: opened.notebook, statement: draft(), signed: undefined, draft: undefined }
  return {
    notebook: signed.notebook,
    statement: statementOf(signed.notebook),
    signed: signed.revision.number,
    draft: draftDiffers(opened, signed) ? draft() : undefined,
  }
}
