import type { Notebook } from '../core/agreement/notebook.ts'
import { type PlacedLine, placedLine } from '../core/boundary/placedLine.ts'
import type { TakeOff } from '../core/takeoff/takeOff.ts'
import { type BuiltFence, builtFence } from './builtFence.ts'
import type { Grades } from './ground.ts'
import { gradesOf, type Profile, setbackProfile } from './profile.ts'

/** What every drawing of one notebook starts from, read once however many sheets there are. */
export type DrawnLine = {
  readonly placed: PlacedLine
  readonly setbacks: Profile
  readonly grades: Grades
  readonly fence: BuiltFence | undefined
}

export function drawnLine(notebook: Notebook, found: TakeOff | undefined): DrawnLine {
  const { stations } = notebook.line
  return {
    placed: placedLine(notebook),
    setbacks: setbackProfile(stations),
    grades: gradesOf(stations),
    fence: found && found.posts.length > 0 ? builtFence(found) : undefined,
  }
}
