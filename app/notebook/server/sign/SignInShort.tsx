import { conditionLines, inShortLabel, sharesWait } from '../../../../lib/words/inShortText.ts'
import type { SummaryInput } from '../../../../lib/words/summary/summaryInput.ts'
import { FoldedPart } from '../../../ui/FoldedPart.tsx'
import { AskedBar } from '../AskedBar.tsx'
import { MeansList } from '../MeansList.tsx'

/** What is to be signed, or was signed, at a glance: the sums of both households and the conditions. */
export function SignInShort({ summary: { notebook, statement } }: { summary: SummaryInput }) {
  return (
    <>
      {statement.ok ? (
        <>
          <AskedBar notebook={notebook} asked={statement.value.asked} />
          <MeansList notebook={notebook} statement={statement.value} />
        </>
      ) : (
        <p>{sharesWait}</p>
      )}
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
