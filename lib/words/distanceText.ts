import type { ForBoth } from '../core/people/household.ts'
import type { Distance, DistanceStep, ItemDistance } from '../core/shares/distance.ts'
import type { DistanceCause } from '../core/shares/plansBetween.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'
import { capitalised } from './summary/names.ts'

/** What sets two plans apart, as a reader says it. */
export const causeWords: Readonly<Record<DistanceCause, string>> = {
  quantities: 'what is built and how much of it',
  prices: 'prices and tax',
  hours: 'hours and rates',
  principle: 'how it is shared',
}

/** "asks no. 12 for $3.00 more and no. 14 for $3.00 less"; undefined where nothing moves. */
export function movesWords(moves: ForBoth<bigint>, names: ShareNames): string | undefined {
  const parts = (['a', 'b'] as const).flatMap((household) => {
    const amount = moves[household]
    if (amount === 0n) return []
    const size = moneyWords(amount < 0n ? -amount : amount, names.currency)
    return [`${names[household]} for ${size} ${amount < 0n ? 'less' : 'more'}`]
  })
  return parts.length === 0 ? undefined : `asks ${parts.join(' and ')}`
}

/** How far apart in one figure where both households move by as much, in two where the plans cost differently. */
export function apartWords(moves: ForBoth<bigint>, names: ShareNames): string {
  const size = (amount: bigint) => moneyWords(amount < 0n ? -amount : amount, names.currency)
  if (moves.a === -moves.b) return size(moves.a)
  return `${size(moves.a)} for ${names.a}, ${size(moves.b)} for ${names.b}`
}

/** How far apart in all, at a glance: no figure of nothing where the items differ all the same. */
export function apartInAllWords(
  { moves, items }: Pick<Distance, 'moves' | 'items'>,
  names: ShareNames,
): string {
  if (moves.a !== 0n || moves.b !== 0n) return `${apartWords(moves, names)} apart`
  if (items.length === 0) return 'Both ask for the same'
  return `The same in all, ${items.length} ${items.length === 1 ? 'item' : 'items'} apart`
}

/** Whose positions are held against each other, as they are spoken of: "the plan", "what no. 14 proposes". */
export type SaidPositions = { readonly first: string; readonly second: string }

/** How far apart two positions are, in sentences. */
export function distanceSentences(
  distance: Distance,
  { first, second }: SaidPositions,
  names: ShareNames,
  titleOf: (id: string) => string,
): readonly string[] {
  const { from, to, moves, middle, items, caps } = distance
  const evened = caps.a !== 0n || caps.b !== 0n
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const asks = (one: ForBoth<bigint>) => `${money(one.a)} of ${names.a} and ${money(one.b)} of ${names.b}`
  if (moves.a === 0n && moves.b === 0n) {
    return [
      `For the whole fence both ask for the same, after caps: ${asks(to)}.`,
      ...(items.length === 0
        ? []
        : [
            `Item by item they still differ: ${items.map((item) => `${titleOf(item.id)} by ${apartWords(item.moves, names)}`).join('; ')}.${evened ? ' The caps even it out.' : ''}`,
          ]),
    ]
  }
  return [
    `For the whole fence, after caps, ${first} asks ${asks(from)}; ${second} asks ${asks(to)}.`,
    moves.a === -moves.b
      ? `That is ${apartWords(moves, names)} apart.`
      : `The two cost differently. They are apart by ${apartWords(moves, names)}.`,
    `Halfway is ${money(middle.a)} for ${names.a} and ${money(middle.b)} for ${names.b}.`,
    ...(middle.odd ? [`The odd ${money(1n)} goes to ${names[middle.odd.to]}.`] : []),
  ]
}

/** What a plan would ask that is so far from the one that stands, item by item and in all. */
export function askSentences(
  { items, to, moves }: Distance,
  titleOf: (id: string) => string,
  names: ShareNames,
): readonly string[] {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const asks = (one: ForBoth<bigint>) => `${money(one.a)} of ${names.a} and ${money(one.b)} of ${names.b}.`
  const thanNow = (one: ForBoth<bigint>) => {
    const more = movesWords(one, names)
    return more === undefined ? 'That is the same as now.' : `That ${more} than now.`
  }
  return [
    ...items.map((item) => `${titleOf(item.id)}: ${asks(item.to)} ${thanNow(item.moves)}`),
    `The whole fence, after caps: ${asks(to)} ${thanNow(moves)}`,
  ]
}

/** Where a distance comes from, a sentence for each kind of difference that moves anything. */
export function stepSentences(steps: readonly DistanceStep[], names: ShareNames): readonly string[] {
  return steps.flatMap(({ causes, moves }) => {
    const words = movesWords(moves, names)
    return words === undefined
      ? []
      : [`${capitalised(causes.map((cause) => causeWords[cause]).join(', with '))}: ${words}.`]
  })
}

/**
 * Where an item's distance comes from. `proposed`: one of the two proposes something for it; one that nobody does can
 * move by an odd unit, or with the items that it is laid on.
 */
export function itemStepSentences(
  item: ItemDistance,
  proposed: boolean,
  names: ShareNames,
): readonly string[] {
  if (proposed) return stepSentences(item.steps, names)
  const words = movesWords(item.moves, names) ?? 'asks for the same'
  return [`It follows from the other items, and ${words}.`]
}

/** What the caps do to the distance; undefined where they do nothing. */
export function capsSentence(caps: ForBoth<bigint>, names: ShareNames): string | undefined {
  const words = movesWords(caps, names)
  return words === undefined ? undefined : `Caps: ${words}.`
}

/** In which order the steps are taken, for whoever does the sums again. */
export const stepsNote =
  'Each line turns the first into the second by one kind of difference, in this order: what is built and how much of it; prices and tax; hours and rates; how it is shared, with the numbers for that. After each, all is shared anew by the same rules. The lines add to the distance, to the cent.'
