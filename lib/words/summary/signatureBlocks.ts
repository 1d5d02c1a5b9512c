import { type Capacity, capacities } from '../../core/agreement/notebook.ts'
import { type PartyPlace, type Signature, signingParties } from '../../core/agreement/revision.ts'
import { momentWords } from '../day.ts'
import { capacityWords } from '../labels.ts'
import type { Block, SignatureState } from './block.ts'
import { householdStart } from './names.ts'
import type { SummaryInput } from './summaryInput.ts'

/** A place for every party's signature, with what it signed and when. */
export function signatureBlocks({ notebook, standing, signatures, history }: SummaryInput): Block[] {
  const places = signingParties(notebook)
  const lead =
    standing.kind === 'draft'
      ? 'A draft can’t be signed. It is put up for signing when both households have agreed on every part.'
      : `Each party signs revision ${standing.number} for itself. Times are in UTC.`
  return [
    { kind: 'heading', level: 1, id: 'signatures', text: 'Signatures' },
    { kind: 'paragraph', text: places.length === 0 ? `${lead} No party has been named yet.` : lead },
    ...places.map(
      (place): Block => ({
        kind: 'signature',
        household: place.household,
        householdName: householdStart(notebook, place.household),
        party: place.name.trim() || 'Not named yet',
        capacity: capacityName(place.capacity),
        state: stateOf(place, signatures, standing.sha256),
      }),
    ),
    ...(history === undefined
      ? []
      : [
          {
            kind: 'paragraph' as const,
            text: `This copy is locked: a seal over the whole file shows whether anything in it was changed since. When it was locked, the newest entry in the history of the notebook was number ${history.entry}. The hash of that entry is ${history.hash}.`,
          },
        ]),
  ]
}

export function capacityName(capacity: string): string {
  const known = capacities.find((one): one is Capacity => one === capacity)
  return known === undefined ? 'capacity not said yet' : capacityWords[known]
}

/** A signature counts only for the text it was given for. */
function stateOf(place: PartyPlace, signatures: readonly Signature[], sha256: string): SignatureState {
  const given = signatures.filter(
    (one) => one.household === place.household && one.partyIndex === place.partyIndex,
  )
  const signature = given.find((one) => one.sha256 === sha256)
  if (signature !== undefined) {
    return {
      kind: 'signed',
      typedName: signature.typedName,
      intent: signature.intent,
      when: momentWords(signature.signedAt),
      ...(signature.drawing ? { drawing: signature.drawing } : {}),
    }
  }
  return {
    kind: 'not signed yet',
    text:
      given.length === 0
        ? 'Not signed yet.'
        : 'Not signed yet. A signature given for another text does not count here.',
  }
}
