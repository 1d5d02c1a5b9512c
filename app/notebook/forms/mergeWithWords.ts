import { type Clash, mergeDrafts, saysTheSame } from '../../../lib/forms/mergeDrafts.ts'
import { differences, labelOf } from '../../../lib/words/differences.ts'
import { stepsOf } from '../../ui/draft/draftPath.ts'
import type { MergeClash, Merging } from '../../ui/draft/merging.ts'

/** Two versions brought together, with each place named as a reader knows it. */
export function mergeWithWords(opened: unknown, mine: unknown, theirs: unknown): Merging {
  const { draft, clashes } = mergeDrafts(opened, mine, theirs)
  return {
    draft,
    clashes: clashes.map(inWords),
    taken: differences(mine, draft).map(({ label }) => label),
    isTheirs: saysTheSame('draft', draft, theirs),
  }
}

function inWords({ path, mine, theirs }: Clash): MergeClash {
  const steps = stepsOf(path)
  const key = steps.findLast((step) => typeof step === 'string') ?? 'text'
  const single = [mine, theirs].every((value) => value === undefined || typeof value !== 'object')
  const rows = single ? differences({ [key]: mine }, { [key]: theirs }) : differences(mine, theirs)
  const side = (which: 'before' | 'after') =>
    rows.map((row) => (single ? row[which] : `${row.label}: ${row[which]}`)).join('\n')
  return { path, label: labelOf(steps), mine: side('before'), theirs: side('after'), theirValue: theirs }
}
