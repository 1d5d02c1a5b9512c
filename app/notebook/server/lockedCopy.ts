import type { SealKeyFault } from '../../../lib/core/agreement/sealKeyFault.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { printFonts } from '../../../lib/files/printFonts.ts'
import { summaryPaper } from '../../../lib/pdf/summaryPaper.ts'
import { sealKey } from '../../../lib/seal/sealKey.ts'
import { sealPdf } from '../../../lib/seal/sealPdf.ts'
import { dataFolder } from '../../../lib/store/dataFolder.ts'
import { headOf, historyOf } from '../../../lib/store/historyChain.ts'
import {
  anythingSealed,
  keepSealedPaper,
  type SealedPaper,
  sealedPaperOf,
  sealsOf,
} from '../../../lib/store/sealedPapers.ts'
import type { FrozenRevision } from './standingRevision.ts'
import { revisionSummary } from './summaryOf.ts'

export type LockedCopy =
  | { readonly kind: 'locked'; readonly paper: SealedPaper }
  /** Nothing is lost: it is made once the key is in order again. */
  | { readonly kind: 'no key'; readonly fault: SealKeyFault }

/**
 * The locked copy of a revision that all have signed: the one that is kept, else made now. It is made right after the
 * last signature; where the program was stopped in between, whoever asks for it next gets it made. Of two that make it
 * at once, the first kept is the one for good.
 */
export async function lockedCopy(asked: {
  readonly notebookId: string
  readonly household: Household
  readonly frozen: FrozenRevision
  readonly all: readonly FrozenRevision[]
}): Promise<LockedCopy> {
  const { notebookId, household, frozen, all } = asked
  const { revision } = frozen
  const kept = await sealedPaperOf(revision.id)
  if (kept) return { kind: 'locked', paper: kept }
  const at = new Date()
  const key = await installsKey(at)
  if (!key.ok) return { kind: 'no key', fault: key.fault }
  const history = headOf(await historyOf(notebookId))
  const summary = { ...revisionSummary(frozen, all), history }
  const pdf = await summaryPaper(summary, revision.canonicalText, printFonts(), at)
  const bytes = await sealPdf(pdf, key.value, at)
  const certificate = key.value.fingerprint
  await keepSealedPaper({ notebookId, revisionId: revision.id, household, bytes, certificate, history, at })
  const paper = await sealedPaperOf(revision.id)
  if (paper === undefined) throw new Error('A locked copy that was just kept is not there.')
  return { kind: 'locked', paper }
}

/** What is wrong with this install's key while the locked copy of a revision waits to be made; undefined where nothing is. */
export async function keyTrouble({
  revision,
  stillToSign,
}: FrozenRevision): Promise<SealKeyFault | undefined> {
  if (stillToSign.length > 0 || (await sealsOf(revision.notebookId)).has(revision.id)) return undefined
  const key = await installsKey(new Date())
  return key.ok ? undefined : key.fault
}

async function installsKey(at: Date) {
  return sealKey(dataFolder(), at, { sealedBefore: await anythingSealed() })
}
