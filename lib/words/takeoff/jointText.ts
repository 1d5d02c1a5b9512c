import type { Notebook } from '../../core/agreement/notebook.ts'
import type { SlipPlaces, SplicePlace } from '../../core/takeoff/jointPlaces.ts'
import type { MitreCut } from '../../core/takeoff/mitreCuts.ts'
import type { ShopWork } from '../../core/takeoff/shopWork.ts'
import { lengthWords, stationWords } from '../length.ts'
import { spokenList } from '../summary/names.ts'
import { many, plainFigure } from './figures.ts'

/**
 * Where slip joints, splices and mitres of a section fall, each a sentence; empty where there are none. `work` is that of
 * one of `takeOff(notebook).sections`. Posts are numbered along the whole line, as everywhere.
 */
export function jointSentences(notebook: Notebook, { places }: Pick<ShopWork, 'places'>): readonly string[] {
  return [
    ...places.slips.map((slip) => slipText(notebook, slip)),
    ...places.splices.map((splice) => spliceText(notebook, splice)),
    ...places.mitres.map((mitre) => mitreText(notebook, mitre)),
  ]
}

export function slipText({ units }: Notebook, { from, to, posts, withoutPost }: SlipPlaces): string {
  const run = `The run from ${stationWords(from, units)} to ${stationWords(to, units)}`
  const at = posts.length === 0 ? '' : `${run} gets slip joints at ${postList(posts)}.`
  const more =
    withoutPost === 0
      ? ''
      : `${at === '' ? run : 'It'} asks for ${withoutPost} more than it has posts between its ends.`
  return [at, more].filter(Boolean).join(' ')
}

export function spliceText({ units }: Notebook, { at, rails, between }: SplicePlace): string {
  return `At ${stationWords(at, units)}, between ${postList(between)}, ${rails === 1 ? 'one rail is' : `${rails} rails are`} spliced.`
}

export function mitreText({ units }: Notebook, { post, turn, cutDegrees, longer, ends }: MitreCut): string {
  const side = longer.over === 0n ? '' : `, the longer side ${lengthWords(longer, units)} longer`
  return `At post ${post + 1} the line turns by ${turn} degrees: cut ${many(ends, 'rail end')} ${plainFigure(cutDegrees, 2)} degrees off square${side}.`
}

function postList(posts: readonly number[]): string {
  return `${posts.length === 1 ? 'post' : 'posts'} ${spokenList(posts.map((post) => String(post + 1)))}`
}
