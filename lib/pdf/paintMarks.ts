import {
  degrees,
  LineCapStyle,
  lineTo,
  moveTo,
  type PDFFont,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  type RGB,
  rgb,
  setDashPattern,
  setLineCap,
  setLineJoin,
  setLineWidth,
  setStrokingColor,
  stroke as strokePath,
} from 'pdf-lib'
import type { Weight } from './faces.ts'
import type { Mark } from './mark.ts'
import { type PaperInk, paperColours } from './paperColours.ts'

const colours = Object.fromEntries(
  Object.entries(paperColours).map(([ink, colour]) => [ink, hex(colour)]),
) as Readonly<Record<PaperInk, RGB>>

function hex(text: string): RGB {
  const part = (at: number) => Number.parseInt(text.slice(at, at + 2), 16) / 255
  return rgb(part(0), part(2), part(4))
}

/** Paints marks on a page. Turns y over: marks count from the top, PDF (ISO 32000) from the bottom. */
export function paintMarks(
  page: PDFPage,
  marks: readonly Mark[],
  fonts: Readonly<Record<Weight, PDFFont>>,
): void {
  const flip = (y: number) => page.getHeight() - y
  for (const mark of marks) {
    switch (mark.kind) {
      case 'text':
        page.drawText(mark.text, {
          x: mark.at.x,
          y: flip(mark.at.y),
          size: mark.size,
          font: fonts[mark.weight],
          color: colours[mark.ink],
          ...(mark.angle === undefined ? {} : { rotate: degrees(mark.angle) }),
        })
        break
      case 'polyline':
        paintPolyline(page, mark, flip)
        break
      case 'polygon': {
        const [first, ...rest] = mark.points
        if (first === undefined) break
        const path = `M${at(first)}${rest.map((point) => `L${at(point)}`).join('')}Z`
        page.drawSvgPath(path, {
          x: 0,
          y: page.getHeight(),
          ...(mark.fill && { color: colours[mark.fill] }),
          ...(mark.stroke && {
            borderColor: colours[mark.stroke.ink],
            borderWidth: mark.stroke.width,
            ...(mark.stroke.dash && { borderDashArray: [...mark.stroke.dash] }),
          }),
        })
        break
      }
      case 'circle':
        page.drawCircle({
          x: mark.centre.x,
          y: flip(mark.centre.y),
          size: mark.radius,
          ...(mark.fill && { color: colours[mark.fill] }),
          ...(mark.stroke && {
            borderColor: colours[mark.stroke.ink],
            borderWidth: mark.stroke.width,
            ...(mark.stroke.dash && { borderDashArray: [...mark.stroke.dash] }),
          }),
        })
        break
    }
  }
}

function paintPolyline(
  page: PDFPage,
  mark: Extract<Mark, { kind: 'polyline' }>,
  flip: (y: number) => number,
): void {
  const [first, ...rest] = mark.points
  if (first === undefined) return
  const { red, green, blue } = colours[mark.stroke.ink]
  page.pushOperators(
    pushGraphicsState(),
    setStrokingColor(rgb(red, green, blue)),
    setLineWidth(mark.stroke.width),
    setLineCap(mark.round ? LineCapStyle.Round : LineCapStyle.Butt),
    setLineJoin(1),
    setDashPattern([...(mark.stroke.dash ?? [])], 0),
    moveTo(short(first.x), short(flip(first.y))),
    ...rest.map((point) => lineTo(short(point.x), short(flip(point.y)))),
    strokePath(),
    popGraphicsState(),
  )
}

/** A thousandth of a point is finer than any printer. */
function short(number: number): number {
  return Math.round(number * 1000) / 1000
}

function at({ x, y }: { x: number; y: number }): string {
  return `${short(x)},${short(y)} `
}
