import type { Household } from '../core/people/household.ts'
import { hatchMarks } from '../drawing/hatchMarks.ts'
import type { SignatureBlock } from '../words/summary/block.ts'
import { paperWords } from '../words/summary/paperWords.ts'
import type { Faces } from './faces.ts'
import { box, type Mark, tagged } from './mark.ts'
import type { Piece } from './paginate.ts'
import type { StructureElement } from './structureElement.ts'
import { linesOf, styles, type TextStyle, textMark } from './textPieces.ts'

type Line = { readonly text: string; readonly style: TextStyle; readonly tag: StructureElement }

const stripWidth = 9
const padding = 8
const drawnBox = { width: 165, height: 55 } as const

/**
 * One party's signature: who, for which household, in what capacity; the typed name, the sentence, when, and the drawn
 * lines. Not split over pages unless it is taller than one.
 */
export function signaturePieces(
  block: SignatureBlock,
  faces: Faces,
  width: number,
  columnHeight: number,
): Piece[] {
  const textWidth = width - stripWidth - 3 * padding - drawnBox.width
  const place: StructureElement = { role: 'Sect' }
  const lines: Line[] = textsOf(block).flatMap(({ text, style }) => {
    const tag: StructureElement = { role: 'P', parent: place }
    return linesOf(text, textWidth, style, faces).map((line) => ({ text: line, style, tag }))
  })
  const most = Math.floor((columnHeight - 2 * padding) / styles.strong.lineHeight)
  const count = Math.max(1, Math.ceil(lines.length / most))
  return Array.from({ length: count }, (_, index) => {
    const part = lines.slice(index * most, (index + 1) * most)
    return signaturePiece(block, part, place, index === 0, width)
  })
}

function textsOf({
  party,
  capacity,
  householdName,
  state,
}: SignatureBlock): { text: string; style: TextStyle }[] {
  const who = [
    { text: party, style: styles.strong },
    { text: `${householdName}, ${capacity}`, style: styles.cell },
  ]
  if (state.kind === 'not signed yet') return [...who, { text: state.text, style: styles.strong }]
  return [
    ...who,
    { text: `Signed as: ${state.typedName}`, style: styles.body },
    { text: `“${state.intent}”`, style: styles.cell },
    { text: state.when, style: styles.strong },
  ]
}

function signaturePiece(
  block: SignatureBlock,
  lines: readonly Line[],
  place: StructureElement,
  first: boolean,
  width: number,
): Piece {
  let y = padding
  const texts = lines.map(({ text, style, tag }): Mark => {
    const mark = textMark(text, { x: stripWidth + padding, y }, style)
    y += style.lineHeight
    return tagged(mark, tag)
  })
  const height = Math.max(y + padding, first ? drawnBox.height + 2 * padding : 0)
  const x = width - drawnBox.width - padding
  const signed = block.state.kind === 'signed'
  // Whoever signed by typed name alone left nothing out: an empty box would look like a missing signature.
  const boxed = !signed || (block.state.kind === 'signed' && (block.state.drawing ?? '') !== '')
  return {
    height,
    before: first ? 8 : 0,
    keepWithNext: false,
    marks: [
      { kind: 'polygon', points: box(0, 0, width, height), stroke: { ink: 'rule', width: 0.8 } },
      ...patternMarks(block.household, height),
      ...texts,
      ...(first && boxed
        ? [
            {
              kind: 'polygon' as const,
              points: box(x, padding, drawnBox.width, drawnBox.height),
              stroke: { ink: 'rule' as const, width: 0.6, ...(signed ? {} : { dash: [3, 3] }) },
            },
          ]
        : []),
      ...(first && block.state.kind === 'signed'
        ? strokeMarks(block.state.drawing ?? '', x, padding, {
            role: 'Figure',
            parent: place,
            alternative: paperWords.drawnSignature(block.party),
          })
        : []),
    ],
  }
}

export function patternMarks(household: Household, height: number): Mark[] {
  const { lines, dots } = hatchMarks({ kind: 'hatch', household, x: 0, y: 0, width: stripWidth, height })
  return [
    { kind: 'polygon', points: box(0, 0, stripWidth, height), fill: household === 'a' ? 'soft-a' : 'soft-b' },
    ...lines.map(
      (line): Mark => ({ kind: 'polyline', points: [line.from, line.to], stroke: { ink: 'a', width: 0.9 } }),
    ),
    ...dots.map((dot): Mark => ({ kind: 'circle', ...dot, fill: 'b' })),
  ]
}

/** The strokes of a drawn signature, from its box of 600 × 200. A path of any other form is not drawn. */
function strokeMarks(path: string, left: number, top: number, tag: StructureElement): Mark[] {
  if (!/^(M\d{1,3} \d{1,3}(L\d{1,3} \d{1,3})+)+$/.test(path)) return []
  const factor = drawnBox.width / 600
  return path
    .split('M')
    .slice(1)
    .map(
      (stroke): Mark => ({
        kind: 'polyline',
        points: stroke.split('L').map((pair) => {
          const [x = 0, y = 0] = pair.split(' ').map(Number)
          return { x: left + Math.min(x, 600) * factor, y: top + Math.min(y, 200) * factor }
        }),
        stroke: { ink: 'ink', width: 1.1 },
        round: true,
        tag,
      }),
    )
}
