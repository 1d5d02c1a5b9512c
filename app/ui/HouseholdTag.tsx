import { useId } from 'react'
import type { Household } from '../../lib/core/people/household.ts'
import { HouseholdPattern } from './HouseholdPattern.tsx'

/** A household's name with its pattern swatch and its letter. `short` leaves the name to be read out only. */
export function HouseholdTag({
  household,
  name,
  short = false,
}: {
  household: Household
  name: string
  short?: boolean | undefined
}) {
  const patternId = useId()
  return (
    <span className={`household-tag household-${household}`}>
      <svg className="household-swatch" viewBox="0 0 20 20" width={20} height={20} aria-hidden="true">
        <defs>
          <HouseholdPattern id={patternId} household={household} />
        </defs>
        {household === 'a' ? (
          <rect
            className="household-swatch-shape"
            x={1}
            y={1}
            width={18}
            height={18}
            fill={`url(#${patternId})`}
          />
        ) : (
          <circle className="household-swatch-shape" cx={10} cy={10} r={9} fill={`url(#${patternId})`} />
        )}
      </svg>
      <span className="household-letter">{household}</span>
      <span className={short ? 'only-read-out' : 'household-name'}> {name}</span>
    </span>
  )
}
