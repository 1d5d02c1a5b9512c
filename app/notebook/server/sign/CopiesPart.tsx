import type { SealKeyFault } from '../../../../lib/core/agreement/sealKeyFault.ts'
import { sealKeyText } from '../../../../lib/words/sealKeyText.ts'
import { copiesText } from '../../../../lib/words/signingWords.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Caution } from '../../../ui/Caution.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { PaperLink } from '../../../ui/work/PaperLink.tsx'
import type { FrozenRevision } from '../standingRevision.ts'

/** The copies of a revision to take home. */
export function CopiesPart({
  home,
  frozen: { revision, stillToSign },
  main,
  trouble,
}: {
  home: string
  frozen: FrozenRevision
  /** Nothing on the page is more pressing. */
  main: boolean
  /** Why the locked copy can't be made yet, where it waits for that. */
  trouble: SealKeyFault | undefined
}) {
  const locked = stillToSign.length === 0
  const asked = `?revision=${revision.number}`
  return (
    <Panel heading={copiesText.heading} id="copies">
      <p>{locked ? copiesText.locked : copiesText.open}</p>
      {trouble ? (
        <Caution title="The locked copy can’t be made yet">
          <p>All signatures are kept. {sealKeyText(trouble)}</p>
        </Caution>
      ) : null}
      <div className="button-row">
        <PaperLink href={`${home}/summary.pdf${asked}`} weight={main ? 'main' : 'plain'}>
          {copiesText.paper(revision.number, locked)}
        </PaperLink>
        <ButtonLink href={`${home}/agreement.json${asked}`} download>
          Agreement text (JSON)
        </ButtonLink>
        <ButtonLink href={`${home}/notebook.json`} download>
          Notebook file (JSON)
        </ButtonLink>
        <ButtonLink href={`${home}/ink.pdf${asked}`} download>
          Page for signing in ink (PDF)
        </ButtonLink>
      </div>
    </Panel>
  )
}
