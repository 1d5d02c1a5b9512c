import { itemKey } from '../../../../lib/core/agreement/agreedItems.ts'
import type { TakeOff } from '../../../../lib/core/takeoff/takeOff.ts'
import { gateRows, sectionRows } from '../../../../lib/words/lookText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { itemFaultTexts } from '../../../../lib/words/shareFaultText.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { itemTitle } from '../../../../lib/words/summary/names.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { DefinitionList } from '../../../ui/DefinitionList.tsx'
import { Look } from '../../../ui/look/LookAround.tsx'
import { ShareBar } from '../../../ui/ShareBar.tsx'
import { MarkBox } from '../MarkBox.tsx'
import type { Opened } from '../opened.ts'
import { standingOf } from '../standingOf.ts'
import type { SinceSigned } from '../statusOf.ts'
import { lookId, postsOneByOne } from './lookAddress.ts'
import { PostsOfSection } from './PostsOfSection.tsx'

/** A section or gate at a glance: what it is, what it costs whom, how it stands between the two, and the mark to set. */
export function ItemLook({
  opened,
  since,
  kind,
  index,
  found,
}: {
  opened: Opened
  since: SinceSigned | undefined
  kind: 'section' | 'gate'
  index: number
  found: TakeOff | undefined
}) {
  const { notebook, notebookId, shared } = opened
  const item = notebook[kind === 'section' ? 'sections' : 'gates'][index]
  if (item === undefined) return null
  const id = lookId(kind, index)
  const home = `/notebook/${notebookId}`
  const standing = standingOf(opened, itemKey(item.id))
  const shares = shared.items.find((one) => one.id === item.id)
  const faults = shared.faults.filter(({ path }) => path.startsWith(`${standing.item.path}.`))
  const names = shareNames(notebook)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const isSection = kind === 'section'
  return (
    <Look id={id} title={itemTitle(kind, index, item.name)}>
      <div className="look-parts">
        <DefinitionList items={isSection ? sectionRows(notebook, index, found) : gateRows(notebook, index)} />
        <div className="look-aside">
          {shares ? (
            <ShareBar
              a={Number(shares.a)}
              b={Number(shares.b)}
              aText={money(shares.a)}
              bText={money(shares.b)}
              nameA={names.a}
              nameB={names.b}
              label={`Asked for, of ${money(shares.total)} in all`}
            />
          ) : null}
          {itemFaultTexts(names, faults).map((text) => (
            <p key={text}>This can’t be shared yet: {text}</p>
          ))}
          <MarkBox opened={opened} standing={standing} since={since} back={`${home}#${id}`} />
        </div>
      </div>
      {isSection && found && !postsOneByOne(found) ? (
        <PostsOfSection notebook={notebook} found={found} index={index} />
      ) : null}
      <div className="button-row">
        <ButtonLink href={`${home}/item/${encodeURIComponent(item.id)}`}>
          Open it<span className="only-read-out">: {itemTitle(kind, index, item.name)}</span>
        </ButtonLink>
      </div>
    </Look>
  )
}
