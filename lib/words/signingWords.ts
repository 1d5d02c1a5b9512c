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

/** Why a revision is not put up, or not signed. */
export const signingRefusals = {
  notYet: (reasons: readonly string[]) => `It can’t be put up for signing yet. ${reasons.join(' ')}`,
  'no-such-party': 'There is no such party of your household in this revision. Load the page again.',
  outdated:
    'A newer revision has been put up for signing in the meantime, so nothing was signed. Load the page again and read the new one.',
  'other-hash':
    'What you were shown is not the text of this revision: the hashes differ, so nothing was signed. Load the page again.',
  'already-signed': 'This party has signed this revision already.',
  'no-such-revision': 'There is no such revision of this notebook.',
} as const

/** What a signature lacks, at its field. */
export const signatureRefusals = {
  name: (text: 'agreement' | 'account', party: string) =>
    `Type the full name as it stands in the ${text}: ${party}.`,
  intent: 'Tick the sentence if you mean to sign. Without it nothing is signed.',
  drawing: 'The drawn signature could not be read. Wipe it away and draw it again, or leave it out.',
} as const
