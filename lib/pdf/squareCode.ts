import qrcode from 'qrcode-generator'
import { box, type Mark } from './mark.ts'

/** Light modules that have to stay free on every side (ISO/IEC 18004: four). */
export const quietModules = 4

/**
 * A text as a square code of two dimensions (ISO/IEC 18004) for a camera, as filled boxes: one for each run of dark
 * modules in a row. The free margin around it is part of the square.
 *
 * @param text at most 2,331 bytes; more is thrown
 * @param side of the dark part alone, in points, from the first dark module to the last
 * @returns the marks from the corner of the whole square, margin included, and the whole square's side
 */
export function squareCode(text: string, side: number): { readonly marks: Mark[]; readonly whole: number } {
  const code = qrcode(0, 'M')
  code.addData(text, 'Byte')
  code.make()
  const count = code.getModuleCount()
  const module = side / count
  const margin = quietModules * module
  const marks: Mark[] = []
  for (let row = 0; row < count; row += 1) {
    for (let start = 0; start < count; start += 1) {
      let end = start
      while (end < count && code.isDark(row, end)) end += 1
      if (end === start) continue
      const points = box(margin + start * module, margin + row * module, (end - start) * module, module)
      marks.push({ kind: 'polygon', points, fill: 'ink' })
      start = end
    }
  }
  return { marks, whole: side + 2 * margin }
}
