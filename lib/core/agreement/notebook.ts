import type { ForBoth, Household } from '../people/household.ts'
import type {
  BuildUp,
  GateBuildUp,
  HeightLimit,
  InventoryPiece,
  MeasuredPost,
  SavedBuildUp,
  Site,
} from '../takeoff/buildUp.ts'

/**
 * The notebook as plain data, with every default filled in: what `lib/forms/readNotebook.ts` returns for a file that
 * holds. Figures stay strings as they were typed (see `lib/forms/notebook-format.md`); an empty string is "not said yet".
 * Keys that the format does not know stay on the objects at run time, but no rule reads them.
 */
export type Notebook = {
  readonly format: 'mearing-notebook'
  readonly version: 1
  readonly title: string
  /** ISO 4217 code of money in use, with a minor unit (see `core/amounts/currency.ts`). */
  readonly currency: string
  readonly units: Units
  readonly households: ForBoth<HouseholdEntry>
  readonly line: BoundaryLine
  readonly sections: readonly Section[]
  readonly gates: readonly Gate[]
  readonly common: readonly CommonCost[]
  /** The most a household has agreed to be asked for. A missing key is no cap. */
  readonly caps: { readonly a?: string; readonly b?: string }
  readonly contributions: readonly Contribution[]
  readonly terms: readonly Term[]
  readonly checks: readonly Check[]
  readonly decisions: readonly Decision[]
  /** What is agreed about money and hours beside the shares. Missing: nothing, and then nobody marks it. */
  readonly arrangements?: Arrangements
  /** Said when the fence stands and both close the notebook. */
  readonly closing?: Closing
  /** What is due or runs out on a day, and whose it is to see to. */
  readonly dates: readonly DatedDuty[]
  /** Build-ups that a household keeps for the next section or gate. */
  readonly buildUps: readonly SavedBuildUp[]
  /** Pieces at hand, measured. */
  readonly inventory: readonly InventoryPiece[]
  /** The first letter to the other household. No part of what is signed. */
  readonly letter?: FirstLetter
  /** Books beside `contributions`. No part of what is signed. */
  readonly books: Books
}

/** How the app shows lengths; what was typed stays as typed. */
export type Units = 'ft-in' | 'metric'

export const capacities = ['owner', 'co-owner', 'trustee', 'executor', 'agent', 'tenant'] as const
export type Capacity = (typeof capacities)[number]

export type Party = {
  readonly name: string
  readonly capacity: Capacity | ''
  readonly address: string
  readonly parcel: string
}

export type HouseholdEntry = { readonly name: string; readonly parties: readonly Party[] }

export const evidenceKinds = ['survey', 'marks', 'plan', 'belief'] as const
/** What the line's position rests on. */
export type Evidence = (typeof evidenceKinds)[number]

export type Setback = { readonly side: Household | ''; readonly distance: string }

export type Station = {
  readonly at: string
  readonly setback?: Setback
  readonly gradeA: string
  readonly gradeB: string
  readonly gradeFence: string
  /** The line turns here, in plan. */
  readonly angle?: Angle
}

/** Degrees that the line turns by, seen from above, and toward whose land. */
export type Angle = { readonly degrees: string; readonly toward: Household | '' }

export type BoundaryLine = {
  readonly start: string
  readonly end: string
  readonly evidence: Evidence | ''
  readonly stations: readonly Station[]
  /** By how much the line may lie elsewhere, to either side. Length. */
  readonly error: string
  readonly limits: readonly HeightLimit[]
  readonly site: Site
}

export type Keeper = 'both' | Household | ''
export const measuredFromKinds = ['a', 'b', 'higher', 'lower'] as const
export type MeasuredFrom = (typeof measuredFromKinds)[number] | ''

/** A cost line: quantity × unit price × (1 + tax/100). */
export type CostLine = {
  readonly what: string
  readonly quantity: string
  readonly unit: string
  /** Empty: not priced yet, counts as 0. */
  readonly unitPrice: string
  readonly taxPercent: string
  /** `bought`, or given in kind by a household. */
  readonly suppliedBy: 'bought' | Household
  /** Salvage or a return: taken off the pot. */
  readonly credit: boolean
  /** The part of the take-off that the line came from, such as "takeoff: posts"; empty: typed by hand. */
  readonly from: string
  /** A person changed the quantity by hand: it no longer follows the take-off. */
  readonly changed: boolean
}

