import Link from 'next/link'
import type { ReactNode } from 'react'

/**
 * How much a button weighs: `main` (one on a page), `plain`, `quiet` (no frame), `grave` (takes something away).
 * The same looks as classes for a real button: `button button-main` and so on.
 */
export type ButtonWeight = 'main' | 'plain' | 'quiet' | 'grave'

/** A link that looks like a button: it goes somewhere. What does something is a `<button>`. */
export function ButtonLink({
  href,
  weight = 'plain',
  download,
  children,
}: {
  href: string
  weight?: ButtonWeight | undefined
  /** A file to save: a plain link then, as the router must not handle it. */
  download?: boolean | undefined
  children: ReactNode
}) {
  const look = `button button-${weight}`
  return download === true ? (
    <a className={look} href={href} download>
      {children}
    </a>
  ) : (
    <Link className={look} href={href} prefetch={false}>
      {children}
    </Link>
  )
}
