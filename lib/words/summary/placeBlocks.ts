import type { Notebook } from '../../core/agreement/notebook.ts'
import { setbackPoints } from '../../core/boundary/setbackAlong.ts'
import type { TakeOff } from '../../core/takeoff/takeOff.ts'
import { groundSentences } from '../takeoff/groundText.ts'
import { limitSentences } from '../takeoff/heightText.ts'
import { crossingSentences, stripSentences } from '../takeoff/setbackText.ts'
import type { Block } from './block.ts'
import { figuresJoined } from './unbroken.ts'

/**
 * How the fence lies to the line and to the limits that somebody named. Land and holes only where a build-up says what
 * stands there, limits only where one is named: any other paper stays as it always was.
 */
export function placeBlocks(notebook: Notebook, found: TakeOff | undefined): Block[] {
  if (found === undefined) return []
  const land =
    found.posts.length > 0 && setbackPoints(notebook.line.stations).length > 0
      ? [...stripSentences(notebook, found), ...crossingSentences(notebook, found)]
      : []
  const limits = limitSentences(notebook, found)
  return [
    ...passage('land-and-holes', 'Land and holes', land),
    ...passage(
      'height-limits',
      'Limits on height',
      limits.length === 0 ? [] : [...limits, ...groundSentences(notebook, found)],
    ),
  ]
}

function passage(id: string, text: string, sentences: readonly string[]): Block[] {
  if (sentences.length === 0) return []
  return [
    { kind: 'heading', level: 2, id, text },
    ...sentences.map((sentence): Block => ({ kind: 'paragraph', text: figuresJoined(sentence) })),
  ]
}
