import Link from 'next/link'
import type { ReactNode } from 'react'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { moveNotebookItem } from './actions.ts'

/** One section, gate or common cost in a list: opens it, and moves it within its list. */
export function ItemRow({
  notebookId,
  id,
  title,
  about,
  status,
  total,
  first,
  last,
}: {
  notebookId: string
  id: string
  title: string
  about: string
  status: ReactNode
  total: string
  first: boolean
  last: boolean
}) {
  const move = moveNotebookItem.bind(null, notebookId)
  return (
    <li className="item-row">
      <div className="item-row-text">
        <Link href={`/notebook/${notebookId}/item/${encodeURIComponent(id)}`} prefetch={false}>
          {title}
        </Link>
        {about === '' ? null : <span className="item-row-about">{about}</span>}
        {status}
      </div>
      <span className="figure">{total}</span>
      <div className="item-row-moves">
        {first ? null : (
          <PressForm action={move} label="Move up" labelFor={title}>
            <input type="hidden" name="id" value={id} />
            <input type="hidden" name="way" value="up" />
          </PressForm>
        )}
        {last ? null : (
          <PressForm action={move} label="Move down" labelFor={title}>
            <input type="hidden" name="id" value={id} />
            <input type="hidden" name="way" value="down" />
          </PressForm>
        )}
      </div>
    </li>
  )
}
