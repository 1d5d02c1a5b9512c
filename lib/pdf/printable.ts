import type { Drawing, Shape } from '../drawing/drawing.ts'
import type { Block } from '../words/summary/block.ts'

/** The mark that stands for a character the face lacks: U+FFFD, which the face has. */
const mark = '\uFFFD'

/** Makes texts printable and remembers what could not be. */
export type Printer = {
  readonly text: (text: string) => string
  /** Code points that were marked, in order of their number. */
  readonly marked: () => readonly number[]
}

/**
 * Control and format characters go, among them those that turn the direction of writing; blanks of every kind but the
 * no-break ones become one space; what the face lacks is marked, never lost.
 */
export function printer(canPrint: (codePoint: number) => boolean): Printer {
  const marked = new Set<number>()
  return {
    marked: () => [...marked].sort((left, right) => left - right),
    text: (text) => {
      const folded = text
        .normalize('NFC')
        .replace(/[\u00A0\u202F\u2007]/g, '\u00A0')
        .replace(/[^\S\u00A0]+/g, ' ')
        .replace(/\p{Cc}|\p{Cf}/gu, '')
        // Variation selectors only choose between pictures.
        .replace(/\p{Variation_Selector}/gu, '')
      let printed = ''
      for (const character of folded) {
        const codePoint = character.codePointAt(0) ?? 0
        if (canPrint(codePoint)) printed += character
        else {
          marked.add(codePoint)
          printed += mark
        }
      }
      return printed.trim()
    },
  }
}

export function printableBlocks(blocks: readonly Block[], print: Printer): Block[] {
  return blocks.map((block) => printableBlock(block, print))
}

function printableBlock(block: Block, { text }: Printer): Block {
  switch (block.kind) {
    case 'title':
      return { ...block, text: text(block.text), standing: text(block.standing) }
    case 'heading':
    case 'paragraph':
      return { ...block, text: text(block.text) }
    case 'list':
      return { ...block, items: block.items.map(text) }
    case 'table':
      return {
        ...block,
        caption: text(block.caption),
        columns: block.columns.map((column) => ({ ...column, title: text(column.title) })),
        rows: block.rows.map((row) => ({ ...row, cells: row.cells.map(text) })),
        ...(block.foot && { foot: block.foot.map(text) }),
      }
    case 'steps':
      return {
        ...block,
        groups: block.groups.map(({ heading, steps }) => ({
          heading: text(heading),
          steps: steps.map(text),
        })),
      }
    case 'caution':
      return { ...block, title: text(block.title), text: text(block.text) }
    case 'drawing':
      return { ...block, caption: text(block.caption), notes: block.notes.map(text) }
    case 'figure':
      return { ...block, caption: text(block.caption), description: text(block.description) }
    case 'signature':
      return {
        ...block,
        householdName: text(block.householdName),
        party: text(block.party),
        state:
          block.state.kind === 'signed'
            ? { ...block.state, typedName: text(block.state.typedName), intent: text(block.state.intent) }
            : block.state,
      }
  }
}

/** The same drawing with texts that can be printed; so are those of its larger drawings. */
export function printableDrawing(drawing: Drawing, print: Printer): Drawing {
  return {
    ...drawing,
    ...(drawing.details && { details: drawing.details.map((detail) => printableDrawing(detail, print)) }),
    shapes: printableShapes(drawing.shapes, print),
  }
}

export function printableShapes(shapes: readonly Shape[], { text }: Printer): Shape[] {
  return shapes.map((shape) => (shape.kind === 'text' ? { ...shape, text: text(shape.text) } : shape))
}
