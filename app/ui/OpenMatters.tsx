import Link from 'next/link'
import { openMattersLabel, openMattersWords } from '../../lib/words/openMattersText.ts'

/** `here`: it is settled on the page that shows it. */
export type OpenMatter = { text: string; href?: string | undefined; here?: boolean | undefined }

/**
 * What is still to be settled: a list where there is room for one, on a phone one line that opens. Nothing is shown where
 * nothing is open.
 */
export function OpenMatters({ items }: { items: readonly OpenMatter[] }) {
  if (items.length === 0) return null
  const here = items.filter((item) => item.here).length
  return (
    <section className="open-matters" aria-label={openMattersLabel}>
      <div className="open-matters-wide">
        <p className="open-matters-label">
          {openMattersLabel} <span className="figure">({items.length})</span>
        </p>
        <MatterList items={items} />
      </div>
      <details className="open-matters-narrow fold-line">
        <summary>{openMattersWords(items.length, here)}</summary>
        <MatterList items={items} />
      </details>
    </section>
  )
}

function MatterList({ items }: { items: readonly OpenMatter[] }) {
  return (
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
  )
}
