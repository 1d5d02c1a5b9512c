import type { Notebook } from '../agreement/notebook.ts'
import type { Millimetres } from '../amounts/length.ts'
import { asNumber, fromMillimetres } from './exact.ts'
import { countOr, lengthOrNothing } from './neededLength.ts'
import type { LaidRun, PostLayout } from './postLayout.ts'
import { placeKey } from './runEdges.ts'

/** Rail ends of the section that are cut to meet those of another run where the line turns. */
export type MitreCut = {
  readonly post: number
  /** Turn of the line in degrees, as typed; the cut is half of it off square. */
  readonly turn: string
  readonly cutDegrees: number
  /** By how much the rail's longer side is longer: D·tan(turn/2). */
  readonly longer: Millimetres
  readonly ends: number
}

/** Cuts where the rails of two runs meet at a turn of the line, by section; a slope's own angle is left out. */
export function mitreCuts(notebook: Notebook, layout: PostLayout): ReadonlyMap<number, readonly MitreCut[]> {
  const cuts = new Map<number, MitreCut[]>()
  if (layout.corners.length === 0) return cuts
  const turns = new Map(layout.corners.map((corner) => [placeKey(corner.at), corner]))
  const meeting = new Map<string, { run: LaidRun; post: number; rails: number }[]>()
  for (const run of layout.runs) {
    const rails = countOr(notebook.sections[run.section]?.buildUp?.rails.count ?? '', 0)
    if (rails === 0) continue
    for (const [at, post] of [
      [run.from, run.posts[0]],
      [run.to, run.posts.at(-1)],
    ] as const) {
      const key = placeKey(at)
      if (post === undefined || !turns.has(key)) continue
      meeting.set(key, [...(meeting.get(key) ?? []), { run, post, rails }])
    }
  }
  for (const [key, ends] of meeting) {
    const turn = turns.get(key)
    if (turn === undefined || ends.length < 2) continue
    for (const { run, post, rails } of ends) {
      const outside = lengthOrNothing(notebook.sections[run.section]?.buildUp?.rails.outside ?? '')
      const own = cuts.get(run.section) ?? []
      cuts.set(run.section, own)
      const before = own.findIndex((cut) => cut.post === post)
      const cut: MitreCut = {
        post,
        turn: notebook.line.stations[turn.station]?.angle?.degrees ?? '',
        cutDegrees: turn.degrees / 2,
        longer: fromMillimetres(asNumber(outside) * Math.tan((turn.degrees * Math.PI) / 360)),
        ends: rails + (own[before]?.ends ?? 0),
      }
      if (before < 0) own.push(cut)
      else own[before] = cut
    }
  }
  return cuts
}
