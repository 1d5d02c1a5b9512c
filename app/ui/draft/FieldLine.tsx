import type { ReactNode } from 'react'

/** Fields that belong together side by side; below each other where the screen is narrow or the text large. */
export function FieldLine({
  short = false,
  children,
}: {
  /** Figures of a few digits: two of them stand side by side on a phone, too. */
  short?: boolean | undefined
  children: ReactNode
}) {
  return <div className={short ? 'field-line field-line-short' : 'field-line'}>{children}</div>
}
