import { type ReactNode, useId } from 'react'

/** A framed part of a page with a heading of its own. `aside` stands beside the heading: a status, a link, a total. */
export function Panel({
  heading,
  aside,
  level = 2,
  id,
  tone = 'plain',
  children,
}: {
  heading: ReactNode
  aside?: ReactNode
  level?: 2 | 3 | 4 | undefined
  /** So that other pages can link to this part. */
  id?: string | undefined
  /** `quiet`: no ground of its own, for a panel inside a panel. */
  tone?: 'plain' | 'quiet' | undefined
  children?: ReactNode
}) {
  const headingId = useId()
  const Heading = `h${level}` as const
  return (
    <section className={`panel panel-${tone}`} id={id} aria-labelledby={headingId}>
      <div className="panel-head">
        <Heading id={headingId} className="panel-heading">
          {heading}
        </Heading>
        {aside === undefined ? null : <div className="panel-aside">{aside}</div>}
      </div>
      <div className="panel-body">{children}</div>
    </section>
  )
}
