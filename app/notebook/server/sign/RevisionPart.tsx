import { checkedMoment } from '../../../../lib/words/day.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { hasNotSigned, hasSigned, putUpWords, standingHeading } from '../../../../lib/words/signingWords.ts'
import type { SummaryInput } from '../../../../lib/words/summary/summaryInput.ts'
import { CheckNumber } from '../../../ui/CheckNumber.tsx'
import { HouseholdTag } from '../../../ui/HouseholdTag.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import type { FrozenRevision } from '../standingRevision.ts'
import { JumpLinks, type JumpTo } from './JumpLinks.tsx'
import { SignInShort } from './SignInShort.tsx'

/** The revision that stands: what it says in short, who has signed it, its hash, and where the rest of the page is. */
export function RevisionPart({
  frozen,
  summary,
  jumps,
}: {
  frozen: FrozenRevision
  summary: SummaryInput
  jumps: readonly JumpTo[]
}) {
  const { revision, notebook, signatures, stillToSign } = frozen
  return (
    <Panel heading={standingHeading(revision.number, stillToSign.length === 0)}>
      <p>{putUpWords(householdName(notebook, revision.frozenBy), checkedMoment(revision.frozenAt))}</p>
      <SignInShort summary={summary} />
      <ul className="mark-list" data-led-to={signatures.length > 0 ? '' : undefined}>
        {signatures.map((one) => (
          <li key={one.id}>
            <HouseholdTag household={one.household} name={one.partyName} />{' '}
            {hasSigned(checkedMoment(one.signedAt))}
          </li>
        ))}
        {stillToSign.map((place) => (
          <li key={`${place.household} ${place.partyIndex}`}>
            <HouseholdTag household={place.household} name={place.name} /> {hasNotSigned}
          </li>
        ))}
      </ul>
      <p className="hash">
        <CheckNumber value={revision.sha256} />
      </p>
      <JumpLinks to={jumps} />
    </Panel>
  )
}
