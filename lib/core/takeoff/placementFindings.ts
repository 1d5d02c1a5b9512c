import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import type { PlacedLine, Stretch } from '../boundary/placedLine.ts'
import type { Found } from './finding.ts'

/** What clashes along the line, as `placedLine` noted it, with the numbers that clash. */
export function placementFindings(notebook: Notebook, placed: PlacedLine, found: Found): void {
  const sections = new Map(placed.sections.map((one) => [one.index, one]))
  const gates = new Map(placed.gates.map((one) => [one.index, one]))
  const end = placed.lineEnd
  for (const note of placed.notes) {
    switch (note.kind) {
      case 'sections-overlap':
        overlap(
          `sections[${note.other}]`,
          note.kind,
          sections.get(note.other),
          sections.get(note.section),
          note.section,
          found,
        )
        break
      case 'gates-overlap':
        overlap(
          `gates[${note.other}]`,
          note.kind,
          gates.get(note.other),
          gates.get(note.gate),
          note.gate,
          found,
        )
        break
      case 'section-past-the-end':
        past(`sections[${note.section}].to`, note.kind, sections.get(note.section), end, found)
        break
      case 'gate-past-the-end':
        past(`gates[${note.gate}].at`, note.kind, gates.get(note.gate), end, found)
        break
      case 'section-backwards': {
        const section = notebook.sections[note.section]
        if (section)
          found(`sections[${note.section}].to`, {
            kind: note.kind,
            from: lengthOf(section.from),
            to: lengthOf(section.to),
          })
        break
      }
      case 'section-without-place': {
        const section = notebook.sections[note.section]
        if (section?.buildUp)
          found(`sections[${note.section}].${section.from === '' ? 'from' : 'to'}`, { kind: 'missing' })
        break
      }
      case 'gate-outside-sections':
        reachingOut(note.gate, gates.get(note.gate), placed.sections, found)
        break
      case 'gate-without-place':
        if (notebook.gates[note.gate]?.buildUp) found(`gates[${note.gate}].at`, { kind: 'missing' })
        break
      case 'gate-without-opening':
        if (notebook.gates[note.gate]?.buildUp) found(`gates[${note.gate}].opening`, { kind: 'missing' })
        break
    }
  }
}

function overlap(
  path: string,
  kind: 'sections-overlap' | 'gates-overlap',
  one: Stretch | undefined,
  earlier: Stretch | undefined,
  other: number,
  found: Found,
): void {
  if (one === undefined || earlier === undefined) return
  found(path, { kind, from: one.from, to: one.to, other, otherFrom: earlier.from, otherTo: earlier.to })
}

/** An opening that is in a section only in part: between two sections, or beside one, it is as it should be. */
function reachingOut(
  index: number,
  gate: Stretch | undefined,
  sections: PlacedLine['sections'],
  found: Found,
): void {
  if (gate === undefined) return
  const section = sections.find(
    ({ from, to }) => compareLengths(from, gate.to) < 0 && compareLengths(gate.from, to) < 0,
  )
  if (section === undefined) return
  found(`gates[${index}].at`, {
    kind: 'gate-partly-outside',
    from: gate.from,
    to: gate.to,
    other: section.index,
    otherFrom: section.from,
    otherTo: section.to,
  })
}

function past(
  path: string,
  kind: 'section-past-the-end' | 'gate-past-the-end',
  one: Stretch | undefined,
  end: Millimetres,
  found: Found,
): void {
  if (one) found(path, { kind, from: one.from, to: one.to, end })
}
