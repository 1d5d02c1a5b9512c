import { type Clash, mergeDrafts, saysTheSame } from '../../../lib/forms/mergeDrafts.ts'
import { differences, type KnownBeside, labelOf } from '../../../lib/words/differences.ts'
import type { HouseholdNames } from '../../../lib/words/labels.ts'
import { stepsOf } from '../../ui/draft/draftPath.ts'
import type { MergeClash, Merging } from '../../ui/draft/merging.ts'

/** Two versions brought together, with each place named as a reader knows it. */
export function mergeWithWords(
  opened: unknown,
  mine: unknown,
  theirs: unknown,
  names?: HouseholdNames,
): Merging {
  const known: KnownBeside = names ? { names } : {}
  const { draft, clashes } = mergeDrafts(opened, mine, theirs)
  return {
    draft,
    clashes: clashes.map((clash) => inWords(clash, known)),
    taken: differences(mine, draft, known).map(({ label }) => label),
    isTheirs: saysTheSame('draft', draft, theirs),
  }
}

function inWords({ path, mine, theirs }: Clash, known: KnownBeside): MergeClash {
  const steps = stepsOf(path)
  const key = steps.findLast((step) => typeof step === 'string') ?? 'text'
  const single = [mine, theirs].every((value) => value === undefined || typeof value !== 'object')
  const rows = single
    ? differences({ [key]: mine }, { [key]: theirs }, known)
    : differences(mine, theirs, known)
  const side = (which: 'before' | 'after') =>
    rows.map((row) => (single ? row[which] : `${row.label}: ${row[which]}`)).join('\n')
  return {
    path,
    label: labelOf(steps, known.names),
    mine: side('before'),
    theirs: side('after'),
    theirValue: theirs,
  }
}
