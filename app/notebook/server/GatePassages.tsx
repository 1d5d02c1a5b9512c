import { countsSideBySide } from '../../../lib/core/shares/countsSideBySide.ts'
import { readPart } from '../../../lib/forms/parts.ts'
import { readCount } from '../../../lib/forms/saidApart.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { PassageRounds } from '../../../lib/store/passageRounds.ts'
import { countStandingWords, countWords, openRoundWords } from '../../../lib/words/passageText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { capitalised } from '../../../lib/words/summary/names.ts'
import { FoldedPart } from '../../ui/FoldedPart.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { PassagesForm } from '../forms/PassagesForm.tsx'
import { CountsApart } from './CountsApart.tsx'
import { countStanding } from './countStanding.ts'
import type { Opened } from './opened.ts'
import { countThePassages } from './passageActions.ts'

/** A gate's passages a week: how they stand, what was counted, and this household's own count. Nothing on other items. */
export function GatePassages({ opened, id, rounds }: { opened: Opened; id: string; rounds: PassageRounds }) {
  const { document, notebook, notebookId, household } = opened
  const gate = notebook.gates.find((one) => one.id === id)
  if (gate === undefined) return null
  const names = shareNames(notebook)
  const standing = countStanding(gate, rounds)
  const found = countsSideBySide(notebook, id)
  const own = rounds.open.own && readCount(rounds.open.own.content)
  const again = standing.kind === 'settled' || standing.kind === 'apart'
  const said = { own: own !== undefined, other: rounds.open.other === 'held back', again }
  const waits = openRoundWords(said, household, names)
  const form = (
    <PassagesForm
      key={`${rounds.open.round} ${own?.a} ${own?.b}`}
      initial={own ?? { a: '', b: '' }}
      save={countThePassages.bind(null, notebookId, id)}
      names={names}
    />
  )
  const askedNow = own === undefined && (!again || rounds.open.other === 'held back')
  return (
    <Panel heading="Passages a week" id="passages">
      <p>{capitalised(countStandingWords(standing, names))}</p>
      {found ? (
        <CountsApart
          opened={opened}
          id={id}
          found={found}
          takes={gate.passages?.takes ?? {}}
          fingerprint={fingerprintOf(readPart(document, { part: 'item', id }) ?? {})}
        />
      ) : null}
      {waits === undefined ? null : <p>{capitalised(waits)}</p>}
      {own === undefined ? null : <p>Your own count: {countWords(own, names)}.</p>}
      {askedNow ? (
        form
      ) : (
        <FoldedPart summary={own === undefined ? 'Count again' : 'Correct your count'}>{form}</FoldedPart>
      )}
    </Panel>
  )
}
