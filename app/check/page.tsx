import { readLimits } from '../../lib/seal/readLimits.ts'
import { whatThisIs } from '../../lib/words/standingTexts.ts'
import { BareFrame } from '../ui/BareFrame.tsx'
import { Page } from '../ui/Page.tsx'
import { Panel } from '../ui/Panel.tsx'
import { checkThisRecord } from './actions.ts'
import { RecordCheckForm } from './RecordCheckForm.tsx'

export const metadata = { title: 'Check a record' }

export default function CheckPage() {
  return (
    <BareFrame footer={whatThisIs}>
      <Page
        title="Check a record"
        lead="Whether a locked copy is still what was locked. Anyone may check one; the file is looked through here and not kept."
      >
        <Panel heading="The record">
          <RecordCheckForm check={checkThisRecord} largest={readLimits.file} />
        </Panel>
        <Panel heading="Without this page">
          <p>
            A reader of PDFs that checks signatures shows the seal as well. With this program on any machine:{' '}
            <code>npm run -s check-record -- FILE.pdf</code>
          </p>
        </Panel>
      </Page>
    </BareFrame>
  )
}
