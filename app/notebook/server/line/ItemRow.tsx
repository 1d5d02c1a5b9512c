import Link from 'next/link'
import type { ReactNode } from 'react'

/** One row of a list on The line: leads to its page. */
export function ItemRow({
  href,
  title,
  about,
  status,
  figure = '',
}: {
  href: string
  title: string
  about: string
  status: ReactNode
  figure?: string
}) {
  return (
    <li className="item-row">
      <div className="item-row-text">
        <Link href={href} prefetch={false}>
          {title}
        </Link>
        {about === '' ? null : <span className="item-row-about">{about}</span>}
        <span className="item-row-status">{status}</span>
      </div>
      {figure === '' ? null : <span className="figure">{figure}</span>}
    </li>
  )
}
