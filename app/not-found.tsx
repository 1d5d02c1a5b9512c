import type { Metadata } from 'next'
import { BareFrame } from './ui/BareFrame.tsx'
import { Page } from './ui/Page.tsx'
import { Panel } from './ui/Panel.tsx'

export const metadata: Metadata = { title: 'Nothing here' }

/** The same page for every cause, so that it never tells a stranger whether a notebook exists. */
export default function NotFound() {
  return (
    <BareFrame>
      <Page title="Nothing here" lead="There is nothing here, or your link does not open it.">
        <Panel heading="What to do">
          <ul>
            <li>
              Open your household’s private link again: it is what lets you in on each phone or computer.
            </li>
            <li>If you typed the address, check it against the one you were given.</li>
            <li>
              If you were given a link for reading only, it may have run out or been ended: ask the households
              for another.
            </li>
            <li>If your link no longer works, your household may have made a new one: use that.</li>
          </ul>
        </Panel>
      </Page>
    </BareFrame>
  )
}
