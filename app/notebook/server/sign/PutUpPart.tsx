import Link from 'next/link'
import type { Obstacle } from '../../../../lib/core/agreement/readiness.ts'
import { obstacleWords } from '../../../../lib/words/itemWords.ts'
import { notYetPutUp } from '../../../../lib/words/signingWords.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { OpenItemRow } from '../OpenItemRow.tsx'
import { agreedByBoth, type Opened } from '../opened.ts'
import { putUpForSigning } from '../signActions.ts'

/** What stands in the way of signing; or the button that freezes the next revision. */
export function PutUpPart({
  opened,
  number,
  obstacles,
}: {
  opened: Opened
  number: number
  obstacles: readonly Obstacle[]
}) {
  const { notebook, standings, notebookId } = opened
  const others = obstacles.filter((obstacle: Obstacle) => obstacle.kind !== 'not agreed')
  const open = standings.filter((standing) => !agreedByBoth(standing))
  const checks = notebook.checks.filter((check) => !check.done).length
  return (
    <Panel
      heading={obstacles.length > 0 ? 'What stands in the way of signing' : 'Ready to be put up for signing'}
      id="put-up"
    >
      {others.length > 0 ? (
        <ul>
          {others.map((obstacle) => {
            const words = obstacleWords(obstacle, notebook)
            const href = placeOfObstacle(obstacle, notebookId)
            return (
              <li key={words}>
                {href === undefined ? (
                  words
                ) : (
                  <Link href={href} prefetch={false}>
                    {words}
                  </Link>
                )}
              </li>
            )
          })}
        </ul>
      ) : null}
      {open.length > 0 ? (
        <>
          <p>Not agreed by both yet. Open an item to read it whole; agree to it there or here.</p>
          <ul className="item-rows">
            {open.map((standing) => (
              <OpenItemRow key={standing.item.key} opened={opened} standing={standing} />
            ))}
          </ul>
        </>
      ) : null}
      {obstacles.length === 0 ? (
        <p>
          Every item is agreed by both. Putting it up freezes revision {number}; what you change afterwards
          belongs to the next one, and receipts never change it.
        </p>
      ) : null}
      {checks > 0 ? (
        <p>
          {checks} of the checks to ask first are still open. You may sign all the same; they are printed in
          the summary.
        </p>
      ) : null}
      <PressForm
        action={putUpForSigning.bind(null, notebookId)}
        label={`Put revision ${number} up for signing`}
        weight={obstacles.length === 0 ? 'main' : 'plain'}
      />
      {obstacles.length === 0 ? null : <p className="quiet">{notYetPutUp}</p>}
    </Panel>
  )
}

/** Where an obstacle is cleared away, where that is one page. */
function placeOfObstacle({ kind }: Obstacle, notebookId: string): string | undefined {
  switch (kind) {
    case 'no party':
    case 'party unnamed':
    case 'party without capacity':
      return `/notebook/${notebookId}/parties`
    case 'nothing to build':
      return `/notebook/${notebookId}`
    default:
      return undefined
  }
}
