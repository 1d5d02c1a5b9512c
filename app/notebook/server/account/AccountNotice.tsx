import { minorUnits } from '../../../../lib/core/amounts/money.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import {
  accountEntryWords,
  overtakenSentences,
  overtakenWords,
} from '../../../../lib/words/account/overtakenText.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Caution } from '../../../ui/Caution.tsx'
import type { Opened } from '../opened.ts'
import { accountStanding } from './accountNow.ts'
import { ClosedAccount } from './ClosedAccount.tsx'
import { type AccountEntry, enteredSince } from './enteredSince.ts'

/**
 * Where all have signed a final account: that nothing is owed, or, where the books were changed since, that they say
 * something else, and which entries that is. `page`: where the account is read; left out on its own page.
 */
export function AccountNotice({ opened, page }: { opened: Opened; page?: string }) {
  const { newest, closed, overtaken } = accountStanding(opened)
  if (newest === undefined) return null
  const { number } = newest.stored
  if (closed) return <ClosedAccount number={number} {...(page === undefined ? {} : { page })} />
  if (!overtaken) return null
  const { entered, gone } = enteredSince(newest.account, opened.notebook)
  return (
    <Caution title={overtakenWords.title}>
      {overtakenSentences(number).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <Entries opened={opened} entries={entered} lead={overtakenWords.entered} />
      <Entries opened={opened} entries={gone} lead={overtakenWords.gone} />
      {page === undefined ? null : (
        <div className="button-row">
          <ButtonLink href={page}>{overtakenWords.see}</ButtonLink>
        </div>
      )}
    </Caution>
  )
}

function Entries({
  opened: { notebook },
  entries,
  lead,
}: {
  opened: Opened
  entries: readonly AccountEntry[]
  lead: string
}) {
  if (entries.length === 0) return null
  const digits = digitsOf(notebook)
  const words = entries.map((entry) =>
    accountEntryWords({
      ...entry,
      household: householdName(notebook, entry.household),
      amount: moneyWords(minorUnits(entry.amount, digits), notebook.currency),
    }),
  )
  return (
    <>
      <p>{lead}</p>
      <ul>
        {words.map((one, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two entries can say the same
          <li key={`${at} ${one}`}>{one}</li>
        ))}
      </ul>
    </>
  )
}
