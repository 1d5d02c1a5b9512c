import loadHighs from 'highs'

const highs = await loadHighs()

type Pieces = readonly (readonly [length: number, count: number])[]

/** Every way to cut at least one piece from a length, by counts of the pieces in their order. */
export function everyPattern(length: number, pieces: Pieces): number[][] {
  let patterns: { readonly counts: number[]; readonly rest: number }[] = [{ counts: [], rest: length }]
  for (const [piece] of pieces) {
    patterns = patterns.flatMap(({ counts, rest }) =>
      Array.from({ length: Math.floor(rest / piece) + 1 }, (_, count) => ({
        counts: [...counts, count],
        rest: rest - count * piece,
      })),
    )
  }
  return patterns.map(({ counts }) => counts).filter((counts) => counts.some((count) => count > 0))
}

/** How many lengths all the pieces take at least, by HiGHS alone over every pattern. Throws where it finds no answer. */
export function leastByEveryPattern(length: number, pieces: Pieces): number {
  const patterns = everyPattern(length, pieces)
  const names = patterns.map((_, at) => `x${at}`)
  const rows = pieces.map(([, count], piece) => {
    const terms = patterns.flatMap((counts, at) =>
      (counts[piece] ?? 0) > 0 ? [`${counts[piece]} x${at}`] : [],
    )
    return ` d${piece}: ${terms.join(' + ')} >= ${count}`
  })
  const model = `Minimize\n n: ${names.join(' + ')}\nSubject To\n${rows.join('\n')}\nGenerals\n ${names.join(' ')}\nEnd`
  const solved = highs.solve(model, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5, time_limit: 60 })
  if (solved.Status !== 'Optimal') throw new Error(`HiGHS ended with ${solved.Status}`)
  return Math.round(solved.ObjectiveValue)
}
