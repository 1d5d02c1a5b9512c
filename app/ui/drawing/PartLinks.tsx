import type { Drawing } from '../../../lib/drawing/drawing.ts'
import type { DrawnPart } from '../../../lib/drawing/drawnPart.ts'

export type AddressOf = (part: DrawnPart) => string

/** Links that lie over the parts of a drawing, each with the part's name; a part's second place is for the pointer alone. */
export function PartLinks({ drawing, addressOf }: { drawing: Drawing; addressOf: AddressOf }) {
  return drawing.parts.flatMap((part) =>
    part.boxes.map((box, place) => (
      <a
        key={`${part.of.kind} ${part.of.index} ${box.x} ${box.y}`}
        className="drawing-part"
        href={addressOf(part)}
        {...(place === 0 ? { 'aria-label': part.name } : { 'aria-hidden': true, tabIndex: -1 })}
        title={part.name}
        draggable={false}
        style={{
          left: percent(box.x, drawing.width),
          top: percent(box.y, drawing.height),
          width: percent(box.width, drawing.width),
          height: percent(box.height, drawing.height),
        }}
      />
    )),
  )
}

/** Every part by name, also those that stand too close on the drawing for a finger. */
export function PartList({
  parts,
  addressOf,
}: {
  parts: readonly DrawnPart[]
  addressOf?: AddressOf | undefined
}) {
  // A post where two sheets meet is on both.
  const once = parts.filter(
    ({ of }, index) =>
      parts.findIndex((other) => other.of.kind === of.kind && other.of.index === of.index) === index,
  )
  if (once.length === 0) return null
  return (
    <details className="drawing-list">
      <summary>Parts of the drawing</summary>
      <ul>
        {once.map((part) => (
          <li key={`${part.of.kind} ${part.of.index}`}>
            {addressOf ? <a href={addressOf(part)}>{part.name}</a> : part.name}
          </li>
        ))}
      </ul>
    </details>
  )
}

function percent(part: number, whole: number): string {
  return `${((part / whole) * 100).toFixed(4)}%`
}
