import Link from 'next/link'
import type { ReactNode } from 'react'
import { Mark } from './Mark.tsx'
import { SkipLink } from './SkipLink.tsx'

/** The frame of pages outside a notebook: the start, a link being opened, nothing found. */
export function BareFrame({ footer, children }: { footer?: ReactNode; children: ReactNode }) {
  return (
    <div className="frame">
      <SkipLink />
      <header className="frame-head">
        <div className="frame-head-inner">
          <Link className="frame-home" href="/" prefetch={false}>
            <Mark size={36} />
            <span className="frame-name">Mearing</span>
          </Link>
        </div>
      </header>
      <main id="main" tabIndex={-1}>
        {children}
      </main>
      {footer === undefined ? null : (
        <footer className="frame-foot">
          <p>{footer}</p>
        </footer>
      )}
    </div>
  )
}
