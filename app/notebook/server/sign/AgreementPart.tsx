import { agreementOnPaper, agreementText } from '../../../../lib/words/signingWords.ts'
import type { Block } from '../../../../lib/words/summary/block.ts'
import { summaryContent } from '../../../../lib/words/summary/summaryContent.ts'
import type { SummaryInput } from '../../../../lib/words/summary/summaryInput.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { PaperLink } from '../../../ui/work/PaperLink.tsx'
import { SummaryView } from '../SummaryView.tsx'
import { chaptersOf } from './chaptersOf.ts'

/** The whole text of the agreement, each chapter folded under its heading; all of them unfolded where `whole` is asked for. */
export function AgreementPart({
  home,
  summary,
  revision,
  whole,
}: {
  home: string
  summary: SummaryInput
  /** The number of the revision; undefined for the draft. */
  revision: number | undefined
  whole: boolean
}) {
  const words = agreementText
  const { opening, chapters } = chaptersOf(summaryContent(summary))
  const view = (blocks: readonly Block[]) => <SummaryView blocks={blocks} notebook={summary.notebook} />
  return (
    <Panel heading={words.heading(revision)} id="agreement">
      <p className="on-paper-only">{agreementOnPaper(revision)}</p>
      <div className="agreement-text on-screen-only">
        <p>{words.lead}</p>
        <div className="button-row">
          <ButtonLink href={`${home}/paper${revision === undefined ? '' : `?revision=${revision}`}`}>
            {words.asPrinted}
          </ButtonLink>
          {revision === undefined ? (
            <PaperLink href={`${home}/summary.pdf`}>Draft summary (PDF)</PaperLink>
          ) : null}
          <ButtonLink href={`${home}/sign${whole ? '' : '?whole=yes'}#agreement`} weight="quiet">
            {whole ? words.fold : words.unfold}
          </ButtonLink>
        </div>
        {/* Its title and its standing are said at the head of the page. */}
        {view(opening.filter(({ kind }) => kind !== 'title'))}
        <div className="chapters">
          {chapters.map(({ id, title, blocks }) => (
            // Asked for anew, they stand as they are asked for, whatever was opened and closed in between.
            <details key={`${id} ${whole}`} className="chapter fold-line" open={whole}>
              <summary>
                <h3 id={id}>{title}</h3>
              </summary>
              {view(blocks)}
            </details>
          ))}
        </div>
      </div>
    </Panel>
  )
}
