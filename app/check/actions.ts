'use server'

import { Semaphore } from 'async-mutex'
import { checkRecord, tooLargeRecord } from '../../lib/seal/checkRecord.ts'
import { readLimits } from '../../lib/seal/readLimits.ts'
import { sealKey } from '../../lib/seal/sealKey.ts'
import { dataFolder } from '../../lib/store/dataFolder.ts'
import { anythingSealed, revisionSealedAs } from '../../lib/store/sealedPapers.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { notProved, type RecordLine, recordLines, recordVerdict } from '../../lib/words/recordText.ts'

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

/** The page is open to everyone, and a check takes a moment of one core: no more than two at once. */
const atOnce = new Semaphore(2)

/** Checks a PDF that anyone brings. Nothing of it is kept. */
export async function checkThisRecord(_previous: unknown, form: FormData): Promise<CheckAnswer> {
  const upload = form instanceof FormData ? form.get('record') : null
  if (!(upload instanceof File) || upload.size === 0)
    return { refused: 'Record: choose a PDF file first. Nothing was chosen, or the file is empty.' }
  const findings =
    upload.size > readLimits.file
      ? tooLargeRecord(upload.size)
      : await atOnce.runExclusive(async () => checkRecord(new Uint8Array(await upload.arrayBuffer())))
  const bytes = upload.size > readLimits.file ? undefined : new Uint8Array(await upload.arrayBuffer())
  const kept = findings.holds && bytes ? await revisionSealedAs(sha256Hex(bytes)) : undefined
  return {
    name: upload.name.slice(0, 120),
    holds: findings.holds,
    verdict: recordVerdict(findings),
    lines: recordLines(findings, {
      ...(findings.seal ? { sealedHere: findings.seal.certificateSha256 === (await ownFingerprint()) } : {}),
      ...(findings.holds
        ? {
            revision: !kept
              ? { kind: 'not kept here' as const }
              : kept.newest
                ? { kind: 'newest' as const, number: kept.number }
                : { kind: 'older' as const, number: kept.number, newest: kept.newestSealed },
          }
        : {}),
    }),
    notProved,
  }
}

/** The fingerprint of this install's own seal, where it has made one and it is in order. */
async function ownFingerprint(): Promise<string | undefined> {
  if (!(await anythingSealed())) return undefined
  const key = await sealKey(dataFolder(), new Date(), { sealedBefore: true })
  return key.ok ? key.value.fingerprint : undefined
}
