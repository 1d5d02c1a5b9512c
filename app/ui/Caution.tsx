import type { ReactNode } from 'react'

/** A framed note for cautions of safety and law. It defers to others and never alarms: no red, no live announcement. */
export function Caution({
  title = 'Take care',
  slim = false,
  children,
}: {
  title?: string | undefined
  /** One of many on a page, beside what it is about: no frame, and its title begins the text. */
  slim?: boolean | undefined
  children: ReactNode
}) {
  return (
    <aside className={slim ? 'caution caution-slim' : 'caution'} aria-label={title}>
      <svg className="caution-glyph" viewBox="0 0 24 24" width={24} height={24} aria-hidden="true">
        <path d="M3 21 H21 M7 21 V9 L12 4 L17 9 V21" />
        <path d="M12 10 V15 M12 17.6 V18" />
      </svg>
      <div className="caution-text">
        <p className="caution-title">{title}</p>
        {children}
      </div>
    </aside>
  )
}
