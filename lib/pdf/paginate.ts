import { type Mark, moved } from './mark.ts'

/** A strip of the column that is never split. Marks are in points from its own top left corner. */
export type Piece = {
  readonly height: number
  readonly marks: readonly Mark[]
  /** Room above it; none at the head of a page. */
  readonly before: number
  /** True: never the last on a page while the next one could be on it too. */
  readonly keepWithNext: boolean
  /** It is parted from the next one all the same, rather than leave a hole at the foot of a page. */
  readonly mayPart?: boolean | undefined
  /** Stands again above this piece where a page begins with it: the head of its table. */
  readonly head?: Piece | undefined
  /** The same a little lower, taken where only that fits under what stands on the page. */
  readonly lower?: Piece | undefined
}

/** As much of a column is left empty rather than part what may be parted. */
const hole = 1 / 5

/** The pieces on pages of one column, each page's marks from the column's top left corner. */
export function paginate(pieces: readonly Piece[], columnHeight: number): Mark[][] {
  const pages: Mark[][] = []
  let page: Mark[] = []
  let y = 0
  const turn = () => {
    pages.push(page)
    ;[page, y] = [[], 0]
  }
  const put = (piece: Piece) => {
    if (y === 0 && piece.head) put(piece.head)
    if (y > 0) y += piece.before
    page.push(...piece.marks.map((mark) => moved(mark, { x: 0, y })))
    y += piece.height
  }
  const fits = (chain: readonly Piece[]) => y + heightOf(chain, y > 0) <= columnHeight
  const place = (chain: readonly Piece[]) => {
    const lower = chain.map((piece) => piece.lower ?? piece)
    const laid = !fits(chain) && y > 0 && fits(lower) ? lower : chain
    const taller = heightOf(chain, false) + (chain[0]?.head?.height ?? 0) > columnHeight
    if (y === 0 && !taller) laid.forEach(put)
    else if (fits(laid)) laid.forEach(put)
    else {
      const parts = runsOf(chain, ({ keepWithNext, mayPart }) => keepWithNext && mayPart !== true)
      const open = columnHeight - y > columnHeight * hole
      if (parts.length > 1 && (taller || open)) parts.forEach(place)
      else if (taller) chain.forEach(putAlone)
      else {
        turn()
        chain.forEach(put)
      }
    }
  }
  // A run longer than a page is no run: its pieces go where they fit.
  const putAlone = (piece: Piece) => {
    if (y > 0 && y + piece.before + piece.height > columnHeight) turn()
    put(piece)
  }
  for (const chain of runsOf(pieces, ({ keepWithNext }) => keepWithNext)) place(chain)
  if (page.length > 0 || pages.length === 0) turn()
  return pages
}

/** Pieces in runs, each as long as its pieces stay with the next one. */
function runsOf(pieces: readonly Piece[], stays: (piece: Piece) => boolean): readonly (readonly Piece[])[] {
  const runs: Piece[][] = []
  let open = false
  for (const piece of pieces) {
    if (open) runs.at(-1)?.push(piece)
    else runs.push([piece])
    open = stays(piece)
  }
  return runs
}

function heightOf(chain: readonly Piece[], withFirstGap: boolean): number {
  return chain.reduce(
    (sum, piece, index) => sum + piece.height + (index > 0 || withFirstGap ? piece.before : 0),
    0,
  )
}
