import type { ReactNode } from 'react'

export type Definition = { term: ReactNode; text: ReactNode; figure?: boolean | undefined }

/** Names and what they stand for, one pair a line: label beside value on a wide screen, above it on a phone. */
export function DefinitionList({ items }: { items: readonly Definition[] }) {
  return (
    <dl className="definitions">
      {items.map((item, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a term may be a node and so cannot be a key
        <div key={at} className="definition">
          <dt>{item.term}</dt>
          <dd className={item.figure ? 'figure' : undefined}>{item.text}</dd>
        </div>
      ))}
    </dl>
  )
}
