import type { Notebook } from '../../core/agreement/notebook.ts'
import type { HeightSeen, LimitHeld } from '../../core/takeoff/heightsSeen.ts'
import type { TakeOff } from '../../core/takeoff/takeOff.ts'
import { dayWords } from '../day.ts'
import { householdName } from '../labels.ts'
import { lengthWords, stationWords, typedLengthWords } from '../length.ts'

/** Heights as each household sees them, and against the limits that somebody named; in words for screens and paper alike. */

/**
 * One sentence for each limit and each ground that it is measured from: what was said by whom and when, and the highest
 * place in its stretch. Empty where no limit is named or nothing stands there.
 */
export function limitSentences(notebook: Notebook, { limits }: Pick<TakeOff, 'limits'>): readonly string[] {
  return limits.map((held) => limitSentence(notebook, held))
}

export function limitSentence(notebook: Notebook, held: LimitHeld): string {
  const long = (length: LimitHeld['at']) => lengthWords(length, notebook.units)
  const limit = notebook.line.limits[held.index]
  const stretch = [
    limit?.from ? ` from ${typedLengthWords(limit.from, notebook.units)}` : '',
    limit?.to ? ` to ${typedLengthWords(limit.to, notebook.units)}` : '',
  ].join('')
  const who = limit?.saidBy.trim() ? `, as said by ${limit.saidBy.trim()}` : ''
  const when = limit?.on ? ` on ${dayWords(limit.on)}` : ''
  return `The limit${stretch} is ${long(held.limit)} over ${groundWords(notebook, held.from)}${who}${when}. The fence is ${long(held.height)} high there at most, ${held.at.over === 0n ? 'at the start of the line' : `at ${long(held.at)}`}: ${held.over ? 'that is over the limit' : 'that is within it'}.`
}

/** Whose ground a height is measured from, in words: "the ground of no. 12", "the higher ground". */
export function groundWords(notebook: Notebook, from: LimitHeld['from']): string {
  if (from === 'higher') return 'the higher ground'
  if (from === 'lower') return 'the lower ground'
  return `the ground of ${householdName(notebook, from)}`
}

/** A row of a table of heights: a place, and the fence's top over each household's own ground. */
export type HeightRow = {
  readonly at: string
  readonly place: string
  readonly a: string
  readonly b: string
}

export function heightTitles(notebook: Notebook): Readonly<Record<keyof HeightRow, string>> {
  return {
    at: 'At',
    place: 'Place',
    a: `Seen by ${householdName(notebook, 'a')}`,
    b: `Seen by ${householdName(notebook, 'b')}`,
  }
}

/** At every station, post and end of a limit's stretch where something stands, in order along the line. */
export function heightRows(notebook: Notebook, { heights }: Pick<TakeOff, 'heights'>): readonly HeightRow[] {
  const long = (length: HeightSeen['at']) => lengthWords(length, notebook.units)
  return heights.map(({ at, place, a, b }) => ({
    at: stationWords(at, notebook.units),
    place: placeWords(place),
    a: long(a),
    b: long(b),
  }))
}

function placeWords(place: HeightSeen['place']): string {
  if ('station' in place) return `station ${place.station + 1}`
  return 'post' in place ? `post ${place.post + 1}` : `limit ${place.limit + 1}`
}
