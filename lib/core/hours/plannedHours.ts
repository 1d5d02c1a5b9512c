import type { LabourLine, Notebook } from '../agreement/notebook.ts'
import { type Hundredths, sumHours } from '../amounts/hours.ts'
import type { Minor } from '../amounts/money.ts'
import type { ForBoth } from '../people/household.ts'
import { type ItemShares, placesOf } from '../shares/itemShares.ts'

/**
 * The planned work in hundredths of an hour. `share` is what of it falls to each household by the shares of all items, a
 * part of what it is asked for in money; `does` is what the plan has it work itself, and `hired` is for others to work.
 */
export type PlannedHours = {
  readonly all: Hundredths
  readonly share: ForBoth<Hundredths>
  readonly does: ForBoth<Hundredths>
  readonly hired: Hundredths
}

/**
 * Of the hours that count, hired ones too; gifts are in no figure.
 *
 * @param asked after caps, where they are known: a household that is asked for nothing has no hours as its share either,
 * they fall to the other
 */
export function plannedHours(
  notebook: Notebook,
  { items, asked }: { readonly items: readonly ItemShares[]; readonly asked?: ForBoth<Minor> },
): PlannedHours {
  const a = items.reduce((sum, { hours }) => sum + hours.a, 0n)
  const b = items.reduce((sum, { hours }) => sum + hours.b, 0n)
  const work = placesOf(notebook).flatMap(({ item }) => item.labour.filter(({ counts }) => counts))
  const by = (household: LabourLine['by']) =>
    sumHours(work.filter((line) => line.by === household).map(({ hours }) => hours))
  return {
    all: a + b,
    share: afterCaps({ a, b }, asked),
    does: { a: by('a'), b: by('b') },
    hired: by('hired'),
  }
}

function afterCaps({ a, b }: ForBoth<Hundredths>, asked: ForBoth<Minor> | undefined): ForBoth<Hundredths> {
  if (asked === undefined || asked.a + asked.b === 0n) return { a, b }
  if (asked.a === 0n) return { a: 0n, b: a + b }
  return asked.b === 0n ? { a: a + b, b: 0n } : { a, b }
}
