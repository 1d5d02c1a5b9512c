import type { ReactNode } from 'react'

/** Fields that belong together side by side; below each other where the screen is narrow or the text large. */
export function FieldLine({ children }: { children: ReactNode }) {
  return <div className="field-line">{children}</div>
}
