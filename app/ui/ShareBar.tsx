import { useId } from 'react'
import { HouseholdPattern } from './HouseholdPattern.tsx'
import { HouseholdTag } from './HouseholdTag.tsx'

/** Household a's part of the bar in percent; null where there is nothing to draw. Drawing only, never a figure to show. */
function partOfBar(a: number, b: number): number | null {
  const left = Math.max(0, a)
  const right = Math.max(0, b)
  const whole = left + right
  return Number.isFinite(whole) && whole > 0 ? (100 * left) / whole : null
}

/**
 * Two figures as one bar of two patterned parts. `a` and `b` only set the lengths; what is read, by eye or by ear, are
 * the ready-made texts `aText` and `bText`.
 */
export function ShareBar({
  a,
  b,
  aText,
  bText,
  nameA,
  nameB,
  label,
}: {
  a: number
  b: number
  aText: string
  bText: string
  nameA: string
  nameB: string
  label: string
}) {
  const patternId = useId()
  const part = partOfBar(a, b)
  return (
    <figure className="share-bar">
      <figcaption className="share-bar-label">{label}</figcaption>
      <svg className="share-bar-drawing" width="100%" height={22} aria-hidden="true">
        <defs>
          <HouseholdPattern id={`${patternId}a`} household="a" />
          <HouseholdPattern id={`${patternId}b`} household="b" />
        </defs>
        {part === null ? (
          <rect className="share-bar-empty" width="100%" height="100%" />
        ) : (
          <>
            <rect width={`${part}%`} height="100%" fill={`url(#${patternId}a)`} />
            <rect x={`${part}%`} width={`${100 - part}%`} height="100%" fill={`url(#${patternId}b)`} />
            {part > 0 && part < 100 ? (
              <line className="share-bar-post" x1={`${part}%`} x2={`${part}%`} y1="0" y2="100%" />
            ) : null}
          </>
        )}
        <rect className="share-bar-outline" width="100%" height="100%" />
      </svg>
      <dl className="share-bar-figures">
        <div className="share-bar-figure">
          <dt>
            <HouseholdTag household="a" name={nameA} />
          </dt>
          <dd className="figure">{aText}</dd>
        </div>
        <div className="share-bar-figure share-bar-figure-b">
          <dt>
            <HouseholdTag household="b" name={nameB} />
          </dt>
          <dd className="figure">{bText}</dd>
        </div>
      </dl>
    </figure>
  )
}
