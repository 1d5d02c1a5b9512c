import { readyBuildUps } from '../../../lib/core/takeoff/readyBuildUps.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import type { TryOffers } from '../forms/trying/TryAChange.tsx'
import { type BuildUpKind, keptFor } from './keptBuildUps.ts'

/** The ready and the kept build-ups by name, with every default of the file in them: what can be tried on an item. */
export function tryOffers(document: NotebookDocument): TryOffers {
  const offered = (kind: BuildUpKind) =>
    [
      ...readyBuildUps.map((one) => ({ label: String(one[kind].name), buildUp: one[kind] as object })),
      ...keptFor(document, kind),
    ].map(({ label, buildUp }) => ({ name: label, [kind]: buildUp }))
  // Read as a notebook of nothing else, so that a build-up is filled in as every other one is.
  const read = readDocument({
    format: document.format,
    version: document.version,
    currency: document.currency,
    households: { a: {}, b: {} },
    buildUps: [...offered('section'), ...offered('gate')],
  })
  const kept = read.ok ? read.value.notebook.buildUps : []
  return {
    sections: Object.fromEntries(kept.flatMap(({ name, section }) => (section ? [[name, section]] : []))),
    gates: Object.fromEntries(kept.flatMap(({ name, gate }) => (gate ? [[name, gate]] : []))),
  }
}
