import type { SignatureBlock } from '../../../lib/words/summary/block.ts'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'

/** One party's signature, or its absence. */
export function SignatureView({ block }: { block: SignatureBlock }) {
  const { state } = block
  return (
    <section className="signature-view">
      <p>
        <HouseholdTag household={block.household} name={block.householdName} />
      </p>
      <p>
        <strong>{block.party}</strong>, {block.capacity}
      </p>
      {state.kind === 'signed' ? (
        <>
          <p>
            Signed “{state.typedName}”, {state.when}.
          </p>
          <p className="quiet">{state.intent}</p>
          {state.drawing ? (
            <svg
              className="signature-drawing"
              viewBox="0 0 600 200"
              role="img"
              aria-label={`Drawn signature of ${block.party}`}
            >
              <path d={state.drawing} />
            </svg>
          ) : null}
        </>
      ) : (
        <p>{state.text}</p>
      )}
    </section>
  )
}
