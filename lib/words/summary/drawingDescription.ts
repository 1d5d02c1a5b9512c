import type { Notebook } from '../../core/agreement/notebook.ts'
import { placedLine } from '../../core/boundary/placedLine.ts'
import { householdName } from '../labels.ts'
import type { DrawingBlock } from './block.ts'
import { drawingNoteText } from './drawingNoteText.ts'
import { builtDrawingWords } from './drawingPostWords.ts'
import { capitalised, itemTitle } from './names.ts'
import { typedLength } from './typedLength.ts'

/** The place of the drawing, what it shows in words, and what it can't show. */
export function drawingDescription(notebook: Notebook): DrawingBlock {
  const placed = placedLine(notebook)
  const sections = placed.sections.map(
    ({ section, index }) =>
      `${itemTitle('section', index, section.name)}. It runs from ${typedLength(notebook, section.from)} to ${typedLength(notebook, section.to)}.`,
  )
  const gates = placed.gates.map(
    ({ gate, index }) =>
      `${itemTitle('gate', index, gate.name)}. Its middle is at ${typedLength(notebook, gate.at)}.`,
  )
  const parts = [...sections, ...gates]
  return {
    kind: 'drawing',
    caption: `The drawing is to scale along the line. It shows what the households wrote down, and it is no survey. ${capitalised(householdName(notebook, 'a'))} is at the top and hatched, ${householdName(notebook, 'b')} at the bottom and dotted. The start of the line is on the left. The hinges of a gate are drawn at its left, since the notebook does not say where they are.`,
    description:
      parts.length === 0
        ? 'The boundary line, with nothing on it yet.'
        : `The boundary line from above and from the side. ${parts.join(' ')}`,
    notes: placed.notes.map((note) => drawingNoteText(notebook, note)),
  }
}

/** One section or gate alone, larger: what its drawing shows, in words. */
export function itemDescription(
  notebook: Notebook,
  itemId: string,
): { readonly caption: string; readonly description: string } {
  const section = notebook.sections.findIndex(({ id }) => id === itemId)
  const gate = notebook.gates.findIndex(({ id }) => id === itemId)
  const words = builtDrawingWords(notebook)
  const built = (section >= 0 ? notebook.sections[section] : notebook.gates[gate])?.buildUp !== undefined
  return {
    caption: `It is drawn to scale along the line. ${
      built
        ? 'Posts, bays and holes are worked out from the build-up, for estimating. This is no design.'
        : 'Posts, bays and holes are drawn once it has a build-up.'
    }`,
    description: `${section >= 0 ? words.sectionName(section) : words.gateName(gate)}, from above and from the side.`,
  }
}
