import Link from 'next/link'
import type { ReactNode } from 'react'

/** What stands at the head of a page. */
export type PageHead = {
  readonly title: string
  readonly lead?: ReactNode
  readonly back?: { readonly href: string; readonly label: string } | undefined
  /** Stands beside the title: a status, a button. */
  readonly aside?: ReactNode
}

/** One page's heading and body. It stands inside the main landmark of `NotebookFrame` or `BareFrame`. */
export function Page({
  title,
  lead,
  back,
  aside,
  notice,
  children,
}: PageHead & {
  /** Between the heading and the body: what is still open. */
  notice?: ReactNode
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
          <h1>{title}</h1>
          {aside === undefined ? null : <div className="page-aside">{aside}</div>}
        </div>
        {lead === undefined ? null : <p className="lead">{lead}</p>}
      </header>
      {notice}
      <div className="page-body">{children}</div>
    </div>
  )
}
