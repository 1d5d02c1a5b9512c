import { itemKey } from '../../../../lib/core/agreement/agreedItems.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { FoldedPart } from '../../../ui/FoldedPart.tsx'
import { moveNotebookItem } from '../actions.ts'
import type { Opened } from '../opened.ts'
import { standingOf } from '../standingOf.ts'
import { itemLists } from './ItemLists.tsx'

/** Moves items within their lists; folded away, since it is rarely wanted. Nothing where no list has two. */
export function AnotherOrder({ opened }: { opened: Opened }) {
  const { notebook, notebookId } = opened
  const lists = itemLists.filter(({ list }) => notebook[list].length > 1)
  if (lists.length === 0) return null
  const move = (id: string, title: string, way: 'up' | 'down') => (
    <PressForm
      action={moveNotebookItem.bind(null, notebookId)}
      label={way === 'up' ? 'Move up' : 'Move down'}
      labelFor={title}
    >
      <input type="hidden" name="id" value={id} />
      <input type="hidden" name="way" value={way} />
    </PressForm>
  )
  return (
    <FoldedPart summary="Put in another order">
      {lists.map(({ list, heading }) => (
        <div key={list}>
          <h3>{heading}</h3>
          <ol className="order-rows">
            {notebook[list].map(({ id }, index, all) => {
              const title = itemTitle(standingOf(opened, itemKey(id)).item)
              return (
                <li key={id} className="order-row">
                  <span>{title}</span>
                  <span className="item-row-moves">
                    {index === 0 ? null : move(id, title, 'up')}
                    {index === all.length - 1 ? null : move(id, title, 'down')}
                  </span>
                </li>
              )
            })}
          </ol>
        </div>
      ))}
    </FoldedPart>
  )
}
