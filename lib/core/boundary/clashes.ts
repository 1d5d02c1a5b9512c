import type { Notebook } from '../agreement/notebook.ts'
import { parseLength } from '../amounts/length.ts'
import { type Household, otherHousehold } from '../people/household.ts'
import type { DrawingNote } from './drawingNote.ts'
import { placedLine } from './placedLine.ts'
import { setbackAt, setbackPoints } from './setbackAlong.ts'

/** Two things that the notebook says of the line and that cannot both be so. */
export type Clash =
  | Extract<DrawingNote, { readonly kind: (typeof clashingNotes)[number] }>
  | { readonly kind: 'gate-on-other-land'; readonly gate: number; readonly said: Household }

const clashingNotes = [
  'section-backwards',
  'section-past-the-end',
  'sections-overlap',
  'gate-past-the-end',
  'gates-overlap',
] as const

/**
 * What clashes along the line. A warning to whoever fills in the notebook, never a reason to refuse a file or a
 * statement: people write things down in any order.
 */
export function clashes(notebook: Notebook): readonly Clash[] {
  const notes = placedLine(notebook).notes.filter((note): note is Extract<Clash, DrawingNote> =>
    (clashingNotes as readonly string[]).includes(note.kind),
  )
  const points = setbackPoints(notebook.line.stations)
  const strayGates = notebook.gates.flatMap((gate, index): Clash[] => {
    const at = parseLength(gate.at)
    if (at === undefined || (gate.stands !== 'a' && gate.stands !== 'b')) return []
    const setback = setbackAt(points, at)
    if (setback === undefined || setback.over === 0n) return []
    const side: Household = setback.over > 0n ? 'a' : 'b'
    return side === otherHousehold(gate.stands)
      ? [{ kind: 'gate-on-other-land', gate: index, said: gate.stands }]
      : []
  })
  return [...notes, ...strayGates]
}
