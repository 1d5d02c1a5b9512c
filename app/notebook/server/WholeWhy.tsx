import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { wholeSteps } from '../../../lib/words/shareSteps.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import type { Opened } from './opened.ts'
import { StepsView } from './StepsView.tsx'
import { standingOf } from './standingOf.ts'

/** The steps from the items' figures to those of the whole fence; each item's own steps are on its page. */
export function WholeWhy({ opened }: { opened: Opened }) {
  const { statement, notebook } = opened
  if (!statement.ok) return null
  const titles = statement.value.items.map((item) => itemTitle(standingOf(opened, itemKey(item.id)).item))
  return <StepsView groups={wholeSteps(statement.value, titles, shareNames(notebook))} />
}
