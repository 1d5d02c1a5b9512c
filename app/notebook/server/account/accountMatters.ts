import { accountAwaits } from '../../../../lib/words/account/accountText.ts'
import { overtakenMatter } from '../../../../lib/words/account/overtakenText.ts'
import type { OpenMatter } from '../../../ui/OpenMatters.tsx'
import type { Opened } from '../opened.ts'
import { overtakenAccount } from './accountNow.ts'

/** Whose signature of this household the final account waits for; for both, that the books were changed after all signed it. */
export function accountMatters(opened: Opened): OpenMatter[] {
  const {
    accounts: [newest],
    household,
    notebookId,
  } = opened
  const href = `/notebook/${notebookId}/final-account`
  const overtaken = overtakenAccount(opened)
  return [
    ...(newest?.stillToSign ?? [])
      .filter((place) => place.household === household)
      .map(({ name }) => ({ text: accountAwaits(newest?.stored.number ?? 0, name), href })),
    ...(overtaken === undefined ? [] : [{ text: overtakenMatter(overtaken), href }]),
  ]
}
