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
  return `The agreement is not printed with this page. Print its PDF, which has page numbers and its check number on every sheet: ${where}.`
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
    'What you were shown is not the text of this revision: the check numbers differ, so nothing was signed. Load the page again.',
  'already-signed': 'This party has signed this revision already. Load the page again to see who has.',
  'no-such-revision': 'There is no such revision of this notebook.',
} as const

/** What a signature lacks, at its field. */
export const signatureRefusals = {
  name: (text: 'agreement' | 'account', party: string) =>
    `Type the full name as it stands in the ${text}: ${party}.`,
  intent: 'Tick the sentence if you mean to sign. Without it nothing is signed.',
  drawing: 'The drawn signature could not be read. Wipe it away and draw it again, or leave it out.',
} as const

/** What the page for signing says of the revision that stands. */
export function standingHeading(revision: number, signedByAll: boolean): string {
  return `Revision ${revision} is ${signedByAll ? 'signed by all' : 'up for signing'}`
}

export function putUpWords(by: string, when: string): string {
  return `Put up by ${by} on ${when}. It does not change any more; the notebook goes on beside it.`
}

/** After a party's name. */
export const hasNotSigned = 'has not signed yet'
export function hasSigned(when: string): string {
  return `signed, ${when}`
}

/** Above the whole text on the page for signing, and where its chapters are unfolded and folded. */
export const agreementText = {
  heading: (revision: number | undefined) =>
    revision === undefined ? 'The agreement so far, a draft' : `The agreement, revision ${revision}`,
  lead: 'This is the whole text, chapter by chapter. Open what you want to read, or read it as it is printed.',
  unfold: 'Open all chapters',
  fold: 'Close all chapters',
  asPrinted: 'Page by page',
} as const

/** Above the forms for signing: what a signature here is, and on which text. */
export const beforeYouSign = {
  title: 'Before you sign',
  text: (hash: string) =>
    `Read the whole agreement above; your signature stands under the text whose check number begins ${hash.slice(0, 8)}. All parties of your household sign through your one link; sign only for yourself. A typed name is a simple electronic signature: for rights in land the law may ask for more.`,
} as const

/** The copies to take of a revision. */
export const copiesText = {
  heading: 'Take your copy',
  locked:
    'Keep the locked copy and the notebook file yourself, each household its own. The seal on the copy shows later that nothing in it was changed; it does not show who signed.',
  open: 'Keep the summary and the notebook file yourself. The check number in them shows later that nothing was changed; it does not show who signed. The copy is locked once all have signed.',
  paper: (revision: number, locked: boolean) =>
    `${locked ? 'Locked copy' : 'Summary'}, revision ${revision} (PDF)`,
} as const

export const changedSince = {
  heading: 'The notebook has changed since',
  text: 'What was changed belongs to the next revision. The one that stands is not touched by it.',
  amends: (revision: number) => `Compared with revision ${revision}, the next one would change:`,
} as const

/** Above what a revision changes in the one that it amends. */
export function amendmentHeading(revision: number): string {
  return `What the amendment changes in revision ${revision}`
}

/** Under the title of the page for signing. */
export function signLead(revision: number | undefined, signedByAll: boolean): string {
  return revision !== undefined && signedByAll
    ? `Revision ${revision} is signed by all parties of both households.`
    : 'Nothing binds anyone until all parties of both households have signed. Agreeing tonight and signing days later is the normal case.'
}

/** Where the parts of the page for signing lead from its head. */
export const jumpWords = {
  label: 'On this page',
  agreement: 'Read the agreement',
  amendment: 'What it changes',
  sign: (party: string) => `Signature of ${party}`,
  obstacles: 'What stands in the way',
  ready: 'Put it up for signing',
  next: 'What has changed since',
  copies: 'Copies to take',
} as const
