import Link from 'next/link'
import type { ReactNode } from 'react'
import { moneyWords } from '../../../lib/words/money.ts'
import { shareNames, waitingCapSentence } from '../../../lib/words/shareText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { AskedBar } from './AskedBar.tsx'
import type { Opened } from './opened.ts'
import { askedMeanwhile, shareFaults } from './shareFaults.ts'

/**
 * The whole fence as one bar of what each household is asked for; or why that can't be worked out yet. `moved` says what
 * the caps moved, `children` stand below.
 */
export function WholeBar({
  opened,
  moved,
  children,
}: {
  opened: Opened
  moved: string
  children?: ReactNode
}) {
  const { notebook, statement, waitingCaps } = opened
  const names = shareNames(notebook)
  if (!statement.ok) {
    const meanwhile = askedMeanwhile(opened)
    return (
      <Panel heading="The whole fence">
        {shareFaults(opened).map(({ text, href }) => (
          <p key={text}>
            {text}{' '}
            <Link href={href} prefetch={false}>
              Go there
            </Link>
          </p>
        ))}
        {meanwhile === undefined ? null : <p>{meanwhile}</p>}
      </Panel>
    )
  }
  const { total, asked } = statement.value
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  return (
    <Panel heading="The whole fence" aside={<span className="figure">{money(total)}</span>}>
      <AskedBar notebook={notebook} asked={asked} />
      {moved === '' ? null : <p>{moved}</p>}
      {waitingCaps.map((cap) => (
        <p key={cap.household}>{waitingCapSentence(cap, names)}</p>
      ))}
      {children}
    </Panel>
  )
}
