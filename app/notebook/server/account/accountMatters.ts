import { accountAwaits } from '../../../../lib/words/account/accountText.ts'
import { overtakenMatter, overtakenUnsignedMatter } from '../../../../lib/words/account/overtakenText.ts'
import type { OpenMatter } from '../../../ui/OpenMatters.tsx'
import type { Opened } from '../opened.ts'
import { accountStanding } from './accountNow.ts'

/**
 * Whose signature of this household the final account waits for; for both, that the books were changed after it was drawn
 * up, before or after all had signed: then it waits for nobody.
 */
export function accountMatters(opened: Opened): OpenMatter[] {
  const {
    accounts: [newest],
    household,
    notebookId,
  } = opened
  // Most notebooks have no account at all, and working out how one stands takes a while.
  if (newest === undefined) return []
  const href = `/notebook/${notebookId}/final-account`
  const { number } = newest.stored
  const { stands, overtaken, now } = accountStanding(opened)
  if (overtaken) return [{ text: overtakenMatter(number), href }]
  if (!stands) return [{ text: overtakenUnsignedMatter(number, now.open.length === 0), href }]
  return newest.stillToSign
    .filter((place) => place.household === household)
    .map(({ name }) => ({ text: accountAwaits(number, name), href }))
}
