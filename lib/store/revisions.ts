import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { type Mark, marksIn } from './marks.ts'
import { documentIn } from './notebooks.ts'
import { sha256Hex } from './sha256.ts'
import { storedHousehold } from './storedHousehold.ts'

/** An agreement frozen word for word. The newest of a notebook is the one that stands. */
export type Revision = {
  readonly id: string
  readonly notebookId: string
  /** 1, 2, 3 … within its notebook. */
  readonly number: number
  readonly canonicalText: string
  readonly sha256: string
  readonly frozenAt: Date
  readonly frozenBy: Household
}

/** One party's signature under one revision. */
export type Signature = {
  readonly id: string
  readonly revisionId: string
  readonly household: Household
  /** Position in the household's list of parties, from 0. */
  readonly partyIndex: number
  readonly partyName: string
  readonly capacity: string
  readonly typedName: string
  /** The sentence that was ticked, as it was shown. */
  readonly intent: string
  /** SVG path data of a drawn signature. */
  readonly drawing?: string
  /** The hash of what was signed; always the revision's own. */
  readonly sha256: string
  readonly signedAt: Date
}

export type SigningOutcome = 'signed' | 'outdated' | 'other-hash' | 'already-signed' | 'no-such-revision'

export type Freezing<Refusal> =
  | { readonly canonicalText: string; readonly sha256: string }
  | { readonly refused: Refusal }

/**
 * Freezes the next revision in one transaction: `build` is given the document and the marks as they stand and answers
 * with the text to freeze and its hash, or refuses. Where the newest revision already is this very text, it goes on
 * standing with its signatures, and `isNew` is false: two people who press at once freeze one revision.
 *
 * Throws when there is no such notebook, and when the hash is not that of the text.
 */
export async function freezeRevision<Refusal>(freezing: {
  readonly id: string
  readonly household: Household
  readonly at: Date
  readonly build: (document: string, marks: readonly Mark[]) => Freezing<Refusal>
}): Promise<{ revision: Revision; isNew: boolean } | { refused: Refusal }> {
  const notebookId = freezing.id
  return database().write(async (tables) => {
    const built = freezing.build(await documentIn(tables, notebookId), await marksIn(tables, notebookId))
    if ('refused' in built) {
      return { refused: built.refused }
    }
    const { canonicalText, sha256 } = built
    if (sha256Hex(canonicalText) !== sha256) {
      throw new Error('A revision is frozen under the SHA-256 of its own text.')
    }
    const newest = await newestIn(tables, notebookId)
    if (newest?.canonicalText === canonicalText) {
      return { revision: newest, isNew: false }
    }
    const row = await tables.revision.create({
      data: {
        notebookId,
        number: (newest?.number ?? 0) + 1,
        canonicalText,
        sha256,
        frozenAt: freezing.at,
        frozenBy: freezing.household,
      },
    })
    await putOnRecord(tables, {
      notebookId,
      household: freezing.household,
      at: freezing.at,
      kind: 'freeze',
      detail: { revision: row.number, sha256 },
    })
    return { revision: revisionFrom(row), isNew: true }
  })
}

/** All revisions of a notebook, newest first. */
export async function revisionsOf(notebookId: string): Promise<Revision[]> {
  const rows = await database().read((tables) =>
    tables.revision.findMany({ where: { notebookId }, orderBy: { number: 'desc' } }),
  )
  return rows.map(revisionFrom)
}

/** The revision that stands. */
export async function newestRevision(notebookId: string): Promise<Revision | undefined> {
  return database().read((tables) => newestIn(tables, notebookId))
}

/** The revision that stands, inside a write transaction or committed. */
export async function newestIn(tables: Tables, notebookId: string): Promise<Revision | undefined> {
  const row = await tables.revision.findFirst({ where: { notebookId }, orderBy: { number: 'desc' } })
  return row === null ? undefined : revisionFrom(row)
}

/** The signatures under a revision: household a's first, then by party. */
export async function signaturesOf(revisionId: string): Promise<Signature[]> {
  const rows = await database().read((tables) =>
    tables.signature.findMany({
      where: { revisionId },
      orderBy: [{ household: 'asc' }, { partyIndex: 'asc' }],
    }),
  )
  return rows.map(signatureFrom)
}

/** A signature's row, under a revision or under a final account, without the drawing that was not made. */
export function signatureFrom<Row extends { readonly household: string; readonly drawing: string | null }>({
  drawing,
  ...row
}: Row) {
  return { ...row, household: storedHousehold(row.household), ...(drawing === null ? {} : { drawing }) }
}

/**
 * Signs a revision for one party, if it is the one that stands (else `outdated`), if `sha256`, the hash that the person
 * signing was shown, is the revision's (else `other-hash`), and once. All is looked at inside the transaction.
 */
export async function signRevision(signing: {
  readonly notebookId: string
  readonly revisionId: string
  readonly sha256: string
  readonly household: Household
  readonly partyIndex: number
  readonly partyName: string
  readonly capacity: string
  readonly typedName: string
  readonly intent: string
  readonly drawing?: string
  readonly at: Date
}): Promise<SigningOutcome> {
  const { notebookId, at, drawing, ...signature } = signing
  const { revisionId, household, partyIndex, sha256 } = signing
  return database().write(async (tables) => {
    const revision = await tables.revision.findUnique({ where: { id: revisionId } })
    if (revision === null || revision.notebookId !== notebookId) {
      return 'no-such-revision'
    }
    const newest = await newestIn(tables, notebookId)
    if (newest?.id !== revisionId) {
      return 'outdated'
    }
    if (revision.sha256 !== sha256) {
      return 'other-hash'
    }
    const earlier = await tables.signature.count({ where: { revisionId, household, partyIndex } })
    if (earlier > 0) {
      return 'already-signed'
    }
    await tables.signature.create({ data: { ...signature, drawing: drawing ?? null, signedAt: at } })
    const { partyName, capacity, typedName } = signing
    await putOnRecord(tables, {
      notebookId,
      household,
      at,
      kind: 'sign',
      detail: { revision: revision.number, sha256, partyIndex, partyName, capacity, typedName },
    })
    return 'signed'
  })
}

function revisionFrom(row: Omit<Revision, 'frozenBy'> & { readonly frozenBy: string }): Revision {
  return { ...row, frozenBy: storedHousehold(row.frozenBy) }
}
