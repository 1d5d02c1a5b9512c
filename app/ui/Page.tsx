import Link from 'next/link'
import type { ReactNode } from 'react'
import { joined } from './joined.ts'

/** One page's heading and body. It stands inside the main landmark of `NotebookFrame` or `BareFrame`. */
export function Page({
  title,
  lead,
  back,
  aside,
  children,
}: {
  title: string
  lead?: ReactNode
  back?: { href: string; label: string } | undefined
  /** Stands beside the title: a status, a button. */
  aside?: ReactNode
  children?: ReactNode
}) {
  return (
    <div className="page">
      <header className="page-head">
        {back === undefined ? null : (
          <Link className="back-link" href={back.href} prefetch={false}>
            <span aria-hidden="true">← </span>
            {back.label}
          </Link>
        )}
        <div className="page-title-row">
          <h1>{joined(title)}</h1>
          {aside === undefined ? null : <div className="page-aside">{aside}</div>}
        </div>
        {lead === undefined ? null : <p className="lead">{joined(lead)}</p>}
      </header>
      <div className="page-body">{children}</div>
    </div>
  )
}
