import { jobInOneSentence, whatThisIs } from '../lib/words/standingTexts.ts'
import { largestImport } from './notebook/server/readImport.ts'
import { FollowLink } from './open/FollowLink.tsx'
import { openExample, startFromFile } from './start/actions.ts'
import { BareFrame } from './ui/BareFrame.tsx'
import { ButtonLink } from './ui/ButtonLink.tsx'
import { PressForm } from './ui/draft/PressForm.tsx'
import { LineBand } from './ui/LineBand.tsx'
import { Page } from './ui/Page.tsx'
import { Panel } from './ui/Panel.tsx'
import { ImportForm } from './ui/work/ImportForm.tsx'

export default function FrontPage() {
  return (
    <BareFrame footer={whatThisIs}>
      <Page title="One fence, two households, one notebook" lead={jobInOneSentence}>
        <LineBand />
        <div className="ways-in">
          <Panel heading="Start">
            <p>
              Write down the line, the fence and the costs together, agree item by item, and sign when you are
              both ready.
            </p>
            <p>
              <ButtonLink href="/start" weight="main">
                Start a notebook
              </ButtonLink>
            </p>
          </Panel>
          <Panel heading="Look at an example">
            <p>
              Two invented households replace a worn fence by steel pipe and mesh. They have signed once,
              changed a gate since, and don’t agree about one slope. You get a copy of your own; change what
              you like.
            </p>
            <div className="button-row">
              <PressForm action={openExample} label="Open the example as the first household">
                <input type="hidden" name="household" value="a" />
              </PressForm>
              <PressForm action={openExample} label="Open the example as the second household">
                <input type="hidden" name="household" value="b" />
              </PressForm>
            </div>
          </Panel>
        </div>
        <div className="ways-in">
          <FollowLink />
          <Panel heading="You were given a locked copy">
            <p>Look whether it is still what the two households signed. No link is needed.</p>
            <p>
              <ButtonLink href="/check">Check a record</ButtonLink>
            </p>
          </Panel>
          <Panel heading="You have a notebook file">
            <p>Start a new notebook from it. Marks, signatures and history do not come with a file.</p>
            <ImportForm
              action={startFromFile}
              label="Start from this file"
              fileLabel="Notebook file (its name ends in .json; at most 2 MB)"
              largest={largestImport}
            />
          </Panel>
        </div>
      </Page>
    </BareFrame>
  )
}
