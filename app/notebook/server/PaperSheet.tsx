import type { Stroke } from '../../../lib/drawing/drawing.ts'
import type { Mark } from '../../../lib/pdf/mark.ts'
import type { PageSize } from '../../../lib/pdf/pageSize.ts'
import { type PaperInk, paperColours } from '../../../lib/pdf/paperColours.ts'

/** One page of a paper as it is printed: the same marks at the same places, in the same type. Paper is white, also at night. */
export function PaperSheet({
  marks,
  page,
  label,
}: {
  marks: readonly Mark[]
  page: PageSize
  label: string
}) {
  return (
    <svg className="paper-sheet" viewBox={`0 0 ${page.width} ${page.height}`} role="img" aria-label={label}>
      <rect width={page.width} height={page.height} fill={colour('sheet')} />
      {marks.map((mark, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: marks have no names, and are drawn once
        <Marked key={index} mark={mark} />
      ))}
    </svg>
  )
}

function Marked({ mark }: { mark: Mark }) {
  switch (mark.kind) {
    case 'text': {
      const { x, y } = mark.at
      return (
        <text
          x={short(x)}
          y={short(y)}
          fontSize={mark.size}
          fontWeight={mark.weight === 'semibold' ? 600 : undefined}
          fill={colour(mark.ink)}
          transform={mark.angle === undefined ? undefined : `rotate(${-mark.angle} ${x} ${y})`}
        >
          {mark.text}
        </text>
      )
    }
    case 'polyline':
      return (
        <polyline
          points={pointsText(mark.points)}
          fill="none"
          strokeLinejoin="round"
          strokeLinecap={mark.round ? 'round' : undefined}
          {...strokeOf(mark.stroke)}
        />
      )
    case 'polygon':
      return <polygon points={pointsText(mark.points)} fill={colour(mark.fill)} {...strokeOf(mark.stroke)} />
    case 'circle':
      return (
        <circle
          cx={short(mark.centre.x)}
          cy={short(mark.centre.y)}
          r={mark.radius}
          fill={colour(mark.fill)}
          {...strokeOf(mark.stroke)}
        />
      )
  }
}

function colour(ink: PaperInk | undefined): string {
  return ink === undefined ? 'none' : `#${paperColours[ink]}`
}

function strokeOf(stroke: Stroke | undefined) {
  if (stroke === undefined) return {}
  return { stroke: colour(stroke.ink), strokeWidth: stroke.width, strokeDasharray: stroke.dash?.join(' ') }
}

function pointsText(points: readonly { readonly x: number; readonly y: number }[]): string {
  return points.map(({ x, y }) => `${short(x)},${short(y)}`).join(' ')
}

/** A hundredth of a point is finer than any screen. */
function short(number: number): number {
  return Math.round(number * 100) / 100
}
