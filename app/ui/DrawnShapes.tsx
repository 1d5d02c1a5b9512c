import { useId } from 'react'
import { households } from '../../lib/core/people/household.ts'
import type { Box, Drawing, Point, Shape, Stroke } from '../../lib/drawing/drawing.ts'
import { hatchMarks } from '../../lib/drawing/hatchMarks.ts'
import { HouseholdPattern } from './HouseholdPattern.tsx'

/** A drawing of the core as SVG. The colours come from the page, so that it follows light and dark. */
export function DrawnShapes({
  drawing,
  label,
}: {
  drawing: Pick<Drawing, 'width' | 'height' | 'shapes'>
  label: string
}) {
  const patternId = useId()
  const patterned = households.filter((household) =>
    drawing.shapes.some((shape) => shape.kind === 'patterned' && shape.household === household),
  )
  return (
    <svg className="drawn" viewBox={`0 0 ${drawing.width} ${drawing.height}`} role="img" aria-label={label}>
      {patterned.length === 0 ? null : (
        <defs>
          {patterned.map((household) => (
            <HouseholdPattern key={household} id={`${patternId}${household}`} household={household} />
          ))}
        </defs>
      )}
      {drawing.shapes.map((shape, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names, and are drawn afresh each time
        <Drawn key={index} shape={shape} patternId={patternId} />
      ))}
    </svg>
  )
}

function Drawn({ shape, patternId }: { shape: Shape; patternId: string }) {
  switch (shape.kind) {
    case 'polyline':
      return <polyline points={pointsText(shape.points)} fill="none" {...strokeOf(shape.stroke)} />
    case 'polygon':
      return (
        <polygon points={pointsText(shape.points)} fill={colour(shape.fill)} {...strokeOf(shape.stroke)} />
      )
    case 'circle':
      return (
        <circle
          cx={shape.centre.x}
          cy={shape.centre.y}
          r={shape.radius}
          fill={colour(shape.fill)}
          {...strokeOf(shape.stroke)}
        />
      )
    case 'arc':
      return <path d={arcPath(shape)} fill="none" {...strokeOf(shape.stroke)} />
    case 'text':
      return (
        <text
          x={shape.at.x}
          y={shape.at.y}
          textAnchor={shape.anchor}
          fontSize={shape.size}
          fontWeight={shape.bold ? 600 : undefined}
          fill={colour(shape.ink)}
        >
          {shape.text}
        </text>
      )
    case 'patterned':
      return <path d={shape.boxes.map(boxPath).join('')} fill={`url(#${patternId}${shape.household})`} />
    case 'hatch': {
      // One path for all lines, one for all dots: each mark by itself would be most of what a page is made of.
      const { lines, dots } = hatchMarks(shape)
      const ink = colour(shape.household)
      return (
        <>
          {lines[0] === undefined ? null : (
            <path
              d={lines.map(({ from, to }) => `M${placed(from)}L${placed(to)}`).join('')}
              stroke={ink}
              strokeWidth={lines[0].width}
            />
          )}
          {dots[0] === undefined ? null : (
            <path
              d={dots.map(({ centre }) => `M${placed(centre)}h0`).join('')}
              stroke={ink}
              strokeWidth={2 * dots[0].radius}
              strokeLinecap="round"
            />
          )}
        </>
      )
    }
  }
}

const colours: Readonly<Record<string, string>> = {
  ink: 'var(--ink)',
  quiet: 'var(--ink-quiet)',
  rule: 'var(--rule)',
  sheet: 'var(--sheet)',
  a: 'var(--plum)',
  b: 'var(--ochre)',
  'soft-a': 'var(--plum-soft)',
  'soft-b': 'var(--ochre-soft)',
}

function colour(ink: string | undefined): string {
  return ink === undefined ? 'none' : (colours[ink] ?? 'var(--ink)')
}

function strokeOf(stroke: Stroke | undefined) {
  if (stroke === undefined) return {}
  return { stroke: colour(stroke.ink), strokeWidth: stroke.width, strokeDasharray: stroke.dash?.join(' ') }
}

function pointsText(points: readonly Point[]): string {
  return points.map(placed).join(' ')
}

function boxPath({ x, y, width, height }: Box): string {
  return `M${placed({ x, y })}h${round(width)}v${round(height)}h${-round(width)}z`
}

/** To a hundredth of a unit, which nobody sees: the figures of a drawing are most of its size. */
function placed({ x, y }: Point): string {
  return `${round(x)} ${round(y)}`
}

function round(figure: number): number {
  return Math.round(figure * 100) / 100
}

function arcPath({ centre, radius, from, to }: Extract<Shape, { kind: 'arc' }>): string {
  const at = (angle: number) =>
    `${centre.x + radius * Math.cos(angle)} ${centre.y + radius * Math.sin(angle)}`
  return `M ${at(from)} A ${radius} ${radius} 0 ${to - from > Math.PI ? 1 : 0} 1 ${at(to)}`
}
