import { agreedItems, idOfItemKey } from '../../../../lib/core/agreement/agreedItems.ts'
import { canonicalText } from '../../../../lib/core/agreement/canonicalText.ts'
import { type FinalAccount, finalAccountOf } from '../../../../lib/core/ledger/finalAccount.ts'
import { type OpenForAccount, openForAccount } from '../../../../lib/core/ledger/openForAccount.ts'
import { beyondTolerance } from '../../../../lib/core/ledger/tolerance.ts'
import { households } from '../../../../lib/core/people/household.ts'
import { digitsOf, statementOf } from '../../../../lib/core/shares/statement.ts'
import type { NotebookDocument } from '../../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import type { Mark } from '../../../../lib/store/marks.ts'
import { booksPlan } from '../booksPlan.ts'
import type { FrozenRevision } from '../standingRevision.ts'

/** What the books come to as a final account; without one where something is open. */
export type AccountNow = {
  readonly open: readonly OpenForAccount[]
  readonly account?: FinalAccount
  readonly text?: string
}

/**
 * The final account of a document as it stands, also inside a write transaction.
 *
 * @param signed the newest revision that all have signed
 * @param marks all marks of the notebook
 */
export function accountOf(
  document: NotebookDocument,
  signed: FrozenRevision | undefined,
  marks: readonly Pick<Mark, 'itemKey' | 'household' | 'fingerprint'>[],
): AccountNow {
  const { notebook } = booksPlan(document, signed)
  const digits = digitsOf(notebook)
  // Books in another currency than what was signed can't be held against it.
  const settles = signed?.notebook.currency === notebook.currency ? signed : undefined
  const statement = statementOf(notebook)
  const agreed = agreedIds(document, marks)
  const beyond = beyondTolerance(notebook, digits, settles?.notebook.arrangements).filter(
    ({ id }) => agreed.get(id) === false,
  )
  const open = openForAccount(notebook, digits, { signed: settles !== undefined, statement, beyond })
  if (open.length > 0 || !statement.ok || settles === undefined) return { open }
  const { number, sha256 } = settles.revision
  const account = finalAccountOf(notebook, statement.value, { number, sha256 })
  return { open, account, text: canonicalText(account) }
}

/** Of every section, gate and common cost, whether both have marked it as it stands. */
function agreedIds(
  document: NotebookDocument,
  marks: readonly Pick<Mark, 'itemKey' | 'household' | 'fingerprint'>[],
): ReadonlyMap<string, boolean> {
  return new Map(
    agreedItems(document).flatMap(({ key, inputs }) => {
      const id = idOfItemKey(key)
      if (id === undefined) return []
      const fingerprint = fingerprintOf(inputs)
      const marked = households.every((household) =>
        marks.some(
          (mark) => mark.itemKey === key && mark.household === household && mark.fingerprint === fingerprint,
        ),
      )
      return [[id, marked] as const]
    }),
  )
}
