import type { SealedPaper } from '../../../lib/store/sealedPapers.ts'
import { checkedMoment } from '../../../lib/words/day.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { CheckNumber } from '../../ui/CheckNumber.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { PaperLink } from '../../ui/work/PaperLink.tsx'
import type { Opened } from './opened.ts'

/** One page each, made from a revision. */
const sheets = [
  { asked: 'permit', label: 'Sheet for a permit office' },
  { asked: 'buyer', label: 'Sheet for a later buyer' },
  { asked: 'records', label: 'Page for the land records' },
] as const

type Seal = Pick<SealedPaper, 'sha256' | 'sealedAt'>

/** Every revision, newest first: when it was put up, who signed, and the papers made of it. */
export function RecordRevisions({
  opened: { notebookId, revisions },
  seals,
  standsSigned,
}: {
  opened: Opened
  /** By the id of the revision. */
  seals: ReadonlyMap<string, Seal>
  /** The newest revision is signed by all, and nothing was changed since. */
  standsSigned: boolean
}) {
  const home = `/notebook/${notebookId}`
  return (
    <Panel heading="Revisions">
      {revisions.length === 0 ? <p>Nothing has been put up for signing yet.</p> : null}
      {revisions.map(({ revision, stillToSign, signatures, outdated }) => (
        <Panel key={revision.id} heading={`Revision ${revision.number}`} level={3} tone="quiet">
          <p>
            Put up on {checkedMoment(revision.frozenAt)}.{' '}
            {stillToSign.length === 0
              ? 'Signed by all.'
              : `${signatures.length} signed, ${stillToSign.length} not signed.`}
            {outdated ? ' A newer revision stands in its place.' : ''}
          </p>
          <p className="hash">
            <CheckNumber of="the agreement" value={revision.sha256} />
          </p>
          <SealWords seal={seals.get(revision.id)} signed={stillToSign.length === 0} />
          <div className="button-row">
            <PaperLink
              href={`${home}/summary.pdf?revision=${revision.number}`}
              weight={standsSigned && !outdated ? 'main' : 'plain'}
            >
              {stillToSign.length === 0 ? 'Locked copy (PDF)' : 'Summary (PDF)'}
            </PaperLink>
            <ButtonLink href={`${home}/agreement.json?revision=${revision.number}`} download>
              Agreement (JSON)
            </ButtonLink>
          </div>
          <div className="button-row">
            {sheets.map(({ asked, label }) => (
              <ButtonLink
                key={asked}
                href={`${home}/sheet.pdf?for=${asked}&revision=${revision.number}`}
                download
              >
                {label}
              </ButtonLink>
            ))}
          </div>
        </Panel>
      ))}
    </Panel>
  )
}

function SealWords({ seal, signed }: { seal: Seal | undefined; signed: boolean }) {
  if (!signed) return <p>It is locked once all have signed.</p>
  if (!seal) return <p>The locked copy is made when you first ask for it.</p>
  return (
    <p className="hash">
      Locked {checkedMoment(seal.sealedAt)}. <CheckNumber of="the locked copy" value={seal.sha256} />
    </p>
  )
}
