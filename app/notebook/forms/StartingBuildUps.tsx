'use client'

import { useState } from 'react'
import { BeforeSaving } from '../../ui/draft/BeforeSaving.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { getAt, removeAt, setAt } from '../../ui/draft/draftPath.ts'
import { formWords } from '../../ui/draft/formWords.ts'

/** A ready or kept build-up that a form can begin from. */
export type BuildUpOffer = { readonly label: string; readonly buildUp: object }
export type BuildUpOffers = { readonly ready: readonly BuildUpOffer[]; readonly own: readonly BuildUpOffer[] }

/** Puts a build-up into the draft; nothing is saved by it, and what stood there can be put back. */
export function StartingBuildUps({ path = 'buildUp', offers }: { path?: string; offers: BuildUpOffers }) {
  const { draft, change, ready } = useDraft()
  const [before, setBefore] = useState<{ buildUp: unknown } | null>(null)

  function beginFrom(buildUp: object) {
    setBefore({ buildUp: getAt(draft, path) })
    change((old) => setAt(old, path, structuredClone(buildUp)))
  }
  function putBack(buildUp: unknown) {
    change((old) => (buildUp === undefined ? removeAt(old, path) : setAt(old, path, buildUp)))
    setBefore(null)
  }
  return (
    <div className="wordings">
      <p className="field-hint">
        Press one to fill in the fields below; then change what is different on your fence.
      </p>
      <OfferRow offers={offers.ready} label="Ready ones" ready={ready} onPress={beginFrom} />
      {offers.own.length === 0 ? null : (
        <OfferRow offers={offers.own} label="Your own" ready={ready} onPress={beginFrom} />
      )}
      {before === null ? null : (
        <p className="rows-removed" role="status">
          {formWords.filledInAnew}
          <BeforeSaving path={path} />{' '}
          <button type="button" className="button button-plain" onClick={() => putBack(before.buildUp)}>
            {formWords.putBackText}
          </button>
        </p>
      )}
    </div>
  )
}

function OfferRow({
  offers,
  label,
  ready,
  onPress,
}: {
  offers: readonly BuildUpOffer[]
  label: string
  ready: boolean
  onPress: (buildUp: object) => void
}) {
  return (
    <fieldset className="offer-row">
      <legend className="field-label">{label}</legend>
      <div className="button-row">
        {offers.map(({ label: name, buildUp }, index) => (
          <button
            // biome-ignore lint/suspicious/noArrayIndexKey: a file may keep two under one name, and their order never changes here
            key={index}
            type="button"
            className="button button-plain"
            disabled={!ready}
            onClick={() => onPress(buildUp)}
          >
            {name}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
