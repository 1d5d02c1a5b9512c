import {
  addressByHand,
  type Letter,
  squareCodeAlternative,
  squareCodeWords,
} from '../words/letter/letterText.ts'
import type { Faces } from './faces.ts'
import { type Mark, rule, tagged } from './mark.ts'
import { columnWidth, type PageSize } from './pageSize.ts'
import type { Piece } from './paginate.ts'
import type { Printer } from './printable.ts'
import { squareCode } from './squareCode.ts'
import type { StructureElement } from './structureElement.ts'
import { linesOf, styles, type TextStyle, textMark, textPieces } from './textPieces.ts'

/** A square of 30 mm, so that a phone reads it from a hand's length away; in points. */
const codeSide = (30 / 25.4) * 72

/**
 * A letter as strips of a column, tagged with its structure.
 *
 * @param reduction how much smaller all of it is printed: the square code keeps its size on paper
 */
export function letterPieces(
  letter: Letter,
  print: Printer,
  faces: Faces,
  page: PageSize,
  reduction: number,
): Piece[] {
  const width = columnWidth(page)
  const text = (words: string, style: TextStyle, role: 'H1' | 'H2' | 'P', before: number) =>
    textPieces(print.text(words), style, faces, { width, before, tag: { role }, keepWithNext: role !== 'P' })
  const part = (heading: string, sentences: readonly string[]) => [
    ...text(heading, styles.part, 'H2', 9),
    ...sentences.flatMap((sentence) => text(sentence, styles.body, 'P', 1)),
  ]
  return [
    ...text(letter.title, styles.title, 'H1', 0),
    ...text(letter.line, styles.standing, 'P', 2),
    ...text(letter.opening, styles.body, 'P', 7),
    ...letter.contents.flatMap(({ heading, sentences }) => part(heading, sentences)),
    ...text(letter.invitation.heading, styles.part, 'H2', 9),
    ...invitationPieces(letter, print, faces, width, reduction),
    ...text(letter.closing, styles.body, 'P', 7),
    ...text(letter.signed, styles.strong, 'P', 9),
  ]
}

function invitationPieces(
  { invitation }: Letter,
  print: Printer,
  faces: Faces,
  width: number,
  reduction: number,
): Piece[] {
  const words = print.text(invitation.words)
  if (invitation.kind !== 'address') {
    const told = textPieces(words, styles.body, faces, { width, before: 1, tag: { role: 'P' } })
    return invitation.kind === 'none' ? told : [...told, lineToWriteOn(width)]
  }
  const { marks, whole } = squareCode(invitation.address, codeSide * reduction)
  const figure: StructureElement = { role: 'Figure', alternative: squareCodeAlternative }
  const left = whole + 4
  const style = styles.body
  const paragraphs = [squareCodeWords, words].map((one) => linesOf(one, width - left, style, faces))
  let y = (whole - paragraphs.flat().length * style.lineHeight - 4) / 2
  const beside = paragraphs.flatMap((lines) => {
    const tag: StructureElement = { role: 'P' }
    const set = lines.map((line, index) =>
      tagged(textMark(line, { x: left, y: y + index * style.lineHeight }, style), tag),
    )
    y += lines.length * style.lineHeight + 4
    return set
  })
  const square: Piece = {
    height: whole,
    before: 0,
    keepWithNext: true,
    marks: [...marks.map((mark) => tagged(mark, figure)), ...beside],
  }
  return [square, ...addressPieces(print.text(invitation.address), faces, width)]
}

/** The address in one line where it fits, so that it can be typed off and copied whole. */
function addressPieces(address: string, faces: Faces, width: number): Piece[] {
  const fitting = [9.5, 9, 8.5, 8, 7.5, 7].find((size) => faces.widthOf(address, size, 'semibold') <= width)
  const style: TextStyle = { ...styles.strong, size: fitting ?? 8 }
  return textPieces(address, style, faces, { width, before: 0, tag: { role: 'P' } })
}

function lineToWriteOn(width: number): Piece {
  const mark: Mark = tagged(textMark(addressByHand, { x: 0, y: 0 }, styles.small), { role: 'P' })
  const y = 40
  return {
    height: y + 2,
    before: 4,
    keepWithNext: false,
    marks: [mark, rule({ x: 0, y }, { x: width, y }, 'ink', 0.6)],
  }
}
