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
  /** Said when the fence stands and both close the notebook. */
  readonly closing?: Closing
  /** What is due or runs out on a day, and whose it is to see to. */
  readonly dates: readonly DatedDuty[]
  /** Build-ups that a household keeps for the next section or gate. */
  readonly buildUps: readonly SavedBuildUp[]
  /** Pieces at hand, measured. */
  readonly inventory: readonly InventoryPiece[]
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

/** A labour line: hours × rate. */
export type LabourLine = {
  readonly task: string
  readonly hours: string
  /** Empty: not priced yet, counts as 0. */
  readonly rate: string
  readonly by: 'hired' | Household
  /** `false`: a gift of labour, shown but in no sum. */
  readonly counts: boolean
}

export type SimplePrinciple =
  | { readonly principle: 'equal' }
  | { readonly principle: 'percent'; readonly a: string; readonly b: string }
  | { readonly principle: 'one'; readonly household: Household }
  | { readonly principle: 'length'; readonly a: string; readonly b: string }
  | { readonly principle: 'use' }
  | { readonly principle: 'benefit'; readonly a: string; readonly b: string }
  | { readonly principle: 'saving'; readonly aloneA: string; readonly aloneB: string }

export type Difference = {
  readonly principle: 'difference'
  readonly basic: string
  readonly basicShare: SimplePrinciple
  readonly upgradeShare: SimplePrinciple
}

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
}

export type Gate = Priced & {
  readonly at: string
  readonly opening: string
  readonly stands: 'line' | Household | ''
  /** Passages a week. */
  readonly uses: { readonly a: string; readonly b: string }
  readonly opens: string
  readonly latch: string
  readonly keys: string
  readonly owner: Keeper
  readonly upkeep: Keeper
  readonly notes: string
  readonly buildUp?: GateBuildUp
}

export type CommonCost = Priced & { readonly notes: string }

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
