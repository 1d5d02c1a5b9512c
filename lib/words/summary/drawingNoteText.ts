import type { Notebook } from '../../core/agreement/notebook.ts'
import { never } from '../../core/assert.ts'
import type { DrawingNote } from '../../core/boundary/drawingNote.ts'
import { itemTitle } from './names.ts'

/** What the drawing could not show, or only in part, as a sentence. */
export function drawingNoteText(notebook: Notebook, note: DrawingNote): string {
  const section = (index: number) => itemTitle('section', index, notebook.sections[index]?.name ?? '')
  const gate = (index: number) => itemTitle('gate', index, notebook.gates[index]?.name ?? '')
  switch (note.kind) {
    case 'nothing-to-draw':
      return 'No station, section or gate has a place along the line yet.'
    case 'station-without-place':
      return `Station ${note.station + 1} has no place along the line yet.`
    case 'section-without-place':
      return `${section(note.section)} has no beginning or no end yet, so it is not drawn.`
    case 'section-backwards':
      return `${section(note.section)} ends before it begins, or has no length, so it is not drawn.`
    case 'section-past-the-end':
      return `${section(note.section)} reaches past the last station.`
    case 'sections-overlap':
      return `${section(note.section)} and ${section(note.other)} overlap.`
    case 'section-without-height':
      return `${section(note.section)} has no agreed height yet, so the side view leaves it out.`
    case 'gate-without-place':
      return `${gate(note.gate)} has no place along the line yet, so it is not drawn.`
    case 'gate-without-opening':
      return `${gate(note.gate)} has no clear opening yet: only its middle is marked.`
    case 'gate-past-the-end':
      return `${gate(note.gate)} reaches past an end of the line.`
    case 'gate-outside-sections':
      return `${gate(note.gate)} does not stand wholly in one section.`
    case 'gates-overlap':
      return `${gate(note.gate)} and ${gate(note.other)} overlap.`
    case 'swing-unknown':
      return `${gate(note.gate)}: the notebook does not say toward which household it opens, so no swing is drawn.`
    case 'setbacks-unknown':
      return 'No station says how far from the line the fence stands, so it is drawn on the line.'
    case 'setbacks-past':
      return 'Past the stations that say how far from the line the fence stands, it is drawn as far off as at the nearest of them. Nobody has said so.'
    case 'grades-unknown':
      return 'No station says how high the ground lies, so it is drawn level.'
    case 'grades-past':
      return 'Past the stations that say how high the ground lies, it is drawn level. Nobody has said so.'
    default:
      return never(note)
  }
}
