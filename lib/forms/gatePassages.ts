import { isSaid, type PassageState } from '../core/shares/passages.ts'
import { type Part, readPart } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'

/** The document with what a gate says of its passages. What is not said is left out of the file. */
export function withPassages(
  document: NotebookDocument,
  gateId: string,
  { uses, passages }: PassageState,
): NotebookDocument {
  return withGate(document, gateId, (gate) => ({
    ...withoutPassages(gate),
    ...(isSaid(uses) ? { uses } : {}),
    ...(passages === undefined ? {} : { passages }),
  }))
}

/** The document after a form was saved, with the passages of the gate as they stood: they are counted, never typed. */
export function keepPassages(
  before: NotebookDocument,
  after: NotebookDocument,
  part: Part,
): NotebookDocument {
  if (part.part !== 'item') return after
  const { uses, passages } = readPart(before, part) ?? {}
  const stood = JSON.stringify([uses, passages])
  return withGate(after, part.id, (gate) =>
    JSON.stringify([gate.uses, gate.passages]) === stood
      ? gate
      : {
          ...withoutPassages(gate),
          ...(uses === undefined ? {} : { uses }),
          ...(passages === undefined ? {} : { passages }),
        },
  )
}

/** A new gate as its form has it: nobody has counted its passages yet. */
export function withoutPassages(draft: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const { uses: _typed, passages: _counted, ...rest } = draft
  return rest
}

/**
 * A notebook file as it is taken in: whose count a household takes is a mark, and an import brings none.
 */
export function withoutTakes(document: NotebookDocument): NotebookDocument {
  const { gates } = document
  if (!Array.isArray(gates) || !gates.some((gate) => isObject(gate) && isObject(gate.passages)))
    return document
  const taken = gates.map((gate) => {
    if (!isObject(gate) || !isObject(gate.passages)) return gate
    const { takes: _marks, ...counts } = gate.passages
    return { ...gate, passages: counts }
  })
  return { ...document, gates: taken }
}

function withGate(
  document: NotebookDocument,
  gateId: string,
  turn: (gate: Record<string, unknown>) => Record<string, unknown>,
): NotebookDocument {
  const { gates } = document
  if (!Array.isArray(gates)) return document
  return {
    ...document,
    gates: gates.map((gate) => (isObject(gate) && gate.id === gateId ? turn(gate) : gate)),
  }
}
