import { type Capacity, capacities } from '../core/agreement/notebook.ts'
import type { PartyPlace } from '../core/agreement/revision.ts'
import { capacityWords } from './labels.ts'

/** The sentence that a party ticks when it signs; it is kept with the signature, word for word. */
export function intentSentence(place: PartyPlace, householdName: string): string {
  const capacity = capacities.includes(place.capacity as Capacity)
    ? capacityWords[place.capacity as Capacity]
    : place.capacity
  return `I, ${place.name}, sign this agreement as ${capacity} for ${householdName}. I have read it, I agree to it, and I mean my typed name to be my signature.`
}

/** Printed in the place of the agreement on the page for signing. */
export function agreementOnPaper(revision: number | undefined): string {
  const where =
    revision === undefined
      ? '“Draft summary (PDF)” on the page “Sign”'
      : `with revision ${revision} on the page “Record”`
  return `The agreement is not printed with this page. Print its PDF, which has page numbers and its hash on every sheet: ${where}.`
}

/** Names are compared without regard to case and to the number of blanks. */
export function sameName(left: string, right: string): boolean {
  const plain = (name: string) => name.normalize('NFC').replace(/\s+/g, ' ').trim().toLocaleLowerCase('en')
  return plain(left) === plain(right)
}

/** Beside the button that puts a revision up while something stands in the way. */
export const notYetPutUp = 'It can be put up once nothing of the above stands in the way.'
