import type { BasicFence } from '../core/agreement/notebook.ts'
import type { AboveChoice, BasicFenceSums, HeldPot, HeldPots, NotHeld } from '../core/shares/basicFence.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'
import { capitalised } from './summary/names.ts'

/** What the basic fence is, in short: "4 ft high, farm wire". Empty where nothing of it is said. */
export function basicFenceWords({ height, infill, buildUp }: BasicFence): string {
  const made = infill.trim() || buildUp?.name.trim() || ''
  return [height === '' ? '' : `${height} high`, made].filter(Boolean).join(', ')
}

/** What its materials, its labour and both come to. */
export function basicSumsSentence({ materials, labour, both }: BasicFenceSums, currency: string): string {
  const money = (minor: bigint) => moneyWords(minor, currency)
  return `The basic fence comes to ${money(materials)} in materials and ${money(labour)} in work, ${money(both)} together.`
}

const potWords: Readonly<Record<HeldPot['pot'], string>> = {
  materials: 'the materials',
  labour: 'the work',
  together: 'both together',
}

/** Where a pot's typed basic cost is not what the basic fence comes to, with both figures. */
export function basicApartSentence({ pot, typed, sum }: HeldPot, currency: string): string {
  const money = (minor: bigint) => moneyWords(minor, currency)
  return `The share of ${potWords[pot]} is held against ${money(typed)}, but the basic fence comes to ${money(sum)}.`
}

/** A pot that is held against what the basic fence comes to. */
export function basicHeldSentence({ pot, sum }: HeldPot, currency: string): string {
  return `The share of ${potWords[pot]} is held against it, at ${moneyWords(sum, currency)}.`
}

/** What a press would hold against the basic fence, with the sums that it writes. */
export function heldPotsLabel(pots: HeldPots, sums: BasicFenceSums, currency: string): string {
  const money = (minor: bigint) => moneyWords(minor, currency)
  return {
    apart: `Materials and work each by itself: ${money(sums.materials)} and ${money(sums.labour)}`,
    together: `Both together, as one pot: ${money(sums.both)}`,
    materials: `The materials alone: ${money(sums.materials)}`,
    labour: `The work alone: ${money(sums.labour)}`,
  }[pots]
}

/** Who pays what lies above the basic fence and is no named upgrade. */
export function aboveLabel(above: AboveChoice, names: ShareNames): string {
  return {
    'as it stands': 'As it stands now',
    a: capitalised(names.a),
    b: capitalised(names.b),
    halves: 'Each household for half of it',
  }[above]
}

/** Why a press to hold the share against the basic fence changed nothing, and what would be right. */
export const holdRefusals: Readonly<Record<NotHeld, string>> = {
  'below zero':
    'Credits make this sum of the basic fence less than nothing. Take credits off its lines, or hold another pot against it.',
  'upgrades of both':
    'The upgrades that are named here are of materials and work together. Hold both together against it, or take the upgrades out of the share first.',
  'who is asked':
    'A share that does not pay the difference yet has nobody for what is above the basic fence. Choose who is asked for that.',
}

/** Where its own cost lines no longer say what it takes. */
export const basicLinesApart =
  'The cost lines of the basic fence no longer say what it takes. Put the quantities among them again; prices stay.'

/** Why nothing came of a press about the basic fence of a section. */
export const basicFenceRefusals = {
  none: 'This section has no basic fence yet. Describe it below and save it.',
  nothingWorkedOut:
    'Nothing can be worked out yet: give the basic fence a build-up, and the section its dimensions, first.',
  removed: 'This section was removed in the meantime. “The line” shows what there is now.',
  changed:
    'This section was changed since you opened the page. Load the page again, and look at it as it is now.',
} as const
