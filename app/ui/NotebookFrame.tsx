import Link from 'next/link'
import type { ReactNode } from 'react'
import type { Household } from '../../lib/core/people/household.ts'
import { HouseholdTag } from './HouseholdTag.tsx'
import { Mark } from './Mark.tsx'
import { SkipLink } from './SkipLink.tsx'

export type NavigationEntry = { href: string; label: string }

/** The entry that is marked: its own page is shown, or one that stands under it. */
type CurrentEntry = { readonly href: string; readonly exact: boolean }

function NavigationLinks({ nav, current }: { nav: readonly NavigationEntry[]; current: CurrentEntry }) {
  const marked = current.exact ? 'page' : 'true'

  return (
    <ul>
      {nav.map((entry) => (
        <li key={entry.href}>
          <Link
            href={entry.href}
            prefetch={false}
            aria-current={entry.href === current.href ? marked : undefined}
          >
            {entry.label}
          </Link>
        </li>
      ))}
    </ul>
  )
}

/**
 * The frame around every page of a notebook: mark, title, who you are in as, the pages, the main part, the foot.
 * Without `household` the reader came by a read-only link (`readerText`).
 */
export function NotebookFrame({
  title,
  notebookId,
  current,
  household,
  householdName,
  readerText = 'reading only',
  nav,
  footer,
  children,
}: {
  title: string
  notebookId: string
  current: CurrentEntry
  household?: Household | undefined
  householdName?: string | undefined
  readerText?: string | undefined
  nav: readonly NavigationEntry[]
  footer: ReactNode
  children: ReactNode
}) {
  const here = nav.find((entry) => entry.href === current.href)
  return (
    <div className="frame">
      <SkipLink />
      <header className="frame-head">
        <div className="frame-head-inner">
          <Link className="frame-home" href={`/notebook/${notebookId}`} prefetch={false}>
            <Mark size={36} label="Mearing" />
            <span className="frame-title">{title}</span>
          </Link>
          <p className="frame-who">
            {household === undefined ? (
              readerText
            ) : (
              <>
                <span className="frame-who-word">You are in as </span>
                <HouseholdTag household={household} name={householdName ?? ''} />
              </>
            )}
          </p>
        </div>
        <p className="frame-says on-paper-only">{footer}</p>
        {nav.length === 0 ? null : (
          <nav className="frame-nav" aria-label="Pages of the notebook">
            <div className="frame-nav-wide">
              <NavigationLinks nav={nav} current={current} />
            </div>
            <details className="frame-nav-narrow fold-line">
              <summary>
                <span className="frame-nav-word">Pages</span>
                {here === undefined ? null : <span className="frame-nav-here">{here.label}</span>}
              </summary>
              <NavigationLinks nav={nav} current={current} />
            </details>
          </nav>
        )}
      </header>
      <main id="main" tabIndex={-1}>
        {children}
      </main>
      <footer className="frame-foot">
        <p>{footer}</p>
      </footer>
    </div>
  )
}
