import { households } from '../../../../lib/core/people/household.ts'
import { evidenceWords, householdName } from '../../../../lib/words/labels.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { StandingStatus } from '../MarkBox.tsx'
import type { Opened } from '../opened.ts'
import { standingOf } from '../standingOf.ts'
import type { SinceSigned } from '../statusOf.ts'
import { ItemRow } from './ItemRow.tsx'
import { nothingLaidOut } from './nothingLaidOut.ts'

/** The line itself and the households at it, a row each, and the way to let the second one in. */
export function LineAndHouseholds({
  opened,
  since,
  bothIn,
}: {
  opened: Opened
  since: SinceSigned | undefined
  bothIn: boolean
}) {
  const { notebook, notebookId } = opened
  const home = `/notebook/${notebookId}`
  const { evidence, stations } = notebook.line
  const parties = households.map((household) => {
    const { length } = notebook.households[household].parties
    const count = length === 0 ? 'no party yet' : length === 1 ? '1 party' : `${length} parties`
    return `${householdName(notebook, household)}: ${count}`
  })
  const status = (key: string) => (
    <StandingStatus standing={standingOf(opened, key)} opened={opened} since={since} />
  )
  return (
    <Panel heading="Line and households">
      <ul className="item-rows">
        <ItemRow
          href={`${home}/line`}
          title="Open ends and stations"
          about={`${evidence ? `Rests on ${evidenceWords[evidence]}` : 'What it rests on is not said yet'}; ${stations.length === 1 ? '1 station' : `${stations.length} stations`}`}
          status={status('line')}
        />
        <ItemRow
          href={`${home}/parties`}
          title="Open households"
          about={parties.join('; ')}
          status={status('parties')}
        />
      </ul>
      <div className="button-row">
        <ButtonLink href={`${home}/links`} weight={bothIn || nothingLaidOut(opened) ? 'plain' : 'main'}>
          {bothIn ? 'Links' : 'Invite the second household'}
        </ButtonLink>
        {bothIn ? null : <ButtonLink href={`${home}/letter`}>The first letter</ButtonLink>}
      </div>
    </Panel>
  )
}
