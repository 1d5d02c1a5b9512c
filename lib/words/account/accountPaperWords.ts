import { momentWords } from '../day.ts'

/** Before the hash at the foot of each page: by it a final account is known from other papers. */
export const accountHashLabel = 'SHA-256 of final-account.json'

/** What stands on the paper of a final account besides its content. */
export function accountPaperWords(number: number, frozenAt: Date, signedByAll: boolean) {
  const force = signedByAll ? 'Signed by every party.' : 'Not signed by every party yet.'
  return {
    title: `Final account ${number}`,
    since: `Drawn up on ${momentWords(frozenAt)}. ${force}`,
    signing: `Each party signs final account ${number} for itself. Times are in UTC. The text that was signed is the file final-account.json; its SHA-256 stands at the foot of each page.`,
    /** At the head of every page, beside it, and before the hash at its foot. */
    standing: `Final account ${number}`,
    force,
    hashLabel: accountHashLabel,
  }
}
