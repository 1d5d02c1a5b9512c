import { Semaphore } from 'async-mutex'
import type { RecordFindings, RecordRevision } from '../../lib/core/agreement/recordFindings.ts'
import { checkRecord, tooLargeRecord } from '../../lib/seal/checkRecord.ts'
import { readLimits } from '../../lib/seal/readLimits.ts'
import { sealKey } from '../../lib/seal/sealKey.ts'
import { dataFolder } from '../../lib/store/dataFolder.ts'
import { anythingSealed, revisionSealedAs } from '../../lib/store/sealedPapers.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { notProved, type RecordLine, recordLines, recordVerdict } from '../../lib/words/recordText.ts'
import { checkRefusals } from '../../lib/words/workText.ts'

/** What the page tells of a file; `refused` where no file came with the form. */
export type CheckAnswer =
  | { readonly refused: string }
  | {
      readonly name: string
      readonly holds: boolean
      readonly verdict: string
      readonly lines: readonly RecordLine[]
      readonly notProved: readonly string[]
    }

/** The page is open to everyone, and a check takes a moment of one core: no more than two at once, and few that wait. */
const mostAtOnce = 2
const mostWaiting = 4

// On globalThis, because a server built by Next holds this file several times over.
const shared = globalThis as { mearingRecordChecks?: { readonly atOnce: Semaphore; waiting: number } }
shared.mearingRecordChecks ??= { atOnce: new Semaphore(mostAtOnce), waiting: 0 }
const checks = shared.mearingRecordChecks

const busyNow = { refused: checkRefusals.busy } as const

export const noRecord = { refused: checkRefusals.none } as const

/**
 * Checks the bytes of a PDF that anyone brings. Nothing of it is kept.
 *
 * @param read gives the bytes, once it is their turn
 */
export async function checkedRecord(
  name: string,
  size: number,
  read: () => Promise<Uint8Array>,
): Promise<CheckAnswer> {
  if (size > readLimits.file) return answerFor(name, tooLargeRecord(size))
  if (checks.waiting >= mostWaiting) return busyNow
  checks.waiting += 1
  try {
    return await checks.atOnce.runExclusive(async () => {
      const bytes = await read()
      return answerFor(name, await checkRecord(bytes), bytes)
    })
  } finally {
    checks.waiting -= 1
  }
}

async function answerFor(name: string, findings: RecordFindings, bytes?: Uint8Array): Promise<CheckAnswer> {
  const kept = findings.holds && bytes ? await revisionSealedAs(sha256Hex(bytes)) : undefined
  const about = {
    // A copy that is kept here was locked here, whatever seal the install has today.
    ...(findings.seal
      ? {
          sealedHere: kept !== undefined || findings.seal.certificateSha256 === (await ownFingerprint()),
        }
      : {}),
    ...(findings.holds ? { revision: revisionOf(kept) } : {}),
  }
  return {
    name,
    holds: findings.holds,
    verdict: recordVerdict(findings, about),
    lines: recordLines(findings, about),
    notProved,
  }
}

function revisionOf(kept: Awaited<ReturnType<typeof revisionSealedAs>>): RecordRevision {
  if (!kept) return { kind: 'not kept here' }
  return kept.newest
    ? { kind: 'newest', number: kept.number }
    : { kind: 'older', number: kept.number, newest: kept.newestSealed }
}

/** The fingerprint of this install's own seal, where it has made one and it is in order. */
async function ownFingerprint(): Promise<string | undefined> {
  if (!(await anythingSealed())) return undefined
  const key = await sealKey(dataFolder(), new Date(), { sealedBefore: true })
  return key.ok ? key.value.fingerprint : undefined
}
