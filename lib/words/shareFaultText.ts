import type { Notebook } from '../core/agreement/notebook.ts'
import { minorUnits } from '../core/amounts/money.ts'
import type { Fault, FaultFacts } from '../core/faults.ts'
import { placesOf } from '../core/shares/itemShares.ts'
import { digitsOf } from '../core/shares/statement.ts'
import { capsShortWords } from './capText.ts'
import { faultText } from './faultText.ts'
import { itemTitle } from './itemWords.ts'
import { type HouseholdNames, householdNames } from './labels.ts'
import { shareNames } from './shareText.ts'

/** The item that a fault of the shares is about, and what it is called; undefined where it is about the whole. */
export function itemAtFault(
  notebook: Notebook,
  { path }: Fault,
): { readonly id: string; readonly title: string } | undefined {
  const place = placesOf(notebook).find((one) => path === one.path || path.startsWith(`${one.path}.`))
  return place && { id: place.item.id, title: titleOf(place) }
}

function titleOf({ kind, item }: ReturnType<typeof placesOf>[number]): string {
  return itemTitle({ kind, name: item.name, key: `item:${item.id}` })
}

/** A gate that is to be shared by use, and nobody has counted who goes through it. */
export function isCountedNowhere(fault: Fault): boolean {
  return fault.kind === 'weights-zero' && fault.principle === 'use'
}

const countedNowhere = 'nobody has counted its passages a week yet, so it can’t be shared by use.'
const untilCounted =
  'From the first count on each is asked for half, until both take one count. Or share it another way.'

/** The same on the item's own page, each sentence once. */
export function itemFaultTexts(names: HouseholdNames, faults: readonly Fault[]): readonly string[] {
  const texts = faults.map((fault) =>
    isCountedNowhere(fault)
      ? `${countedNowhere} Count them under “Passages a week”. ${untilCounted}`
      : namedText(names, fault),
  )
  return [...new Set(texts)]
}

/** Two caps that leave a part of the total to nobody, with the notebook's money and the households' names. */
export function capsFallShort(
  notebook: Notebook,
  fault: Extract<FaultFacts, { kind: 'caps-short' }>,
): string {
  const money = (typed: string) => minorUnits(typed, digitsOf(notebook))
  const { a, b, total, short } = fault
  return capsShortWords(
    { a: money(a), b: money(b), total: money(total), short: money(short) },
    shareNames(notebook),
  )
}

/** Why the shares can't be worked out yet: of which item, and what to do. */
export function shareFaultText(notebook: Notebook, fault: Fault): string {
  const item = itemAtFault(notebook, fault)
  if (item === undefined)
    return fault.kind === 'caps-short'
      ? capsFallShort(notebook, fault)
      : namedText(householdNames(notebook), fault)
  if (isCountedNowhere(fault))
    return `${item.title}: ${countedNowhere} Count them on its page. ${untilCounted}`
  return `${item.title}: ${namedText(householdNames(notebook), fault)}`
}

/** The one sentence of faults of shares that speaks of a household calls it by its name. */
function namedText(names: HouseholdNames, fault: Fault): string {
  const text = faultText(fault)
  return fault.kind === 'saving-outside'
    ? text.replace(`household ${fault.household}`, () => names[fault.household])
    : text
}

/** The same of several faults, each sentence once: a gate lacks its count for both of its pots. */
export function faultTexts(notebook: Notebook, faults: readonly Fault[]): readonly string[] {
  return [...new Set(faults.map((fault) => shareFaultText(notebook, fault)))]
}

/** What the items that can be shared ask for meanwhile. */
export function othersMeanwhileWords(asked: {
  readonly a: string
  readonly b: string
  readonly nameA: string
  readonly nameB: string
}): string {
  return `All other items ask ${asked.a} of ${asked.nameA} and ${asked.b} of ${asked.nameB} so far, before caps.`
}

/** Beside what is asked of the invited household: gates whose count is not settled. */
export function halvesForNowWords(gates: readonly string[]): string {
  const [one, ...more] = gates
  const which = more.length === 0 ? `${one} is` : `${gates.slice(0, -1).join(', ')} and ${gates.at(-1)} are`
  return `${which} shared by halves for now: the passages are not settled yet. Each of you counts them, and the share goes by the count that both take.`
}
