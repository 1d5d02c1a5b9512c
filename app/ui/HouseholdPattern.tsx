import type { Household } from '../../lib/core/people/household.ts'

/**
 * An SVG `<pattern>` for a household, to stand inside `<defs>`. Fill a shape with `url(#id)`.
 * Units are user units of the drawing; `scale` enlarges the pattern where a drawing is not in screen pixels.
 */
export function HouseholdPattern({
  id,
  household,
  scale = 1,
}: {
  id: string
  household: Household
  scale?: number | undefined
}) {
  if (household === 'a') {
    return (
      <pattern
        id={id}
        width={6}
        height={6}
        patternUnits="userSpaceOnUse"
        patternTransform={`rotate(45) scale(${scale})`}
      >
        <rect className="pattern-a-ground" width={6} height={6} />
        <rect className="pattern-a-line" width={2.2} height={6} />
      </pattern>
    )
  }
  return (
    <pattern id={id} width={7} height={7} patternUnits="userSpaceOnUse" patternTransform={`scale(${scale})`}>
      <rect className="pattern-b-ground" width={7} height={7} />
      <circle className="pattern-b-dot" cx={1.75} cy={1.75} r={1.3} />
      <circle className="pattern-b-dot" cx={5.25} cy={5.25} r={1.3} />
    </pattern>
  )
}
