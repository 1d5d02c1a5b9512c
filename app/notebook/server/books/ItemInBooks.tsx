import { itemKey } from '../../../../lib/core/agreement/agreedItems.ts'
import type { EntryOnNoLine } from '../../../../lib/core/ledger/onNoLine.ts'
import type { ItemStanding, LineStanding } from '../../../../lib/core/ledger/plannedAgainstActual.ts'
import type { BeyondTolerance } from '../../../../lib/core/ledger/tolerance.ts'
import { againstPlanWords, spentBeyondWords } from '../../../../lib/words/againstPlanText.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { beyondToleranceFigures } from '../../../../lib/words/toleranceText.ts'
import { FoldedPart } from '../../../ui/FoldedPart.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { cameToAnchor, itemAnchor } from '../account/openForAccountPage.ts'
import type { BooksFigures } from '../booksFigures.ts'
import type { Opened } from '../opened.ts'
import { pageOfItem } from '../pages.ts'
import { CameToTable } from './CameTo.tsx'
import { LineInBooks } from './LineInBooks.tsx'
import { MarkItem } from './MarkItem.tsx'
import { OnNoLine } from './OnNoLine.tsx'

/** The lines of an item: those that something was entered or marked for, then the others, folded away. */
export function ItemInBooks({
  opened,
  figures,
  item,
  beyond,
  loose,
}: {
  opened: Opened
  figures: BooksFigures
  item: ItemStanding
  /** Where it came dearer than the agreed tolerance allows. */
  beyond: BeyondTolerance | undefined
  /** Entries for it that are on no line of it. */
  loose: readonly EntryOnNoLine[]
}) {
  const { currency } = figures.notebook
  const title = itemTitle({ kind: item.kind, name: item.name, key: `item:${item.id}` })
  const touched = item.lines.filter(isTouched)
  const spent = spentBeyondWords([item], currency)
  const others = item.lines.filter((line) => !isTouched(line))
  return (
    <Panel
      heading={title}
      id={itemAnchor(item.id)}
      aside={`${moneyWords(item.counts, currency)}: ${againstPlanWords([item], currency)}`}
    >
      {beyond === undefined ? null : (
        <p>
          {beyondToleranceFigures(beyond, currency)}{' '}
          <a href={`${pageOfItem(opened.notebookId, itemKey(item.id), item.kind)}#${cameToAnchor}`}>
            Look at it again
          </a>
        </p>
      )}
      {item.lines.length === 0 ? <p>No line is planned here.</p> : null}
      {touched.length === 0 ? null : (
        <ul className="item-rows">
          {touched.map((line) => (
            <LineInBooks key={line.line.path} opened={opened} figures={figures} standing={line} />
          ))}
        </ul>
      )}
      {spent === undefined ? null : <p>{spent}.</p>}
      <OnNoLine opened={opened} loose={loose} />
      <MarkItem opened={opened} figures={figures} item={item} />
      {others.length === 0 ? null : (
        <FoldedPart
          summary={
            others.length === 1
              ? 'One line with nothing entered yet'
              : `${others.length} lines with nothing entered yet`
          }
        >
          <ul className="item-rows">
            {others.map((line) => (
              <LineInBooks key={line.line.path} opened={opened} figures={figures} standing={line} />
            ))}
          </ul>
        </FoldedPart>
      )}
      {touched.length < 2 ? null : <CameToTable item={item} currency={currency} />}
    </Panel>
  )
}

function isTouched({ entries, bought, marks }: LineStanding): boolean {
  return entries.length > 0 || bought || Object.keys(marks.pending).length > 0
}
