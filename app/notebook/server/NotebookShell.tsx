import type { ReactNode } from 'react'
import { otherHousehold } from '../../../lib/core/people/household.ts'
import { householdName, householdNames, notebookTitle } from '../../../lib/words/labels.ts'
import { whatThisIs } from '../../../lib/words/standingTexts.ts'
import { householdStart } from '../../../lib/words/summary/names.ts'
import { KeptDrafts } from '../../ui/draft/KeptDrafts.tsx'
import { StayCurrent } from '../../ui/live/StayCurrent.tsx'
import { NotebookFrame } from '../../ui/NotebookFrame.tsx'
import { OpenMatters } from '../../ui/OpenMatters.tsx'
import { Page, type PageHead } from '../../ui/Page.tsx'
import { KnownNames } from '../forms/KnownNames.tsx'
import { mattersOn } from './mattersOn.ts'
import type { Opened } from './opened.ts'
import { openMatters } from './openMatters.ts'
import { entryOf, notebookPages } from './pages.ts'
import { UnitsSwitch } from './UnitsSwitch.tsx'

/**
 * One page of a notebook in its frame: its heading, what is still open, its body. `page` is what follows the notebook in its
 * address, '' for The line.
 */
export function NotebookShell({
  opened,
  page,
  openBeside = false,
  children,
  ...head
}: PageHead & {
  opened: Opened
  page: string
  /** What is still open stands in the page itself. */
  openBeside?: boolean
  children: ReactNode
}) {
  const { notebook, notebookId, household } = opened
  const home = `/notebook/${notebookId}`
  return (
    <NotebookFrame
      title={notebookTitle(notebook)}
      notebookId={notebookId}
      nav={notebookPages(notebookId)}
      current={entryOf(notebookId, page)}
      household={household}
      householdName={householdName(notebook, household)}
      footer={whatThisIs}
    >
      <StayCurrent
        home={home}
        pulse={opened.pulse}
        household={household}
        otherName={householdStart(notebook, otherHousehold(household))}
      />
      <KeptDrafts owner={`${notebookId} ${household}`}>
        <KnownNames names={householdNames(notebook)}>
          <Page
            {...head}
            notice={
              openBeside ? undefined : (
                <div className="page-notice">
                  <OpenMatters items={mattersOn(openMatters(opened), notebookId, page)} />
                </div>
              )
            }
          >
            {children}
          </Page>
        </KnownNames>
      </KeptDrafts>
      <UnitsSwitch opened={opened} />
    </NotebookFrame>
  )
}
