import { accountWords } from '../../../../lib/words/account/accountText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'

/** Says that nothing is owed: for an account that all have signed, while the books still say the same. */
export function ClosedAccount({
  number,
  page,
}: {
  /** Of the account; undefined while none closes the books: then nothing is said. */
  number: number | undefined
  /** Where the account is read; left out on its own page. */
  page?: string
}) {
  if (number === undefined) return null
  return (
    <Panel heading={accountWords.closed}>
      <p>All parties of both households have signed final account {number}.</p>
      {page === undefined ? null : <ButtonLink href={page}>See the final account</ButtonLink>}
    </Panel>
  )
}
