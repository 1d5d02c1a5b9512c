import type { Notebook } from '../../core/agreement/notebook.ts'
import { type TakeOff, takeOff } from '../../core/takeoff/takeOff.ts'

/** The take-off, where the notebook says anything that it could tell the paper. */
export function takenOff(notebook: Notebook): TakeOff | undefined {
  const { sections, gates, line } = notebook
  const built = [...sections, ...gates].some(({ buildUp }) => buildUp !== undefined)
  return built || line.limits.length > 0 ? takeOff(notebook) : undefined
}
