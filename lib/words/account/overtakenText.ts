import type { ContributionKind } from '../../core/agreement/notebook.ts'
import { dayWords } from '../day.ts'
import { contributionWords } from '../labels.ts'

/** Said where the books were changed after all have signed a final account. */
export const overtakenWords = {
  title: 'The books say something else than the final account',
  entered: 'Entered since:',
  gone: 'In the account, and not in the books any more:',
  see: 'See the final account',
} as const

/** What stands and what does not. `number` of the account. */
export function overtakenSentences(number: number): readonly string[] {
  return [
    `All have signed final account ${number}. The books were changed since, so it no longer says what they say.`,
    'What was signed stays on record. Settle what is open, and draw up a new account; or take back what was entered by mistake.',
  ]
}

/** For the strip of open matters of both households. */
export function overtakenMatter(number: number): string {
  return `Final account ${number} was signed, and the books were changed since`
}

/** The same where not all have signed it: nobody can any more. */
export function overtakenUnsignedMatter(number: number, nothingOpen: boolean): string {
  const next = nothingOpen ? 'Draw up a new one' : 'Settle what is open, then draw up a new one'
  return `Final account ${number} can’t be signed any more: the books were changed since it was drawn up. ${next}`
}

/** "Money paid to a supplier, no. 14, 3 June 2027: ties, $40.00" */
export function accountEntryWords(entry: {
  readonly kind: ContributionKind
  readonly household: string
  readonly date: string
  readonly note: string
  readonly amount: string
}): string {
  const note = entry.note.trim()
  return `${contributionWords[entry.kind]}, ${entry.household}, ${dayWords(entry.date)}: ${note === '' ? '' : `${note}, `}${entry.amount}`
}