export const skills = ['skilled', 'plain'] as const

/** A labour line: hours × rate. */
export type LabourLine = {
  readonly task: string
  readonly hours: string
  /** Empty: not priced yet, counts as 0. */
  readonly rate: string
  readonly by: 'hired' | Household
  /** `false`: a gift of labour, shown but in no sum. */
  readonly counts: boolean
  /** Which agreed rate the task goes by; empty: not said. The line's own `rate` is what counts. */
  readonly skill: (typeof skills)[number] | ''
  /** The most hours that count for this task; what is worked beyond is the worker's own. Hours; empty: no ceiling. */
  readonly ceiling: string
}

export type SimplePrinciple =
  | { readonly principle: 'equal' }
  | { readonly principle: 'percent'; readonly a: string; readonly b: string }
  | { readonly principle: 'one'; readonly household: Household }
  | { readonly principle: 'length'; readonly a: string; readonly b: string }
  | { readonly principle: 'use' }
  | { readonly principle: 'benefit'; readonly a: string; readonly b: string }
  | {
      readonly principle: 'saving'
      readonly aloneA: string
      readonly aloneB: string
      /** Where each figure for building alone comes from: an offer, a reckoning. Words. */
      readonly sourceA: string
      readonly sourceB: string
    }

export type Difference = {
  readonly principle: 'difference'
  readonly basic: string
  readonly basicShare: SimplePrinciple
  readonly upgradeShare: SimplePrinciple
  /** What stands above the basic fence at one household's wish, in order; the rest above it goes by `upgradeShare`. */
  readonly upgrades: readonly Upgrade[]
}

/** One upgrade that one household wants and pays. `amount` is money. */
export type Upgrade = { readonly what: string; readonly amount: string; readonly household: Household }

export type Principle = SimplePrinciple | Difference

export const principleNames = [
  'equal',
  'percent',
  'one',
  'length',
  'use',
  'benefit',
  'difference',
  'saving',
] as const
export type PrincipleName = (typeof principleNames)[number]

/** Two pots, or one pot of both. */
export type Share =
  | { readonly materials: Principle; readonly labour: Principle }
  | { readonly together: Principle }

type Priced = {
  readonly id: string
  readonly name: string
  readonly materials: readonly CostLine[]
  readonly labour: readonly LabourLine[]
  readonly share: Share
}

export type Section = Priced & {
  readonly from: string
  readonly to: string
  readonly owner: Keeper
  readonly upkeep: Keeper
  readonly height: { readonly agreed: string; readonly measuredFrom: MeasuredFrom }
  readonly face: string
  readonly infill: string
  readonly drainage: string
  readonly notes: string
  readonly buildUp?: BuildUp
  /** Posts as they were measured on site. */
  readonly measured: readonly MeasuredPost[]
  /** The plainer fence that would be enough here, against which an upgrade is held. */
  readonly basicFence?: BasicFence
  /** Which need of which household this section meets. */
  readonly meets: readonly MetNeed[]
}

/** The plainer fence on the same stretch: made of what, priced how. Its sums are the basic cost of `difference`. */
export type BasicFence = {
  readonly height: string
  readonly infill: string
  readonly notes: string
  readonly buildUp?: BuildUp
  readonly materials: readonly CostLine[]
  readonly labour: readonly LabourLine[]
}

/** What a household may need of a fence. */
export const needKinds = ['animals-in', 'privacy', 'light', 'stock', 'low-cost', 'repair'] as const
export type NeedKind = (typeof needKinds)[number]
/** `need` is one of `needKinds` or a need in the household's own words. */
export type MetNeed = { readonly household: Household; readonly need: string }

