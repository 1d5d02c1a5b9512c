import loadHighs from 'highs'
import type { CutRequest } from '../../lib/cutting/cutRequest.ts'

const highs = await loadHighs()

/**
 * The least length that must be bought, by a model of its own and HiGHS alone: a length is a path of pieces from its start
 * to a place that it reaches (the arc-flow model of Valério de Carvalho 1999, from memory). For short lengths in whole
 * units. Undefined where not everything can be placed; throws where HiGHS does not come to the end.
 */
export function leastByArcFlow({ pieces, stock, kerf }: CutRequest): number | undefined {
  const longest = Math.max(...stock.map(({ length }) => length)) + kerf
  const flow = new Map<number, string[]>()
  const add = (place: number, term: string) => flow.set(place, [...(flow.get(place) ?? []), term])
  const variables: string[] = []
  const demands = pieces.map(() => [] as string[])
  const ends = stock.map(() => [] as string[])
  const reached = new Set([0])
  for (let place = 0; place <= longest; place += 1) {
    if (!reached.has(place)) continue
    pieces.forEach(({ length, count }, piece) => {
      const next = place + length + kerf
      if (next > longest || count === 0) return
      const name = `x_${place}_${piece}`
      variables.push(name)
      demands[piece]?.push(name)
      add(place, `- ${name}`)
      add(next, `+ ${name}`)
      reached.add(next)
    })
    if (place === 0) continue
    stock.forEach(({ length }, kind) => {
      if (place > length + kerf) return
      const name = `e_${place}_${kind}`
      variables.push(name)
      ends[kind]?.push(name)
      add(place, `- ${name}`)
    })
  }
  const cost = stock.flatMap(({ length, bought }, kind) =>
    bought ? (ends[kind] ?? []).map((name) => `${length} ${name}`) : [],
  )
  const rows = [
    ...[...flow].filter(([place]) => place > 0).map(([, terms]) => `${terms.join(' ')} = 0`),
    ...pieces.flatMap(({ count }, piece) =>
      count > 0 ? [`${demands[piece]?.join(' + ') || '0 nothing'} >= ${count}`] : [],
    ),
    ...stock.flatMap(({ count }, kind) =>
      count === undefined || !ends[kind]?.length ? [] : [`${ends[kind]?.join(' + ')} <= ${count}`],
    ),
  ]
  const model = [
    'Minimize',
    ` cost: ${cost.join(' + ') || '0 nothing'}`,
    'Subject To',
    ...rows.map((row, at) => ` r${at}: ${row}`),
    'Bounds',
    ' nothing = 0',
    'Generals',
    ` ${variables.join(' ')}`,
    'End',
  ].join('\n')
  const solved = highs.solve(model, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5, time_limit: 60 })
  if (solved.Status === 'Infeasible') return undefined
  if (solved.Status !== 'Optimal') throw new Error(`HiGHS ended with ${solved.Status}`)
  return Math.round(solved.ObjectiveValue)
}
