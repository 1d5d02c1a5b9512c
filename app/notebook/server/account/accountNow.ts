import { saysTheSame } from '../../../../lib/core/ledger/finalAccount.ts'
import { households } from '../../../../lib/core/people/household.ts'
import type { Opened } from '../opened.ts'
import { type AccountNow, accountOf } from './accountOf.ts'
import type { FrozenAccount } from './frozenAccounts.ts'

/** Where the last settlement of a notebook stands. */
export type AccountStanding = {
  readonly now: AccountNow
  /** The newest that was drawn up. */
  readonly newest: FrozenAccount | undefined
  /** Whether the books still say what the newest says. */
  readonly stands: boolean
  /** Signed by all, and the books still say it: nothing is owed. */
  readonly closed: boolean
  /** Signed by all, and the books were changed since. */
  readonly overtaken: boolean
}

export function accountStanding(opened: Opened): AccountStanding {
  const signed = opened.revisions.find(({ stillToSign }) => stillToSign.length === 0)
  const marks = opened.standings.flatMap(({ item, fingerprint, markedAt }) =>
    households
      .filter((household) => markedAt[household] !== undefined)
      .map((household) => ({ itemKey: item.key, household, fingerprint })),
  )
  const now = accountOf(opened.document, signed, marks)
  const [newest] = opened.accounts
  const stands = newest !== undefined && now.account !== undefined && saysTheSame(newest.account, now.account)
  const signedByAll = newest !== undefined && newest.stillToSign.length === 0
  return { now, newest, stands, closed: stands && signedByAll, overtaken: signedByAll && !stands }
}
