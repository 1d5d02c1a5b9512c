import type { PartyPlace } from '../../../../lib/core/agreement/revision.ts'
import {
  accountParties,
  type FinalAccount,
  readFinalAccount,
} from '../../../../lib/core/ledger/finalAccount.ts'
import {
  type AccountSignature,
  accountSignaturesOf,
  accountsOf,
  type StoredAccount,
} from '../../../../lib/store/finalAccounts.ts'

/** A final account as it was frozen, with its signatures. */
export type FrozenAccount = {
  readonly stored: StoredAccount
  readonly account: FinalAccount
  readonly signatures: readonly AccountSignature[]
  readonly stillToSign: readonly PartyPlace[]
  /** Whether a newer one has taken its place. */
  readonly outdated: boolean
}

/** Every final account of a notebook, newest first. */
export async function frozenAccounts(notebookId: string): Promise<readonly FrozenAccount[]> {
  const all = await accountsOf(notebookId)
  return Promise.all(
    all.map(async (stored, index) => {
      const account = readFinalAccount(stored.canonicalText)
      const signatures = await accountSignaturesOf(stored.id)
      const stillToSign = accountParties(account).filter(
        ({ household, partyIndex }) =>
          !signatures.some((one) => one.household === household && one.partyIndex === partyIndex),
      )
      return { stored, account, signatures, stillToSign, outdated: index > 0 }
    }),
  )
}
