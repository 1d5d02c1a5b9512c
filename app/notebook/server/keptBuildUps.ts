import { readyBuildUps } from '../../../lib/core/takeoff/readyBuildUps.ts'
import { isObject, type NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { buildUpRefusals } from '../../../lib/words/pressText.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'

type Kept = Readonly<Record<string, unknown>>
export type BuildUpKind = 'section' | 'gate'

/** The build-ups that a household keeps, as they stand in the file. */
export function keptBuildUps(document: NotebookDocument): readonly Kept[] {
  return Array.isArray(document.buildUps) ? document.buildUps.filter(isObject) : []
}

/** Those that a section or a gate can begin from, each under the name it is kept by. */
export function keptFor(
  document: NotebookDocument,
  kind: BuildUpKind,
): { readonly label: string; readonly buildUp: object }[] {
  return keptBuildUps(document).flatMap((one) => {
    const buildUp = one[kind]
    const name = nameOf(one)
    return isObject(buildUp) ? [{ label: name || 'without a name', buildUp: { ...buildUp, name } }] : []
  })
}

/**
 * What is wrong with the names of kept build-ups: each needs one, and none may be there twice, or be that of a ready one,
 * since a name is all by which they are told apart where a form begins from them.
 */
export function nameFaults(kept: readonly unknown[], pathOf: (index: number) => string): Fault[] {
  const taken = new Map(readyNames.map((name) => [comparable(name), 'a ready build-up']))
  return kept.flatMap((one, index): Fault[] => {
    const name = isObject(one) ? nameOf(one) : ''
    const path = pathOf(index)
    if (name === '') return [{ path, message: buildUpRefusals.unnamed }]
    const other = taken.get(comparable(name))
    taken.set(comparable(name), 'another build-up')
    return other === undefined ? [] : [{ path, message: buildUpRefusals.nameTaken(name, other) }]
  })
}

function nameOf(one: Kept): string {
  return typeof one.name === 'string' ? one.name.trim() : ''
}

function comparable(name: string): string {
  return name.trim().toLowerCase()
}

const readyNames = [
  ...new Set(readyBuildUps.flatMap(({ section, gate }) => [String(section.name), String(gate.name)])),
]
