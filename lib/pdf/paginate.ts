import { type Mark, moved } from './mark.ts'

/** A strip of the column that is never split. Marks are in points from its own top left corner. */
export type Piece = {
  readonly height: number
  readonly marks: readonly Mark[]
  /** Room above it; none at the head of a page. */
  readonly before: number
  /** True: never the last on a page while the next one could be on it too. */
  readonly keepWithNext: boolean
  /** Stands again above this piece where a page begins with it: the head of its table. */
  readonly head?: Piece | undefined
}

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
    if (y > 0) y += piece.before
    page.push(...piece.marks.map((mark) => moved(mark, { x: 0, y })))
    y += piece.height
  }
  for (const chain of chainsOf(pieces)) {
    const height = heightOf(chain, y > 0)
    // A chain longer than a page is no chain: its pieces go where they fit.
    const loose = heightOf(chain, false) + (chain[0]?.head?.height ?? 0) > columnHeight
    if (!loose && y > 0 && y + height > columnHeight) turn()
    for (const piece of chain) {
      if (loose && y > 0 && y + piece.before + piece.height > columnHeight) turn()
      if (y === 0 && piece.head) put(piece.head)
      put(piece)
    }
  }
  if (page.length > 0 || pages.length === 0) turn()
  return pages
}

/** Pieces that have to stay on one page, in runs. */
function chainsOf(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const chains: Piece[][] = []
  let open = false
  for (const piece of pieces) {
    if (open) chains.at(-1)?.push(piece)
    else chains.push([piece])
    open = piece.keepWithNext
  }
  return chains
}

function heightOf(chain: readonly Piece[], withFirstGap: boolean): number {
  return chain.reduce(
    (sum, piece, index) => sum + piece.height + (index > 0 || withFirstGap ? piece.before : 0),
    0,
  )
}
