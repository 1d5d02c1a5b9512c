import { households } from '../../../../lib/core/people/household.ts'
import { conditionLines, inShortLabel, sharesWait } from '../../../../lib/words/inShortText.ts'
import { meansWords } from '../../../../lib/words/meansText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import type { SummaryInput } from '../../../../lib/words/summary/summaryInput.ts'
import { FoldedPart } from '../../../ui/FoldedPart.tsx'
import { HouseholdTag } from '../../../ui/HouseholdTag.tsx'
import { ShareBar } from '../../../ui/ShareBar.tsx'

/** What is to be signed, or was signed, at a glance: the sums of both households and the conditions. */
export function SignInShort({ summary: { notebook, statement } }: { summary: SummaryInput }) {
  return (
    <>
      {statement.ok ? <Sums notebook={notebook} statement={statement.value} /> : <p>{sharesWait}</p>}
      <div>
        <p className="whole-means-label">{inShortLabel}</p>
        <ul>
          {conditionLines(notebook).map(({ text, more }) => (
            <li key={text}>{more ? <Counted text={text} more={more} /> : text}</li>
          ))}
        </ul>
      </div>
    </>
  )
}

/** A number of things, to be unfolded; on paper the number is enough, as the agreement is printed by itself. */
function Counted({ text, more }: { text: string; more: readonly string[] }) {
  return (
    <>
      <span className="on-paper-only">{text}</span>
      <div className="on-screen-only">
        <FoldedPart summary={text}>
          <ul>
            {more.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </FoldedPart>
      </div>
    </>
  )
}

type Summed = Pick<SummaryInput, 'notebook'> & {
  statement: Extract<SummaryInput['statement'], { ok: true }>['value']
}

function Sums({ notebook, statement: { asked, inMoney, promised } }: Summed) {
  const names = shareNames(notebook)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  return (
    <>
      <ShareBar
        a={Number(asked.a)}
        b={Number(asked.b)}
        aText={money(asked.a)}
        bText={money(asked.b)}
        nameA={names.a}
        nameB={names.b}
        label="Asked for, materials and work"
      />
      <ul className="whole-means">
        {households.map((household) => (
          <li key={household}>
            <HouseholdTag household={household} name={names[household]} short />{' '}
            {meansWords(
              { asked: asked[household], inMoney: inMoney[household], promised: promised[household] },
              notebook.currency,
            )}
          </li>
        ))}
      </ul>
    </>
  )
}
