import type { RecordProblem } from '../core/agreement/recordFindings.ts'

/** Thrown deep inside the reader and caught in `checkRecord`: why the file is looked at no further. */
export class RecordRefusal extends Error {
  readonly problem: RecordProblem

  constructor(problem: RecordProblem) {
    super(problem.kind)
    this.problem = problem
  }
}

/** Refuses a file that is not built the one way in which this program builds its own. */
export function refuseBuild(detail: string): never {
  throw new RecordRefusal({ kind: 'other-build', detail })
}
