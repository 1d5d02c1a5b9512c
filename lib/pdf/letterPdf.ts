import type { Units } from '../core/agreement/notebook.ts'
import type { Letter } from '../words/letter/letterText.ts'
import { enlarged, reductions } from './enlarged.ts'
import { facesOf } from './faces.ts'
import { letterPieces } from './letterPieces.ts'
import { bytesOf, makeDocument } from './makeDocument.ts'
import { moved } from './mark.ts'
import { columnHeight, columnWidth, type PageSize, pageSize } from './pageSize.ts'
import { type Piece, paginate } from './paginate.ts'
import type { PrintFonts } from './pdfInput.ts'
import { printer } from './printable.ts'
import { styles } from './textPieces.ts'

export type LetterPaper = {
  readonly letter: Letter
  readonly units: Units
  readonly fonts: PrintFonts
  readonly madeAt?: Date
}

/** By how much a letter is too long for its page: in lines of the smallest print, and in characters of such lines. */
export type TooLong = { readonly lines: number; readonly characters: number }

type Laid = { readonly reduction: number; readonly page: PageSize; readonly pieces: readonly Piece[] }

/** Whether a letter fits on one page; by how much not. Makes no PDF. */
export function letterOverflow(paper: LetterPaper): TooLong | undefined {
  const laid = layOutLetter(paper)
  return 'lines' in laid ? laid : undefined
}

/** A letter on exactly one page, a little smaller where it would run over. Same input, same bytes. */
export async function letterPdf(paper: LetterPaper): Promise<{ readonly bytes: Uint8Array } | TooLong> {
  const laid = layOutLetter(paper)
  if ('lines' in laid) return laid
  const { page, pieces, reduction } = laid
  const { letter, fonts, madeAt } = paper
  const marks = pieces.length === 0 ? [] : (paginate(pieces, columnHeight(page))[0] ?? [])
  const document = await makeDocument(
    [marks.map((mark) => moved(mark, { x: page.left, y: page.top }))],
    page,
    { title: letter.title, language: 'en', madeAt, reduction },
    fonts,
  )
  return { bytes: await bytesOf(document) }
}

/** More characters than this are on no page, and laying them out would only take time. */
const farTooMany = 100_000

function layOutLetter({ letter, units, fonts }: LetterPaper): Laid | TooLong {
  const faces = facesOf(fonts)
  const print = printer(faces.canPrint)
  const whole = pageSize(units)
  const lay = (reduction: number): Laid => {
    const page = enlarged(whole, reduction)
    return { reduction, page, pieces: letterPieces(letter, print, faces, page, reduction) }
  }
  const fits = (laid: Laid) => paginate(laid.pieces, columnHeight(laid.page)).length === 1
  const { lineHeight, size, weight } = styles.body
  const least = reductions[reductions.length - 1] ?? 1
  // An English text has about as many letters of each width as this sample.
  const sample = 'the quick brown fox jumps over the lazy dog and then rests by the old fence'
  const perLine = (columnWidth(enlarged(whole, least)) * sample.length) / faces.widthOf(sample, size, weight)
  const long = letter.contents.reduce((sum, { sentences }) => sum + sentences.join(' ').length, 0)
  if (long > farTooMany) return tooLong(Math.ceil(long / perLine), perLine)
  // The smallest first: what does not fit there fits nowhere.
  const smallest = lay(least)
  if (fits(smallest)) return reductions.map(lay).find(fits) ?? smallest
  const { page, pieces } = smallest
  const height = pieces.reduce((sum, piece, index) => sum + piece.height + (index > 0 ? piece.before : 0), 0)
  return tooLong(Math.ceil((height - columnHeight(page)) / lineHeight), perLine)
}

/** A line more than the overflow, so that whoever shortens by as many characters is done. */
function tooLong(lines: number, perLine: number): TooLong {
  return { lines, characters: Math.ceil(((lines + 1) * perLine) / 50) * 50 }
}
