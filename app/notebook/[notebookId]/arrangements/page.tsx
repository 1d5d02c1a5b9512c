import { statementOf } from '../../../../lib/core/shares/statement.ts'
import { readPart } from '../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { arrangementsTitle } from '../../../../lib/words/arrangementText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { ArrangementsForm } from '../../forms/ArrangementsForm.tsx'
import { beginArrangements, removeArrangements, saveArrangements } from '../../server/arrangementActions.ts'
import { ItemConversation } from '../../server/ItemConversation.tsx'
import { moreInstalment } from '../../server/instalmentsNow.ts'
import { MarkBox } from '../../server/MarkBox.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { RatesAgainstQuotes } from '../../server/RatesAgainstQuotes.tsx'
import { standingOf } from '../../server/standingOf.ts'

export const metadata = { title: arrangementsTitle }

export default async function ArrangementsPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { document, notebook } = opened
  const home = `/notebook/${notebookId}`
  const draft = readPart(document, { part: 'arrangements' }) ?? {}
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  // The plan as it is typed, caps included that wait for a mark: what the instalments are held against.
  const statement = statementOf(notebook)
  const inMoney = statement.ok ? statement.value.inMoney : undefined
  return (
    <NotebookShell
      opened={opened}
      page="arrangements"
      title={arrangementsTitle}
      lead="What you two agree on about money and hours beside the shares. Both mark it, and it is signed with the rest."
      back={{ href: `${home}/money`, label: 'Money and hours' }}
    >
      {notebook.arrangements === undefined ? (
        <Panel heading="Nothing is agreed yet">
          <p>
            A rate for an hour of work, how much dearer an item may come before you look at it again, and a
            plan for paying in parts. You can do without; then nobody has to mark anything here.
          </p>
          <PressForm
            action={beginArrangements.bind(null, notebookId)}
            label="Agree on rates, tolerance and instalments"
            weight="main"
          />
        </Panel>
      ) : (
        <>
          <Panel heading="Where this stands">
            <MarkBox
              opened={opened}
              standing={standingOf(opened, 'arrangements')}
              back={`${home}/arrangements`}
            />
            <RatesAgainstQuotes notebook={notebook} />
          </Panel>
          <Panel heading="What is agreed" id="arrangements">
            <ArrangementsForm
              initial={draft}
              base={fingerprintOf(draft)}
              save={saveArrangements.bind(null, notebookId)}
              remove={removeArrangements.bind(null, notebookId)}
              names={shareNames(notebook)}
              more={moreInstalment(opened)}
              planned={inMoney && { a: money(inMoney.a), b: money(inMoney.b) }}
            />
          </Panel>
          <ItemConversation opened={opened} itemKey="arrangements" />
        </>
      )}
    </NotebookShell>
  )
}
