import type { SealKeyFault } from '../../../../lib/core/agreement/sealKeyFault.ts'
import { amendmentHeading, changedSince } from '../../../../lib/words/signingWords.ts'
import { Panel } from '../../../ui/Panel.tsx'
import { AmendmentView } from '../AmendmentView.tsx'
import { AgreementPart } from './AgreementPart.tsx'
import { CopiesPart } from './CopiesPart.tsx'
import { PutUpPart } from './PutUpPart.tsx'
import { SigningForms } from './SigningForms.tsx'
import type { Signing } from './signingOf.ts'
import type { SignPart } from './signOrder.ts'
import { toSignHere } from './toSignHere.ts'

/** One part of the page for signing. */
export function SignPartView({
  part,
  signing,
  whole,
  trouble,
}: {
  part: SignPart
  signing: Signing
  /** All chapters of the agreement are unfolded. */
  whole: boolean
  trouble: SealKeyFault | undefined
}) {
  const { opened, newest, summary, amends } = signing
  const home = `/notebook/${opened.notebookId}`
  switch (part) {
    case 'amendment':
      return amends ? (
        <AmendmentView amends={amends} heading={amendmentHeading(amends.number)} id="amendment" />
      ) : null
    case 'agreement':
      return <AgreementPart home={home} summary={summary} revision={newest?.revision.number} whole={whole} />
    case 'forms':
      return newest ? <SigningForms opened={opened} frozen={newest} /> : null
    case 'copies':
      return newest ? (
        <CopiesPart
          home={home}
          frozen={newest}
          main={toSignHere(newest, opened.household).length === 0}
          trouble={trouble}
        />
      ) : null
    case 'next':
      return <NextRevision signing={signing} />
  }
}

/** What the notebook says by now, and what puts it up. */
function NextRevision({ signing: { opened, newest, obstacles, draftAmends } }: { signing: Signing }) {
  return (
    <>
      {newest === undefined ? null : draftAmends ? (
        <AmendmentView amends={draftAmends} heading={changedSince.heading} id="changed-since">
          <p>{changedSince.text}</p>
          <p>{changedSince.amends(draftAmends.number)}</p>
        </AmendmentView>
      ) : (
        <Panel heading={changedSince.heading} id="changed-since">
          <p>{changedSince.text}</p>
        </Panel>
      )}
      <PutUpPart opened={opened} number={(newest?.revision.number ?? 0) + 1} obstacles={obstacles} />
    </>
  )
}
