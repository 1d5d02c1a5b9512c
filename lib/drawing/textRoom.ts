/**
 * About how wide a text is, in units of its size. The drawing is read in faces it does not know, so this is reckoned on
 * the wide side.
 */
export function textWidth(text: string, size: number): number {
  let ems = 0
  for (const character of text) ems += emsOf(character)
  return ems * size
}

/** After the widths of a wide sans serif (DejaVu Sans), which phones and desktops fall back to. */
function emsOf(character: string): number {
  if (/[\s.,:;'’|!ilj]/.test(character)) return 0.34
  if (/[frtI()/-]/.test(character)) return 0.42
  if (/[mwMW%—]/.test(character)) return 0.97
  if (/[A-Z]/.test(character)) return 0.74
  // Scripts with wide signs, and pictures.
  if ((character.codePointAt(0) ?? 0) >= 0x1100) return 1.1
  return 0.64
}

/** The text in as many lines as the room asks for, broken at spaces; a word that is wider than the room is cut. */
export function wrapped(text: string, size: number, room: number): readonly string[] {
  if (text.length <= 400 && textWidth(text, size) <= room) return [text]
  const lines: string[] = []
  let line = ''
  for (const word of text.slice(0, 1000).split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && textWidth(longer, size) > room) {
      lines.push(line)
      line = word
    } else line = longer
  }
  return [...lines, line].map((one) => fitted(one, size, room))
}

/** The text in no more lines than these, the last one cut where there is more. */
export function linesUpTo(most: number, text: string, size: number, room: number): readonly string[] {
  const lines = wrapped(text, size, room)
  if (lines.length <= most) return lines
  return [...lines.slice(0, most - 1), fitted(lines.slice(most - 1).join(' '), size, room)]
}

/** The text, cut with an ellipsis where it is wider than the room; empty where not even one letter fits. */
export function fitted(text: string, size: number, room: number): string {
  // Far longer than any drawing is wide: cut first, so that no text costs much to measure.
  const short = [...text.slice(0, 400)]
  if (text.length <= 400 && textWidth(text, size) <= room) return text
  let width = textWidth('…', size)
  let kept = ''
  for (const character of short) {
    width += textWidth(character, size)
    if (width > room) break
    kept += character
  }
  return kept.trimEnd() === '' ? '' : `${kept.trimEnd()}…`
}
