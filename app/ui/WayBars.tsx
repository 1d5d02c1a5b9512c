import { scaleLinear } from 'd3-scale'
import { useId } from 'react'
import { HouseholdPattern } from './HouseholdPattern.tsx'
import { HouseholdTag } from './HouseholdTag.tsx'

/** One bar: what a way asks of a and of b. The numbers only set lengths; what is read are the texts. */
export type WayBar = {
  readonly label: string
  readonly a: number
  readonly b: number
  readonly aText: string
  readonly bText: string
  readonly chosen: boolean
  /** Where caps moved it: a's amount before them, and the words for both. */
  readonly before?: { readonly a: number; readonly text: string } | undefined
}

/**
 * Ways to share, one bar each, on one axis of money: a's part from the left, b's from the right. A diamond stands at
 * the middle of their range, a post with a foot where the chosen way divides, a dashed line where a way would divide
 * without caps.
 */
export function WayBars({
  bars,
  middle,
  nameA,
  nameB,
  label,
  zeroText,
  totalText,
}: {
  bars: readonly WayBar[]
  /** a's amount in the middle, in the numbers of the bars. */
  middle: number | undefined
  nameA: string
  nameB: string
  label: string
  zeroText: string
  totalText: string
}) {
  const patternId = useId()
  const whole = Math.max(0, ...bars.map(({ a, b }) => a + b))
  if (!(whole > 0)) return null
  const percent = scaleLinear([0, whole], [0, 100])
  const along = (amount: number) => `${percent(amount)}%`
  return (
    <figure className="way-bars">
      <figcaption className="share-bar-label">{label}</figcaption>
      <p className="way-bars-key">
        <HouseholdTag household="a" name={nameA} />
        <HouseholdTag household="b" name={nameB} />
      </p>
      <svg width={0} height={0} aria-hidden="true" className="way-bars-patterns">
        <defs>
          <HouseholdPattern id={`${patternId}a`} household="a" />
          <HouseholdPattern id={`${patternId}b`} household="b" />
        </defs>
      </svg>
      <ul className="way-bars-list">
        {bars.map((bar) => (
          <li key={bar.label}>
            <p className="way-bar-head">
              <span className="way-bar-name">
                {bar.label}
                {bar.chosen ? ' (chosen now)' : ''}
              </span>
              <span className="figure">
                <span className="way-bar-part">
                  <span className="way-bar-whose">{nameA}</span> {bar.aText}
                </span>{' '}
                <span className="way-bar-part">
                  <span className="way-bar-whose">{nameB}</span> {bar.bText}
                </span>
              </span>
            </p>
            <svg className="way-bar-drawing" width="100%" height={26} aria-hidden="true">
              <rect y={4} width={along(bar.a)} height={18} fill={`url(#${patternId}a)`} />
              <rect x={along(bar.a)} y={4} width={along(bar.b)} height={18} fill={`url(#${patternId}b)`} />
              <rect
                className={bar.chosen ? 'way-bar-outline way-bar-chosen' : 'way-bar-outline'}
                y={4}
                width="100%"
                height={18}
              />
              {bar.before === undefined ? null : (
                <svg x={along(bar.before.a)} overflow="visible" role="presentation">
                  <path className="way-bar-before" d="M0 0 V26" />
                </svg>
              )}
              {middle === undefined ? null : (
                <svg x={along(middle)} y={13} overflow="visible" role="presentation">
                  <path className="way-bar-middle" d="M0 -9 L7 0 L0 9 L-7 0 Z" />
                </svg>
              )}
              {bar.chosen ? (
                <svg x={along(bar.a)} overflow="visible" role="presentation">
                  <path className="way-bar-foot" d="M0 1 V25 M-7 25 H7 M-5 1 H5" />
                </svg>
              ) : null}
            </svg>
            {bar.before === undefined ? null : <p className="way-bar-note">{bar.before.text}</p>}
          </li>
        ))}
      </ul>
      <p className="way-bars-axis figure" aria-hidden="true">
        <span>{zeroText}</span>
        <span>{totalText}</span>
      </p>
      <p className="way-bars-legend">
        {middle === undefined ? '' : 'Diamond: the middle. '}Post with a foot: where it is divided now.
        {bars.some(({ before }) => before !== undefined)
          ? ' Dashed line: where it would be divided without caps.'
          : ''}
      </p>
    </figure>
  )
}
