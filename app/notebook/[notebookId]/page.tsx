import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { CommonCost, Gate, ItemKind, Section } from '../../../lib/core/agreement/notebook.ts'
import { hasLink } from '../../../lib/store/entryKeys.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { evidenceWords, householdName, kindWords } from '../../../lib/words/labels.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { DefinitionList } from '../../ui/DefinitionList.tsx'
import { Page } from '../../ui/Page.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { closingAccount } from '../server/account/accountNow.ts'
import { ClosedAccount } from '../server/account/ClosedAccount.tsx'
import { ChangedSince } from '../server/ChangedSince.tsx'
import { FirstAnswerPart } from '../server/FirstAnswerPart.tsx'
import { ItemRow } from '../server/ItemRow.tsx'
import { LineDrawing } from '../server/LineDrawing.tsx'
import { StandingStatus } from '../server/MarkBox.tsx'
import { NeedsPanel } from '../server/NeedsPanel.tsx'
import { NotebookShell } from '../server/NotebookShell.tsx'
import { needsOf } from '../server/needsOf.ts'
import { openNotebook } from '../server/opened.ts'
import { standingOf } from '../server/standingOf.ts'
import { WholeShare } from '../server/WholeShare.tsx'

export const metadata = { title: 'The line' }

const lists = [
  {
    kind: 'section',
    list: 'sections',
    heading: 'Sections',
    none: 'No section yet. A section is a stretch of fence that is built in one way.',
  },
  { kind: 'gate', list: 'gates', heading: 'Gates', none: 'No gate yet.' },
  {
    kind: 'common',
    list: 'common',
    heading: 'Common costs',
    none: 'No common cost yet. It is what serves the whole fence, such as a hired auger.',
  },
] as const satisfies readonly { kind: ItemKind; list: string; heading: string; none: string }[]

export default async function TheLinePage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook, shared } = opened
  const home = `/notebook/${notebookId}`
  const { line } = notebook
  const bothIn = await hasLink(notebookId, 'b')
  return (
    <NotebookShell opened={opened} page="">
      <Page title="The line" lead={lineWords(line.start, line.end)}>
        <FirstAnswerPart opened={opened} />
        <ClosedAccount number={await closingAccount(opened)} page={`${home}/final-account`} />
        <LineDrawing notebook={notebook} home={home} />
        {await ChangedSince({ opened })}
        <WholeShare opened={opened} />
        <NeedsPanel opened={opened} needs={await needsOf(notebookId, opened.household)} />
        <div className="panel-pair">
          <Panel
            heading="Ends and stations"
            aside={<StandingStatus standing={standingOf(opened, 'line')} opened={opened} />}
          >
            <DefinitionList
              items={[
                { term: 'Start', text: line.start || 'not said yet' },
                { term: 'End', text: line.end || 'not said yet' },
                { term: 'Rests on', text: line.evidence ? evidenceWords[line.evidence] : 'not said yet' },
                { term: 'Stations', text: String(line.stations.length) },
              ]}
            />
            <ButtonLink href={`${home}/line`}>Open ends and stations</ButtonLink>
          </Panel>
          <Panel
            heading="Households and parties"
            aside={<StandingStatus standing={standingOf(opened, 'parties')} opened={opened} />}
          >
            <DefinitionList
              items={(['a', 'b'] as const).map((household) => ({
                term: householdName(notebook, household),
                text:
                  notebook.households[household].parties.map((party) => party.name || 'unnamed').join(', ') ||
                  'no party yet',
              }))}
            />
            <div className="button-row">
              <ButtonLink href={`${home}/parties`}>Open households</ButtonLink>
              <ButtonLink href={`${home}/links`} weight={bothIn ? 'plain' : 'main'}>
                {bothIn ? 'Links' : 'Invite the second household'}
              </ButtonLink>
              {bothIn ? null : <ButtonLink href={`${home}/letter`}>The first letter</ButtonLink>}
            </div>
          </Panel>
        </div>
        {lists.map(({ kind, list, heading, none }) => (
          <Panel key={kind} heading={heading} id={list}>
            {notebook[list].length === 0 ? <p>{none}</p> : null}
            <ol className="item-rows">
              {notebook[list].map((item, index) => {
                const shares = shared.items.find((one) => one.id === item.id)
                const standing = standingOf(opened, itemKey(item.id))
                return (
                  <ItemRow
                    key={item.id}
                    notebookId={notebookId}
                    id={item.id}
                    title={itemTitle(standing.item)}
                    about={aboutItem(item)}
                    status={<StandingStatus standing={standing} opened={opened} />}
                    total={shares ? moneyWords(shares.total, notebook.currency) : 'can’t be shared yet'}
                    first={index === 0}
                    last={index === notebook[list].length - 1}
                  />
                )
              })}
            </ol>
            <ButtonLink href={`${home}/add/${kind}`}>Add a {kindWords[kind].toLowerCase()}</ButtonLink>
          </Panel>
        ))}
      </Page>
    </NotebookShell>
  )
}

function lineWords(start: string, end: string): string {
  if (start === '' && end === '') return 'Say where the line runs, then lay out sections and gates along it.'
  return `From ${start || 'its start'} to ${end || 'its end'}.`
}

/** Where an item lies along the line, as it was typed. */
function aboutItem(item: Section | Gate | CommonCost): string {
  if ('from' in item)
    return item.from || item.to ? `From ${item.from || '?'} to ${item.to || '?'}` : 'No stations yet'
  if ('at' in item)
    return item.at ? `At ${item.at}${item.opening ? `, ${item.opening} wide` : ''}` : 'No station yet'
  return ''
}
