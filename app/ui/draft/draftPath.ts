/**
 * Reading and changing a plain draft at a path such as `sections[0].share.materials.a`. Nothing is ever changed in
 * place: every change returns a new draft that shares what was left alone. '' is the whole draft.
 */
export type DraftStep = string | number

const stepPattern = /(?:^|\.)([^.[\]]+)|\[(0|[1-9][0-9]*)\]/y

/** The steps of a path. Throws on a path that is not one: paths are written by the program, not typed. */
export function stepsOf(path: string): readonly DraftStep[] {
  const steps: DraftStep[] = []
  stepPattern.lastIndex = 0
  let at = 0
  while (at < path.length) {
    const found = stepPattern.exec(path)
    if (found === null) throw new Error(`Not a path into a draft: ${path}`)
    steps.push(found[1] ?? Number(found[2]))
    at = stepPattern.lastIndex
  }
  return steps
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function childOf(value: unknown, step: DraftStep): unknown {
  if (typeof step === 'number') return Array.isArray(value) ? value[step] : undefined
  return isRecord(value) && Object.hasOwn(value, step) ? value[step] : undefined
}

/** What stands at the path; undefined where nothing does. */
export function getAt(draft: unknown, path: string): unknown {
  return stepsOf(path).reduce<unknown>(childOf, draft)
}

function withChild(value: unknown, step: DraftStep, child: unknown): unknown {
  if (typeof step === 'string') return { ...(isRecord(value) ? value : {}), [step]: child }
  const list: unknown[] = Array.isArray(value) ? [...value] : []
  // A gap would be saved as an empty row that nobody made.
  if (step > list.length) throw new RangeError(`A list of ${list.length} has no place ${step}`)
  list[step] = child
  return list
}

function changedAt(value: unknown, steps: readonly DraftStep[], change: (old: unknown) => unknown): unknown {
  const [step, ...rest] = steps
  if (step === undefined) return change(value)
  return withChild(value, step, changedAt(childOf(value, step), rest, change))
}

/** The draft with `value` at the path. Objects and lists that are missing on the way are made. */
export function setAt(draft: unknown, path: string, value: unknown): unknown {
  return changedAt(draft, stepsOf(path), () => value)
}

/** The draft without the key or the list entry at the path; the same draft where nothing stands there. */
export function removeAt(draft: unknown, path: string): unknown {
  const steps = stepsOf(path)
  const last = steps.at(-1)
  if (last === undefined) throw new Error('The whole draft cannot be removed')
  const parentSteps = steps.slice(0, -1)
  const parent = parentSteps.reduce<unknown>(childOf, draft)
  if (childOf(parent, last) === undefined && !(isRecord(parent) && Object.hasOwn(parent, last))) return draft
  return changedAt(draft, parentSteps, (old) => {
    if (typeof last === 'number') return listOf(old).filter((_, at) => at !== last)
    const { [last]: _gone, ...kept } = old as Readonly<Record<string, unknown>>
    return kept
  })
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : []
}

/** The list at the path; empty where there is none. */
export function listAt(draft: unknown, path: string): readonly unknown[] {
  return listOf(getAt(draft, path))
}

/** The draft with `value` put into the list at `path`, before the entry at `index`; at its end where that is past it. */
export function insertAt(draft: unknown, path: string, index: number, value: unknown): unknown {
  return changedAt(draft, stepsOf(path), (old) => listOf(old).toSpliced(index, 0, value))
}

/** The draft with the entry `from` of the list at `path` moved to `to`; the same draft where either is not in the list. */
export function moveAt(draft: unknown, path: string, from: number, to: number): unknown {
  const list = listAt(draft, path)
  if (!(from in list) || !(to in list) || from === to) return draft
  return changedAt(draft, stepsOf(path), () => list.toSpliced(from, 1).toSpliced(to, 0, list[from]))
}

/** What a text field shows: a missing value reads as ''. */
export function textAt(draft: unknown, path: string): string {
  const value = getAt(draft, path)
  if (typeof value === 'string') return value
  return typeof value === 'number' ? String(value) : ''
}
