'use client'

import { useDraft } from '../../ui/draft/draftContext.ts'
import { setAt } from '../../ui/draft/draftPath.ts'

/** A ready or saved build-up that a form can begin from. */
export type BuildUpOffer = { readonly label: string; readonly buildUp: object }

/** Puts a ready build-up into the draft; nothing is saved by it. */
export function StartingBuildUps({ offers }: { offers: readonly BuildUpOffer[] }) {
  const { change, ready } = useDraft()
  return (
    <div className="wordings">
      <p className="field-hint">
        Press one to fill in the fields below; then change what is different on your fence.
      </p>
      <div className="button-row">
        {offers.map(({ label, buildUp }) => (
          <button
            key={label}
            type="button"
            className="button button-plain"
            disabled={!ready}
            onClick={() => change((old) => setAt(old, 'buildUp', structuredClone(buildUp)))}
          >
            {label}
          </button>
        ))}
      </div>
    </div>
  )
}
