import { accountAwaits } from '../../../../lib/words/account/accountText.ts'
import type { OpenMatter } from '../../../ui/OpenMatters.tsx'
import type { Opened } from '../opened.ts'

/** Whose signature of this household the final account waits for. */
export function accountMatters({ accounts: [newest], household, notebookId }: Opened): OpenMatter[] {
  return (newest?.stillToSign ?? [])
    .filter((place) => place.household === household)
    .map(({ name }) => ({
      text: accountAwaits(newest?.stored.number ?? 0, name),
      href: `/notebook/${notebookId}/final-account`,
    }))
}
