/**
 * Breaks a text into lines no wider than `width`. Lines end at spaces only: a no-break space holds a figure and its unit
 * together. A word wider than the line is cut between characters.
 */
export function breakLines(text: string, width: number, widthOf: (text: string) => number): string[] {
  const lines: string[] = []
  let line = ''
  let lineWidth = 0
  const space = widthOf(' ')
  for (const word of text.split(' ')) {
    const wordWidth = widthOf(word)
    if (line !== '' && lineWidth + space + wordWidth <= width) {
      line += ` ${word}`
      lineWidth += space + wordWidth
      continue
    }
    if (line !== '') lines.push(line)
    const pieces = wordWidth <= width ? [word] : cut(word, width, widthOf)
    lines.push(...pieces.slice(0, -1))
    line = pieces.at(-1) ?? ''
    lineWidth = widthOf(line)
  }
  if (line !== '' || lines.length === 0) lines.push(line)
  return lines
}

function cut(word: string, width: number, widthOf: (text: string) => number): string[] {
  const pieces: string[] = []
  let piece = ''
  let pieceWidth = 0
  for (const character of word) {
    const characterWidth = widthOf(character)
    if (piece !== '' && pieceWidth + characterWidth > width) {
      pieces.push(piece)
      ;[piece, pieceWidth] = ['', 0]
    }
    piece += character
    pieceWidth += characterWidth
  }
  return [...pieces, piece]
}

/** The text, cut with an ellipsis where it is wider than the room. */
export function shortened(text: string, width: number, widthOf: (text: string) => number): string {
  if (widthOf(text) <= width) return text
  let kept = ''
  let keptWidth = widthOf('…')
  for (const character of text) {
    keptWidth += widthOf(character)
    if (keptWidth > width) break
    kept += character
  }
  return `${kept.trimEnd()}…`
}
