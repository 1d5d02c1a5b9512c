import type { Millimetres } from '../amounts/length.ts'
import type { CornerPoint, Jambs, Run } from './runs.ts'

export type PostKind = 'line' | 'end' | 'corner' | 'gate' | 'brace'

/** Under which key a build-up says how such a post differs. */
export const specialName: Readonly<Partial<Record<PostKind, 'endPosts' | 'cornerPosts' | 'gatePosts'>>> = {
  end: 'endPosts',
  corner: 'cornerPosts',
  gate: 'gatePosts',
}

/** A length as a key: the same place is the same text. */
export function placeKey({ over, under }: Millimetres): string {
  return `${over}/${under}`
}

/** What meets at the end of a run. */
export type Edge = { runs: number; corner: boolean; gates: number[] }

/** Everything that ends or turns somewhere, by its place. */
export function edgesOf(
  runs: readonly Run[],
  jambs: readonly Jambs[],
  corners: readonly CornerPoint[],
): ReadonlyMap<string, Edge> {
  const edges = new Map<string, Edge>()
  const edgeAt = (at: Millimetres) => {
    const key = placeKey(at)
    const edge = edges.get(key) ?? { runs: 0, corner: false, gates: [] }
    edges.set(key, edge)
    return edge
  }
  for (const { from, to } of runs) {
    edgeAt(from).runs += 1
    edgeAt(to).runs += 1
  }
  for (const { at } of corners) edgeAt(at).corner = true
  for (const { left, right, gate } of jambs) {
    edgeAt(left).gates.push(gate.index)
    edgeAt(right).gates.push(gate.index)
  }
  return edges
}

/** A gate's post before a corner's; where two runs meet in line it is a line post, and alone an end post. */
export function kindAt(edges: ReadonlyMap<string, Edge>, at: Millimetres): PostKind {
  const edge = edges.get(placeKey(at))
  if (edge === undefined) return 'line'
  if (edge.gates.length > 0) return 'gate'
  if (edge.corner) return 'corner'
  return edge.runs > 1 ? 'line' : 'end'
}