export type Gate = Priced & {
  readonly at: string
  readonly opening: string
  readonly stands: 'line' | Household | ''
  /** Passages a week. */
  readonly uses: { readonly a: string; readonly b: string }
  /** While this is there the passages are being counted, and `use` asks for halves (see `PassageCounts`). */
  readonly passages?: PassageCounts
  readonly opens: string
  readonly latch: string
  readonly keys: string
  readonly owner: Keeper
  readonly upkeep: Keeper
  readonly notes: string
  readonly buildUp?: GateBuildUp
}

/**
 * What each household counted, of both, without seeing the other's count; both are missing until both have counted.
 * `takes` says whose count each household takes; once both take the same one it becomes the gate's `uses`.
 */
export type PassageCounts = {
  readonly a?: ForBoth<string>
  readonly b?: ForBoth<string>
  readonly takes: { readonly a?: Household | ''; readonly b?: Household | '' }
}

export const spreads = ['length', 'cost', 'equal'] as const
/** How a common cost is laid on the sections and gates, each of which then shares its part by its own principle. */
export type Spread = (typeof spreads)[number]

/** `spread` empty: it is shared by its own `share`. */
export type CommonCost = Priced & { readonly notes: string; readonly spread: Spread | '' }

export type ItemKind = 'section' | 'gate' | 'common'

export const contributionKinds = ['cash', 'material', 'hours', 'transfer', 'refund'] as const
export type ContributionKind = (typeof contributionKinds)[number]

/** What has been given, dated. `amount` is empty on `hours`; `hours` and `rate` are empty on the others. */
export type Contribution = {
  readonly household: Household
  readonly kind: ContributionKind
  readonly amount: string
  readonly hours: string
  readonly rate: string
  readonly date: string
  readonly for: string
  readonly note: string
  /** Who wrote the entry; empty where the file does not say. Only that household takes it back. */
  readonly enteredBy: Household | ''
  /** Set when the entry was taken back: it stays in the book and counts as nothing. */
  readonly struck?: { readonly on: string; readonly by: Household; readonly why: string }
  /** Where it was bought, or who bought it; words. */
  readonly shop: string
  /** Id of a stored file that shows the receipt; empty: none. */
  readonly file: string
  /** By what means a transfer was made, in words: cash, bank. */
  readonly means: string
  /** A transfer that the receiver has not confirmed yet: it counts as nothing until then. */
  readonly waits: boolean
  /** Set when the receiver of a transfer confirmed it. */
  readonly confirmed?: BookMark & { readonly by: Household }
  /** The labour line that the hours were worked on, by its task; empty: not said. */
  readonly task: string
  /** Of `hours`, those beyond the task's ceiling: the worker's own, worth nothing. Hours; empty: none. */
  readonly own: string
  /** Which cost lines the amount was spent on, or came back from. Their amounts add to no more than `amount`. */
  readonly lines: readonly SpentOn[]
  /** How goods in kind were valued; the lower of the two counts unless both mark otherwise. */
  readonly valuation?: Valuation
}

/** A mark set in the books, on a day. */
export type BookMark = { readonly on: string }
export type BookMarks = { readonly a?: BookMark; readonly b?: BookMark }

/** A line of an item: which pot, by its words, and its place there from 1, for lines with the same words. */
export type LineOf = {
  readonly item: string
  readonly pot: 'materials' | 'labour'
  readonly what: string
  readonly place: string
}

export type SpentOn = LineOf & { readonly quantity: string; readonly amount: string }

export type Valuation = {
  /** What it is documented to have cost. Money; empty: no paper. */
  readonly documented: string
  readonly weight: string
  readonly unit: 'lb' | 'kg' | ''
  /** What a yard pays, or asks, for one `unit`. Unit price. */
  readonly yardPrice: string
  readonly saidBy: string
  /** Both marked that `amount` counts although it is more than the lower value. */
  readonly marks: BookMarks
}

/** Books beside the contributions. */
export type Books = {
  /** Lines that the households marked as bought, or as worked: what both marked takes the planned figure's place. */
  readonly bought: readonly BoughtLine[]
  readonly things: readonly Thing[]
  readonly conversions: readonly Conversion[]
}

/**
 * `amount`: what had actually been spent on the line when it was marked. The last one with both marks counts until both
 * mark another; one with a single mark waits, and counts as nothing.
 */
