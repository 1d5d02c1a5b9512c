import { type Obstacle, obstaclesToSigning } from '../../../../lib/core/agreement/readiness.ts'
import type { Opened } from '../opened.ts'

/** What stands in the way of putting the notebook up as it is. */
export function obstaclesOf({ document, notebook, unknownKeys, standings }: Opened): readonly Obstacle[] {
  return obstaclesToSigning(document, notebook, unknownKeys, (item, household) =>
    standings.some(
      (standing) => standing.item.key === item.key && standing.markedAt[household] !== undefined,
    ),
  )
}
