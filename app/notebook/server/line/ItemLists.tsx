import Link from 'next/link'
import { itemKey } from '../../../../lib/core/agreement/agreedItems.ts'
import type { CommonCost, Gate, ItemKind, Section } from '../../../../lib/core/agreement/notebook.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { kindWords } from '../../../../lib/words/labels.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { Panel } from '../../../ui/Panel.tsx'
import { StandingStatus } from '../MarkBox.tsx'
import type { Opened } from '../opened.ts'
import { standingOf } from '../standingOf.ts'
import type { SinceSigned } from '../statusOf.ts'
import { ItemRow } from './ItemRow.tsx'

/** The three lists of a notebook, in the order of the file. */
export const itemLists = [
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

/** Sections, gates and common costs, one compact row each: how it stands, where it lies, what it costs. */
export function ItemLists({ opened, since }: { opened: Opened; since: SinceSigned | undefined }) {
  const { notebook, notebookId, shared } = opened
  const home = `/notebook/${notebookId}`
  return itemLists.map(({ kind, list, heading, none }) => (
    <Panel
      key={kind}
      heading={heading}
      id={list}
      aside={
        <Link className="add-link" href={`${home}/add/${kind}`} prefetch={false}>
          Add a {kindWords[kind].toLowerCase()}
        </Link>
      }
    >
      {notebook[list].length === 0 ? <p>{none}</p> : null}
      <ol className="item-rows">
        {notebook[list].map((item) => {
          const shares = shared.items.find((one) => one.id === item.id)
          const standing = standingOf(opened, itemKey(item.id))
          return (
            <ItemRow
              key={item.id}
              href={`${home}/item/${encodeURIComponent(item.id)}`}
              title={itemTitle(standing.item)}
              about={aboutItem(item)}
              status={<StandingStatus standing={standing} opened={opened} since={since} />}
              figure={shares ? moneyWords(shares.total, notebook.currency) : 'can’t be shared yet'}
            />
          )
        })}
      </ol>
    </Panel>
  ))
}

/** Where an item lies along the line, as it was typed. */
function aboutItem(item: Section | Gate | CommonCost): string {
  if ('from' in item)
    return item.from || item.to ? `From ${item.from || '?'} to ${item.to || '?'}` : 'No stations yet'
  if ('at' in item)
    return item.at ? `At ${item.at}${item.opening ? `, ${item.opening} wide` : ''}` : 'No station yet'
  return ''
}
