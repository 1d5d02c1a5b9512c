'use client'

import { useId } from 'react'
import { moveHolds, moveKinds, type TriedMoves } from '../../../../lib/core/trying/tried.ts'
import { moveFaultWords, moveLabels } from '../../../../lib/words/tryText.ts'
import { describedBy, FieldFrame } from '../../../ui/draft/FieldFrame.tsx'
import { FieldLine } from '../../../ui/draft/FieldLine.tsx'

/** All prices, hours or rates at once, by so many percent. */
export function TriedMovesFields({
  moves,
  onMove,
}: {
  moves: TriedMoves
  onMove: (kind: keyof TriedMoves, text: string) => void
}) {
  const form = useId()
  return (
    <FieldLine>
      {moveKinds.map((kind) => {
        const id = `${form}${kind}`
        const errors = moves[kind] === '' || moveHolds(moves[kind]) ? [] : [moveFaultWords]
        return (
          <FieldFrame
            key={kind}
            id={id}
            label={moveLabels[kind]}
            hint="More, or with a minus less."
            errors={errors}
            width="short"
          >
            <div className="figure-entry">
              <input
                id={id}
                className="figure"
                type="text"
                autoComplete="off"
                value={moves[kind]}
                aria-invalid={errors.length > 0 ? true : undefined}
                aria-describedby={describedBy(id, { hint: true, errors: errors.length > 0, unit: true })}
                onChange={(event) => onMove(kind, event.target.value)}
              />
              <span className="figure-unit" id={`${id}-unit`}>
                percent
              </span>
            </div>
          </FieldFrame>
        )
      })}
    </FieldLine>
  )
}
