import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Statement } from '../../../lib/core/shares/statement.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { ShareBar } from '../../ui/ShareBar.tsx'

/** What the whole fence asks of each household, as one bar. */
export function AskedBar({ notebook, asked }: { notebook: Notebook; asked: Statement['asked'] }) {
  const names = shareNames(notebook)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  return (
    <ShareBar
      a={Number(asked.a)}
      b={Number(asked.b)}
      aText={money(asked.a)}
      bText={money(asked.b)}
      nameA={names.a}
      nameB={names.b}
      label="Asked for, materials and work"
    />
  )
}
