import { type Term, termWords } from '../../../lib/words/termWords.ts'
import { TermDrawing } from './TermDrawing.tsx'

/** Questions beside the fields that ask for a trade term; each unfolds into two sentences and a drawing. */
export function Explain({ terms }: { terms: readonly Term[] }) {
  return (
    <div className="explain">
      {terms.map((term) => (
        <details className="explain-term" key={term}>
          <summary>{termWords[term].question}</summary>
          <div className="explain-answer">
            <TermDrawing term={term} />
            <p>{termWords[term].answer}</p>
          </div>
        </details>
      ))}
    </div>
  )
}
