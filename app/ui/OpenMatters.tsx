import Link from 'next/link'
import { useId } from 'react'

export type OpenMatter = { text: string; href?: string | undefined }

/** What is still to be settled, as a strip above a page. Nothing is shown where nothing is open. */
export function OpenMatters({
  items,
  label = 'Still open',
}: {
  items: readonly OpenMatter[]
  label?: string | undefined
}) {
  const labelId = useId()
  if (items.length === 0) return null
  return (
    <section className="open-matters" aria-labelledby={labelId}>
      <p className="open-matters-label" id={labelId}>
        {label} <span className="figure">({items.length})</span>
      </p>
      <ul>
        {items.map((item) => (
          <li key={`${item.href ?? ''} ${item.text}`}>
            {item.href === undefined ? (
              item.text
            ) : (
              <Link href={item.href} prefetch={false}>
                {item.text}
              </Link>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}
