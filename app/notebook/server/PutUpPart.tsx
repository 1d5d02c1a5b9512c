import Link from 'next/link'
import { obstaclesToSigning } from '../../../lib/core/agreement/readiness.ts'
import { obstacleWords } from '../../../lib/words/itemWords.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { Panel } from '../../ui/Panel.tsx'
import type { Opened } from './opened.ts'
import { pageOfItem } from './pages.ts'
import { putUpForSigning } from './signActions.ts'

/** What stands in the way of signing; or the button that freezes the next revision. */
export function PutUpPart({ opened, number }: { opened: Opened; number: number }) {
  const { document, notebook, unknownKeys, standings, notebookId } = opened
  const obstacles = obstaclesToSigning(document, notebook, unknownKeys, (item, household) =>
    standings.some((standing) => standing.item.key === item.key && standing.markedAt[household] !== undefined),
  )
  const open = notebook.checks.filter((check) => !check.done).length
  return (
    <Panel heading={obstacles.length > 0 ? 'What stands in the way of signing' : 'Ready to be put up for signing'}>
      {obstacles.length > 0 ? (
        <ul>
          {obstacles.map((obstacle) => {
            const words = obstacleWords(obstacle, notebook)
            return (
              <li key={words}>
                {obstacle.kind === 'not agreed' ? (
                  <Link href={pageOfItem(notebookId, obstacle.item.key, obstacle.item.kind)} prefetch={false}>
                    {words}
                  </Link>
                ) : (
                  words
                )}
              </li>
            )
          })}
        </ul>
      ) : (
        <p>Every item is agreed by both. Putting it up freezes revision {number}; what you change afterwards belongs to the next one, and receipts never change it.</p>
      )}
      {open > 0 ? <p>{open} of the checks to ask first are still open. You may sign all the same; they are printed in the summary.</p> : null}
      <PressForm action={putUpForSigning.bind(null, notebookId)} label={`Put revision ${number} up for signing`} weight="main" />
    </Panel>
  )
}
