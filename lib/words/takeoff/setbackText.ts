import type { Notebook } from '../../core/agreement/notebook.ts'
import { setbackPoints } from '../../core/boundary/setbackAlong.ts'
import type { TakeOff } from '../../core/takeoff/takeOff.ts'
import { householdName } from '../labels.ts'
import { lengthWords, stationWords } from '../length.ts'
import { spokenList } from '../summary/names.ts'
import { many, roughAreaWords } from './figures.ts'

/**
 * How the fence lies to the line, in words for screens and paper alike: land that ends up on the other side, and holes that
 * reach across.
 */

/**
 * For each household whose land ends up on the other side of the fence a sentence with its area; one sentence where there
 * is none. Empty where no two stations say a setback.
 */
export function stripSentences(
  notebook: Notebook,
  { setbacks }: Pick<TakeOff, 'setbacks'>,
): readonly string[] {
  const { strips } = setbacks
  const sides = (['a', 'b'] as const).filter((side) => strips[side].over > 0n)
  if (sides.length > 0)
    return sides.map((side) => {
      const other = householdName(notebook, side === 'a' ? 'b' : 'a')
      return `A strip of ${roughAreaWords(strips[side], notebook.units)} of the land of ${householdName(notebook, side)} ends up on the side of ${other}. It stays the land of ${householdName(notebook, side)}.`
    })
  return setbackPoints(notebook.line.stations).length > 1
    ? ['No strip of land ends up on the other side of the fence.']
    : []
}

/**
 * Which holes or posts reach across the line, and for which it can't be told and why: one sentence each, or one that none
 * does. Empty where there is no post.
 */
export function crossingSentences(notebook: Notebook, { posts, setbacks }: TakeOff): readonly string[] {
  if (posts.length === 0) return []
  const { error } = notebook.line
  const answers = setbacks.posts.map(({ crosses, setback }, index) => ({
    post: index + 1,
    answer: crosses === 'cannot tell' && setback === undefined ? 'not said' : crosses,
  }))
  const numbers = (asked: (typeof answers)[number]['answer']) =>
    answers.flatMap(({ answer, post }) => (answer === asked ? [post] : []))
  const [across, unsure, unsaid] = [numbers('yes'), numbers('cannot tell'), numbers('not said')]
  if (across.length + unsure.length + unsaid.length === 0)
    return [
      `No hole and no post reaches across the line${error === '' ? '' : `, even if it lies ${error} to either side`}.`,
    ]
  return [
    ...(across.length === 0
      ? []
      : [`At ${postsWords(across)} the hole or the post itself reaches across the line.`]),
    ...(unsure.length === 0
      ? []
      : [
          `At ${postsWords(unsure)} it can’t be told if the hole reaches across. The line may lie ${error} to either side.`,
        ]),
    ...(unsaid.length === 0
      ? []
      : [
          `At ${postsWords(unsaid)} it can’t be told. No station says how far off the line the fence is there.`,
        ]),
  ]
}

/** "post 3", "posts 3, 4 and 9", or how many where they are more than a few. */
function postsWords(numbers: readonly number[]): string {
  if (numbers.length > 6) return many(numbers.length, 'post')
  return `${numbers.length === 1 ? 'post' : 'posts'} ${spokenList(numbers.map(String))}`
}

/** A row of a table of posts, one for each of `takeOff.posts`, in order. */
export type SetbackRow = {
  readonly post: string
  readonly at: string
  /** "2 in on the land of no. 12", "on the line", "not said yet". */
  readonly stands: string
  /** How far the hole or the post reaches from its centre. */
  readonly reach: string
  /** "yes", "no", "can’t be told". */
  readonly crosses: string
}
export const setbackTitles = {
  post: 'Post',
  at: 'At',
  stands: 'Its middle stands',
  reach: 'Reach of its hole',
  crosses: 'Across the line',
} as const

export function setbackRows(notebook: Notebook, { posts, setbacks }: TakeOff): readonly SetbackRow[] {
  const long = (length: Parameters<typeof lengthWords>[0]) => lengthWords(length, notebook.units)
  return posts.flatMap(({ post }, index) => {
    const lies = setbacks.posts[index]
    if (lies === undefined) return []
    return [
      {
        post: String(index + 1),
        at: stationWords(post.at, notebook.units),
        stands: standsWords(notebook, lies.setback),
        reach: long(lies.reach),
        crosses: lies.crosses === 'cannot tell' ? 'can’t be told' : lies.crosses,
      },
    ]
  })
}

function standsWords(notebook: Notebook, setback: TakeOff['setbacks']['posts'][number]['setback']): string {
  if (setback === undefined) return 'not said yet'
  if (setback.over === 0n) return 'on the line'
  const size = setback.over < 0n ? { over: -setback.over, under: setback.under } : setback
  return `${lengthWords(size, notebook.units)} on the land of ${householdName(notebook, setback.over > 0n ? 'a' : 'b')}`
}
