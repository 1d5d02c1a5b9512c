import { canonicalText } from '../../../../lib/core/agreement/canonicalText.ts'
import type { Notebook } from '../../../../lib/core/agreement/notebook.ts'
import { moneyText } from '../../../../lib/core/amounts/money.ts'
import { contributionAmount } from '../../../../lib/core/ledger/contributed.ts'
import type { FinalAccount } from '../../../../lib/core/ledger/finalAccount.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'

export type AccountEntry = FinalAccount['entries'][number]

/** What counts in the books and is not in an account, and what is in the account and does not count any more. */
export function enteredSince(
  account: FinalAccount,
  notebook: Notebook,
): { readonly entered: readonly AccountEntry[]; readonly gone: readonly AccountEntry[] } {
  const digits = digitsOf(notebook)
  const now = notebook.contributions.flatMap((entry): readonly AccountEntry[] => {
    const amount = contributionAmount(entry, digits)
    const { household, kind, date, note } = entry
    return amount === 0n
      ? []
      : [{ household, kind, amount: moneyText(amount, digits), date, for: entry.for, note }]
  })
  return { entered: without(now, account.entries), gone: without(account.entries, now) }
}

/** The entries that the others do not hold; of entries that say the same as many as there are more of. */
function without(entries: readonly AccountEntry[], others: readonly AccountEntry[]): AccountEntry[] {
  const left = others.map((entry) => canonicalText(entry))
  return entries.filter((entry) => {
    const at = left.indexOf(canonicalText(entry))
    if (at >= 0) left.splice(at, 1)
    return at < 0
  })
}
