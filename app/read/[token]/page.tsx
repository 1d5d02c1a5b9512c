import { readerHolds } from '../../../lib/access/readerAccess.ts'
import { sealsOf } from '../../../lib/store/sealedPapers.ts'
import { notebookTitle } from '../../../lib/words/labels.ts'
import { readerContentWords, shownRevisionWords, untilWords } from '../../../lib/words/readerText.ts'
import { whatThisIs } from '../../../lib/words/standingTexts.ts'
import { SummaryView } from '../../notebook/server/SummaryView.tsx'
import { BareFrame } from '../../ui/BareFrame.tsx'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { DefinitionList } from '../../ui/DefinitionList.tsx'
import { Page } from '../../ui/Page.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { everythingLocked } from '../server/everythingLocked.ts'
import { openForReader } from '../server/opening.ts'
import { summaryForReader } from '../server/summaryForReader.ts'

// The title tells nothing: it stands in the list of what a browser had open.
export const metadata = {
  title: 'For reading',
  referrer: 'no-referrer',
  robots: { index: false, follow: false },
}

const sheets = [
  { thing: 'permit-sheet.pdf', label: 'Sheet for a permit office (PDF)' },
  { thing: 'buyer-sheet.pdf', label: 'Sheet for a later buyer (PDF)' },
  { thing: 'land-records.pdf', label: 'Page for the land records (PDF)' },
] as const

/** What a reader's link opens: what it is and how long it works, then as much of the agreement as it holds. */
export default async function ReadPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params
  const opening = await openForReader(token, 'page')
  const { link, signed } = opening
  const shown = summaryForReader(opening)
  const locked =
    link.content !== 'summary' && signed && (await sealsOf(link.notebookId)).has(signed.revision.id)
  const packed = link.content === 'everything' && (await everythingLocked(opening))
  const here = `/read/${token}`
  return (
    <BareFrame footer={whatThisIs}>
      <Page
        title={shown ? notebookTitle(shown.notebook) : 'A boundary fence'}
        lead="What two households agreed about the fence between them. This link is for reading only."
      >
        <Panel heading="What this link shows">
          <DefinitionList
            items={[
              { term: 'For', text: link.label },
              { term: 'Works through', text: untilWords(link.expiresAt) },
              { term: 'Shows', text: readerContentWords[link.content].toReader },
              { term: 'Version', text: shownRevisionWords(signed?.revision.number, link.content) },
            ]}
          />
          <p className="quiet">
            The households see when this link is opened. Keep it to yourself: whoever has it reads the same.
          </p>
          {shown ? (
            <div className="button-row">
              <ButtonLink href={`${here}/summary.pdf`} weight="main" download>
                Summary (PDF)
              </ButtonLink>
              {locked ? (
                <ButtonLink href={`${here}/locked-copy.pdf`} download>
                  Locked copy (PDF)
                </ButtonLink>
              ) : null}
              {signed
                ? sheets
                    .filter(({ thing }) => readerHolds(link.content, thing))
                    .map(({ thing, label }) => (
                      <ButtonLink key={thing} href={`${here}/${thing}`} download>
                        {label}
                      </ButtonLink>
                    ))
                : null}
              {link.content === 'everything' ? (
                <>
                  {signed ? (
                    <ButtonLink href={`${here}/agreement.json`} download>
                      Agreement file (JSON)
                    </ButtonLink>
                  ) : null}
                  <ButtonLink href={`${here}/notebook.json`} download>
                    Notebook file (JSON)
                  </ButtonLink>
                  {packed ? (
                    <ButtonLink href={`${here}/record-pack.zip`} download>
                      Record pack (zip)
                    </ButtonLink>
                  ) : null}
                  <ButtonLink href={`${here}/history`}>History</ButtonLink>
                </>
              ) : null}
            </div>
          ) : null}
        </Panel>
        {shown ? (
          <Panel heading="The summary">
            <SummaryView blocks={shown.blocks} notebook={shown.notebook} />
          </Panel>
        ) : null}
      </Page>
    </BareFrame>
  )
}
