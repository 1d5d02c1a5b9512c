import type { ItemShares } from '../../../lib/core/shares/itemShares.ts'
import { placesOf } from '../../../lib/core/shares/itemShares.ts'
import { sharedUses } from '../../../lib/core/shares/passages.ts'
import { askedBeforeItem } from '../../../lib/core/shares/sideBySide.ts'
import { itemSteps } from '../../../lib/words/shareSteps.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import type { Opened } from './opened.ts'
import { StepsView } from './StepsView.tsx'

/** The steps to an item's figures as it is shared now, or as one way would share it. */
export function ItemWhy({ opened, shares }: { opened: Opened; shares: ItemShares }) {
  const { notebook } = opened
  const item = placesOf(notebook).find((place) => place.item.id === shares.id)?.item
  if (item === undefined) return null
  const names = shareNames(notebook, sharedUses(item))
  return <StepsView groups={itemSteps(item, shares, names, askedBeforeItem(notebook, shares.id))} />
}