export type BoughtLine = LineOf & { readonly amount: string; readonly marks: BookMarks }

export const thingKinds = ['borrowed', 'hired', 'tool', 'leftover', 'salvage'] as const
/** A tool that was borrowed, hired or bought for the job; what was left over; what the old fence brought. */
export type Thing = {
  readonly kind: (typeof thingKinds)[number]
  readonly what: string
  /** Whose it is, or from whom; words. */
  readonly from: string
  /** The item it belongs to: needed where it has a value. */
  readonly item: string
  readonly on: string
  /** Due back, and brought back. Dates; may be empty. */
  readonly due: string
  readonly returned: string
  /** Who keeps it, or took the money for it. Empty: nobody yet. */
  readonly household: Household | ''
  readonly sold: boolean
  /** What it is worth to that household. Money; empty: nothing. It counts, off the item's pot, once both mark it. */
  readonly value: string
  readonly marks: BookMarks
  /** What both marked last, where the thing says something else now: it counts until both mark the thing as it is. */
  readonly agreed?: ThingState
  /** Set when it was taken off the list: it stays in the book, and counts no longer once both mark that. */
  readonly off?: BookMark & { readonly by: Household }
}

/** What of a thing its marks are about. */
export type ThingState = Pick<Thing, 'kind' | 'what' | 'item' | 'household' | 'sold' | 'value' | 'marks'>

/** Hours that a household was asked for, given in money instead, or the other way round. Counts once both mark it. */
export type Conversion = {
  readonly household: Household
  readonly to: 'money' | 'hours'
  readonly item: string
  readonly hours: string
  readonly rate: string
  readonly on: string
  readonly why: string
  readonly marks: BookMarks
}

/** What is agreed about money and hours beside the shares; both mark it, and it is signed. */
export type Arrangements = {
  /** Percent by which an item may come dearer than planned before both look at it again. Empty: not agreed. */
  readonly tolerance: string
  readonly rates: { readonly skilled?: AgreedRate; readonly plain?: AgreedRate }
  readonly instalments?: Instalments
  readonly notes: string
}

/** A rate an hour, and the local quote that it was held against. */
export type AgreedRate = {
  readonly rate: string
  readonly quote: string
  readonly quoteFrom: string
  readonly on: string
}

/** `parts` add to exactly `total`. */
export type Instalments = {
  readonly from: Household
  readonly total: string
  readonly parts: readonly { readonly on: string; readonly amount: string }[]
}

/** The letter that asks the other household before it has ever opened the notebook. */
export type FirstLetter = {
  readonly wrong: string
  readonly proposed: string
  readonly workFrom: string
  readonly workTo: string
  /** Notice period in days, and who said so. */
  readonly noticeDays: string
  readonly saidBy: string
  readonly answerBy: string
  readonly answerTo: string
  readonly on: string
}

export type Term = { readonly topic: string; readonly text: string }

export type Check = {
  readonly what: string
  readonly who: Household | ''
  readonly on: string
  readonly answer: string
  /** A file name, letter number or web address where the answer can be found. */
  readonly reference: string
  readonly done: boolean
}

export type Decision = { readonly on: string; readonly text: string }

/** How the notebook ends: how the fence came out, and who keeps it up. The figures come from the statement and the books. */
export type Closing = {
  /** The day on which the fence stood as it is to stay. */
  readonly on: string
  readonly asBuilt: readonly { readonly what: string; readonly measured: string }[]
  readonly upkeep: readonly UpkeepDuty[]
  readonly notes: string
}

export const upkeepIntervals = ['month', 'quarter', 'year', '2 years', '5 years'] as const
export type UpkeepDuty = {
  readonly what: string
  readonly household: Keeper
  /** How often. Empty: when it is needed. */
  readonly every: (typeof upkeepIntervals)[number] | ''
}

/** Utility marks run out, an inspection is due, a screen comes down. */
export type DatedDuty = {
  readonly what: string
  readonly on: string
  readonly household: Keeper
  /** Comes round again. Empty: once. */
  readonly every: (typeof upkeepIntervals)[number] | ''
  readonly notes: string
  readonly done: boolean
}
