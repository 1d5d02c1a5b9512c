import { agreementText } from '../../../lib/core/agreement/canonicalText.ts'
import { plannedStatement, statementOf } from '../../../lib/core/shares/statement.ts'
import { sha256Hex } from '../../../lib/store/sha256.ts'
import type { SummaryInput } from '../../../lib/words/summary/summaryInput.ts'
import { amendmentOf } from './amendment.ts'
import type { Opened } from './opened.ts'
import type { FrozenRevision } from './standingRevision.ts'

/** The summary of the notebook as it stands, a draft. */
export function draftSummary(
  opened: Pick<Opened, 'document' | 'notebook' | 'inForce' | 'statement' | 'waitingCaps' | 'revisions'> &
    Partial<Pick<Opened, 'asAgreed'>>,
): SummaryInput {
  const amends = amendmentOf(opened.document, opened.revisions)
  return {
    notebook: opened.asAgreed ?? opened.notebook,
    statement: opened.statement,
    actual: statementOf(opened.inForce),
    waitingCaps: opened.waitingCaps,
    standing: { kind: 'draft', sha256: sha256Hex(agreementText(opened.document)) },
    signatures: [],
    booksAsOf: today(),
    ...(amends ? { amends } : {}),
  }
}

/** The summary of a frozen revision, one of `all` its notebook's, with the books as they are now. */
export function revisionSummary(
  { revision, notebook, signatures, stillToSign }: FrozenRevision,
  all: readonly FrozenRevision[],
): SummaryInput {
  const { number, sha256, frozenAt } = revision
  const amends = amendmentOf(JSON.parse(revision.canonicalText), all, number)
  return {
    notebook,
    statement: plannedStatement(notebook),
    actual: statementOf(notebook),
    standing: { kind: stillToSign.length === 0 ? 'signed' : 'up for signing', number, sha256, frozenAt },
    signatures,
    booksAsOf: today(),
    ...(amends ? { amends } : {}),
  }
}

function today(): string {
  return new Date().toISOString().slice(0, 10)
}

/** The date of a revision's paper: that of its last signature, or of its freezing while nobody has signed. */
export function paperDate({ revision, signatures }: FrozenRevision): Date {
  const signed = signatures.map(({ signedAt }) => signedAt.getTime())
  return new Date(Math.max(revision.frozenAt.getTime(), ...signed))
}
