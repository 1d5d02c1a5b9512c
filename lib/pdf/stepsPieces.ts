import type { StepsBlock } from '../words/summary/block.ts'
import type { Faces } from './faces.ts'
import type { Mark } from './mark.ts'
import type { Piece } from './paginate.ts'
import type { StructureElement } from './structureElement.ts'
import { linesOf, styles, textMark } from './textPieces.ts'

/** Room for a group's heading at the left, and from there for a step's number. */
const [headingRoom, numberRoom] = [100, 14]

/**
 * Groups of numbered steps in small print, each group's heading beside its steps. A step is one paragraph for whoever has
 * it read aloud, and its number ornament: as a list, the steps of a long notebook would be more elements than a paper holds.
 */
export function stepsPieces({ groups }: StepsBlock, faces: Faces, width: number): Piece[] {
  return groups.flatMap(({ heading, steps }) => {
    const headings = linesOf(heading, headingRoom - 8, styles.stepStrong, faces)
    const headingTag: StructureElement = { role: 'P' }
    const lines = steps.flatMap((step, index) => stepLines(step, index + 1, faces, width))
    const count = Math.max(headings.length, lines.length)
    return Array.from({ length: count }, (_, at): Piece => {
      const title = headings[at]
      return {
        height: styles.step.lineHeight,
        before: at === 0 ? 4 : 0,
        // A group's first two lines stay together, and so do its last two.
        keepWithNext: count > 1 && (at === 0 || at === count - 2),
        marks: [
          ...(title === undefined
            ? []
            : [{ ...textMark(title, { x: 0, y: 0 }, styles.stepStrong), tag: headingTag }]),
          ...(lines[at] ?? []),
        ],
      }
    })
  })
}

/** The marks of each line of one step. */
function stepLines(step: string, number: number, faces: Faces, width: number): Mark[][] {
  const tag: StructureElement = { role: 'P' }
  const indent = headingRoom + numberRoom
  return linesOf(step, width - indent, styles.step, faces).map((text, at) => [
    ...(at === 0 ? [textMark(`${number}`, { x: headingRoom, y: 0 }, styles.step)] : []),
    { ...textMark(text, { x: indent, y: 0 }, styles.step), tag },
  ])
}
