import { saysTheSame } from '../../../../lib/core/ledger/finalAccount.ts'
import { marksOf } from '../../../../lib/store/marks.ts'
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
}

export async function accountStanding(opened: Opened): Promise<AccountStanding> {
  const signed = opened.revisions.find(({ stillToSign }) => stillToSign.length === 0)
  const now = accountOf(opened.document, signed, await marksOf(opened.notebookId))
  const [newest] = opened.accounts
  const stands = newest !== undefined && now.account !== undefined && saysTheSame(newest.account, now.account)
  return { now, newest, stands, closed: stands && newest.stillToSign.length === 0 }
}

/** The number of the account that closes the books; undefined while none does. Most notebooks have no account at all. */
export async function closingAccount(opened: Opened): Promise<number | undefined> {
  const [newest] = opened.accounts
  if (newest === undefined || newest.stillToSign.length > 0) return undefined
  return (await accountStanding(opened)).closed ? newest.stored.number : undefined
}
