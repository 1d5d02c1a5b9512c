import { placedLine } from '../../../lib/core/boundary/placedLine.ts'
import { hasLink } from '../../../lib/store/entryKeys.ts'
import { lineLead } from '../../../lib/words/firstStepsText.ts'
import { OpenMatters } from '../../ui/OpenMatters.tsx'
import { AccountNotice } from '../server/account/AccountNotice.tsx'
import { ChangedSince } from '../server/ChangedSince.tsx'
import { FirstAnswerPart } from '../server/FirstAnswerPart.tsx'
import { AnotherOrder } from '../server/line/AnotherOrder.tsx'
import { FirstSplitPart } from '../server/line/FirstSplitPart.tsx'
import { FirstSteps } from '../server/line/FirstSteps.tsx'
import { ItemLists } from '../server/line/ItemLists.tsx'
import { LineAndHouseholds } from '../server/line/LineAndHouseholds.tsx'
import { LineInPlace } from '../server/line/LineInPlace.tsx'
import { nothingLaidOut } from '../server/line/nothingLaidOut.ts'
import { WholeBeside } from '../server/line/WholeBeside.tsx'
import { mattersOn } from '../server/mattersOn.ts'
import { NeedsPanel } from '../server/NeedsPanel.tsx'
import { NotebookShell } from '../server/NotebookShell.tsx'
import { needsOf } from '../server/needsOf.ts'
import { openNotebook } from '../server/opened.ts'
import { openMatters } from '../server/openMatters.ts'
import { RemovedItems } from '../server/RemovedItems.tsx'
import { sinceSigned } from '../server/statusOf.ts'

export const metadata = { title: 'The line' }

export default async function TheLinePage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook } = opened
  const home = `/notebook/${notebookId}`
  const since = sinceSigned(opened)
  const bothIn = await hasLink(notebookId, 'b')
  const nothingToDraw = placedLine(notebook).notes.some(({ kind }) => kind === 'nothing-to-draw')
  return (
    <NotebookShell
      opened={opened}
      page=""
      openBeside
      title="The line"
      lead={lineLead(notebook.line, nothingLaidOut(opened))}
    >
      {await RemovedItems({ opened })}
      <FirstAnswerPart opened={opened} />
      <AccountNotice opened={opened} page={`${home}/final-account`} />
      {nothingToDraw ? (
        <FirstSteps opened={opened} bothIn={bothIn} />
      ) : (
        <>
          <LineInPlace opened={opened} since={since} />
          <FirstSplitPart opened={opened} />
        </>
      )}
      <div className="line-home">
        <div className="line-beside">
          <WholeBeside opened={opened} />
          <OpenMatters items={mattersOn(openMatters(opened), notebookId, '')} />
          {await ChangedSince({ opened })}
          <NeedsPanel opened={opened} needs={await needsOf(notebookId, opened.household)} />
        </div>
        <div className="line-lists">
          <ItemLists opened={opened} since={since} />
          <AnotherOrder opened={opened} />
          <LineAndHouseholds opened={opened} since={since} bothIn={bothIn} />
        </div>
      </div>
    </NotebookShell>
  )
}
