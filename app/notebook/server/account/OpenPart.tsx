import Link from 'next/link'
import type { OpenForAccount } from '../../../../lib/core/ledger/openForAccount.ts'
import { accountWords, openForAccountWords } from '../../../../lib/words/account/accountText.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { itemTitles } from '../itemTitles.ts'
import type { Opened } from '../opened.ts'
import { drawUpAccount } from './accountActions.ts'
import { pageOfOpen } from './openForAccountPage.ts'

/** What is still open, each with the page where it is settled; where nothing is, the press that draws the account up. */
export function OpenPart({ opened, open }: { opened: Opened; open: readonly OpenForAccount[] }) {
  const { notebook, notebookId, document } = opened
  const names = shareNames(notebook)
  const titleOf = itemTitles(document)
  if (open.length === 0)
    return (
      <Panel heading={accountWords.nothingOpen}>
        <PressForm action={drawUpAccount.bind(null, notebookId)} label={accountWords.drawUp} weight="main" />
      </Panel>
    )
  return (
    <Panel heading={accountWords.openHeading}>
      <ul className="open-list">
        {open.map((one, place) => {
          const words = openForAccountWords(one, names, titleOf)
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: two things can be open in the same words
            <li key={`${place} ${words}`}>
              {words}{' '}
              <Link href={pageOfOpen(notebookId, one)} prefetch={false}>
                {accountWords.settle[one.kind]}
              </Link>
            </li>
          )
        })}
      </ul>
    </Panel>
  )
}
