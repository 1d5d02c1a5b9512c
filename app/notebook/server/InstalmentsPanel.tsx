import { moreInstalmentWords } from '../../../lib/words/arrangementText.ts'
import { dayWords } from '../../../lib/words/day.ts'
import { instalmentSentences, instalmentWords, partStandingWords } from '../../../lib/words/instalmentText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { moreAnchor } from '../forms/moreInstalment.ts'
import { instalmentsNow } from './instalmentsNow.ts'
import type { Opened } from './opened.ts'

/** The payment plan that both agreed on against the payments that count; nothing where there is none. */
export function InstalmentsPanel({ opened }: { opened: Opened }) {
  const plan = instalmentsNow(opened)
  if (plan === undefined) return null
  const { notebook, standing, more } = plan
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const names = { a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  const { columns, foot, heading } = instalmentWords
  return (
    <Panel heading={heading} id="instalments">
      {instalmentSentences(standing, names, notebook.currency).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {standing.short === 0n ? null : more === 0n ? (
        <p>{moreInstalmentWords.inDraft}</p>
      ) : (
        <div className="button-row">
          <ButtonLink href={`/notebook/${opened.notebookId}/arrangements#${moreAnchor}`}>
            {moreInstalmentWords.link(money(more))}
          </ButtonLink>
        </div>
      )}
      <FigureTable
        caption={heading}
        captionUnseen
        columns={[
          { label: columns.on },
          { label: columns.amount, figures: true, result: true },
          { label: columns.paid, figures: true },
          { label: columns.state },
        ]}
        rows={standing.parts.map((part) => [
          dayWords(part.on),
          money(part.amount),
          money(part.paid),
          partStandingWords(part, notebook.currency),
        ])}
        foot={[[foot, money(standing.total), money(standing.paid), '']]}
      />
    </Panel>
  )
}
