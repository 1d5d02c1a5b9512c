import { whatThisIs } from '../../../../lib/words/standingTexts.ts'
import { HistoryView } from '../../../notebook/server/HistoryView.tsx'
import { type AddressFields, historyAsked } from '../../../notebook/server/historyAsked.ts'
import { historyShown } from '../../../notebook/server/historyShown.ts'
import { BareFrame } from '../../../ui/BareFrame.tsx'
import { Page } from '../../../ui/Page.tsx'
import { openForReader } from '../../server/opening.ts'

export const metadata = {
  title: 'For reading',
  referrer: 'no-referrer',
  robots: { index: false, follow: false },
}

/** The whole history with all that was said, for a link to everything. */
export default async function ReadHistoryPage({
  params,
  searchParams,
}: {
  params: Promise<{ token: string }>
  searchParams?: Promise<AddressFields>
}) {
  const { token } = await params
  const { link, document, notebook, revisions } = await openForReader(token, 'history')
  const asked = historyAsked((await searchParams) ?? {})
  const shown = await historyShown(link.notebookId, document, revisions, asked)
  const here = `/read/${token}`
  return (
    <BareFrame footer={whatThisIs}>
      <Page
        title="History"
        lead="All that happened in this notebook, with what the two households said to each other."
        back={{ href: here, label: 'The agreement' }}
      >
        <HistoryView
          shown={shown}
          notebook={notebook}
          here={`${here}/history`}
          file={`${here}/history.json`}
        />
      </Page>
    </BareFrame>
  )
}
