import { standingWords } from './openingBlocks.ts'
import type { Standing } from './summaryInput.ts'

/** What stands on every sheet of paper besides the content. */
export const paperWords = {
  /** At the head of every page. */
  standing: (standing: Standing): string =>
    standing.kind === 'draft' ? 'DRAFT' : `Revision ${standing.number}`,
  /** Beside it. */
  force: (standing: Standing): string =>
    ({
      draft: 'Not up for signing. It binds nobody.',
      'up for signing': 'Up for signing. Not signed by all.',
      signed: 'Signed by every party.',
    })[standing.kind],
  standingInFull: standingWords,
  draftMark: 'DRAFT',
  page: (number: number, of: number): string => `Page ${number} of ${of}`,
  hashLabel: 'SHA-256 of agreement.json',
  agreementAttached: 'The agreement as a notebook file: its SHA-256 stands on every page',
  signaturesAttached: 'The signatures, with the drawn lines',
  /** What stands for a picture where the paper is read aloud. */
  drawnSignature: (name: string): string => `Drawn signature of ${name}`,
  largerDrawing: (labels: readonly string[]): string => `Larger drawing, labelled: ${labels.join('; ')}`,
  unprintableTitle: 'Characters that can’t be printed here',
  unprintable: (characters: readonly string[]): string =>
    `Each place with such a character shows this mark: \uFFFD. The agreement file, agreement.json, holds them all. The characters are: ${characters.join(', ')}.`,
  continued: 'continued',
} as const

/** A character that can't be shown, told by its number in Unicode: "U+1F600". */
export function characterNumber(codePoint: number): string {
  return `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`
}

/** The paper for signing in ink. */
export const inkWords = {
  title: (number: number): string => `Signing in ink: revision ${number}`,
  lead: (title: string): string =>
    `Each party signs here for itself. By signing, it agrees to what the paper “${title}” says, in the revision named here and with the hash printed here. Compare the hash with the one at the foot of each page of that paper before you sign.`,
  hash: (number: number, sha256: string): string =>
    `Revision ${number}. SHA-256 of agreement.json: ${sha256}`,
  frozen: (when: string): string => `Put up for signing on ${when}.`,
  signature: 'Signature',
  nameInPrint: 'Name in print',
  date: 'Date',
  place: 'Place',
  witness: 'Witness or notary (name, signature, date, stamp)',
  noParties: 'No party has been named, so there is nothing to sign.',
  care: 'Some places ask for a witness or a notary before a paper can go on the land records. Ask the land records office first. This paper gives no legal advice.',
} as const
