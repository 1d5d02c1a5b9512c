'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../../lib/access/whoAsks.ts'
import { accountParties, readFinalAccount, saysTheSame } from '../../../../lib/core/ledger/finalAccount.ts'
import type { NotebookDocument } from '../../../../lib/forms/readNotebook.ts'
import { accountsOf, freezeAccount, signFinalAccount } from '../../../../lib/store/finalAccounts.ts'
import type { Mark } from '../../../../lib/store/marks.ts'
import { sha256Hex } from '../../../../lib/store/sha256.ts'
import { accountIntent, accountNames, accountRefusals } from '../../../../lib/words/account/accountText.ts'
import { pressRefusals } from '../../../../lib/words/pressText.ts'
import type { PressAnswer } from '../../../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../../../ui/draft/saveAnswer.ts'
import { signedBefore } from '../booksPlan.ts'
import { signatureFaults, signatureSchema } from '../signatureForm.ts'
import type { FrozenRevision } from '../standingRevision.ts'
import { accountOf } from './accountOf.ts'

/** Freezes the books as the next final account, if nothing is open. Looked at again inside the transaction. */
export async function drawUpAccount(
  notebookId: string,
  _previous: PressAnswer,
  _form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const { signed } = await signedBefore(notebookId)
  const frozen = await freezeAccount({
    id: notebookId,
    household,
    at: new Date(),
    build: (document, marks) => {
      const { text } = accountOf(JSON.parse(document) as NotebookDocument, signed, marks)
      return text === undefined
        ? { refused: accountRefusals.stillOpen }
        : { canonicalText: text, sha256: sha256Hex(text) }
    },
    stands: (newest, text) => saysTheSame(readFinalAccount(newest), readFinalAccount(text)),
  })
  if ('refused' in frozen) return { refused: frozen.refused }
  redirect(`/notebook/${notebookId}/final-account`)
}

const whichSchema = z.object({
  accountId: z.string().min(1).max(100),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  partyIndex: z.number().int().min(0),
})

/** Which party signs which account: bound when the page is made, checked here like anything a browser sends. */
export type AccountSigningPlace = z.infer<typeof whichSchema>

/** Signs for one party of the household that asks, never of the other, on the hash that the party was shown. */
export async function signAccount(
  notebookId: string,
  place: AccountSigningPlace,
  _base: string,
  draft: unknown,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const which = whichSchema.safeParse(place)
  const signature = signatureSchema.safeParse(draft)
  if (!which.success || !signature.success) return refuse(pressRefusals.form)
  const { accountId, sha256, partyIndex } = which.data
  const stored = (await accountsOf(notebookId)).find(({ id }) => id === accountId)
  const account = stored && readFinalAccount(stored.canonicalText)
  const party =
    account &&
    accountParties(account).find((one) => one.household === household && one.partyIndex === partyIndex)
  if (!account || !party) return refuse(accountRefusals['no-such-party'])
  const faults = signatureFaults(signature.data, party.name, 'account')
  if (faults.length > 0) return { faults: [...faults] }
  const { typedName, drawing } = signature.data
  const { signed } = await signedBefore(notebookId)
  const outcome = await signFinalAccount({
    notebookId,
    accountId,
    sha256,
    household,
    partyIndex,
    partyName: party.name,
    capacity: party.capacity,
    typedName,
    intent: accountIntent(party, accountNames(account)[household]),
    ...(drawing === '' ? {} : { drawing }),
    at: new Date(),
    isCurrent: (text, document, marks) => isCurrent(text, document, marks, signed),
  })
  if (outcome !== 'signed') return refuse(accountRefusals[outcome])
  redirect(`/notebook/${notebookId}/final-account`)
}

function isCurrent(
  text: string,
  document: string,
  marks: readonly Mark[],
  signed: FrozenRevision | undefined,
): boolean {
  const { account } = accountOf(JSON.parse(document) as NotebookDocument, signed, marks)
  return account !== undefined && saysTheSame(account, readFinalAccount(text))
}

function refuse(message: string): SaveAnswer {
  return { faults: [{ path: '', message }] }
}
