import type { Household } from '../people/household.ts'

/**
 * A build-up: what a unit of fence, or one gate, is made of, for estimating. Plain data of the notebook file with every
 * default filled in; lengths and numbers are strings as typed, an empty string is "not said". See
 * `lib/forms/notebook-format.md`.
 */

export const memberShapes = ['round', 'square', 'rectangular'] as const
export const memberMaterials = ['steel', 'aluminium', 'wood', 'other'] as const

/** Anything cut to length from stock: post, rail, frame, header, board. */
export type Member = {
  /** What it is, in words: "reclaimed pipe". */
  readonly what: string
  readonly shape: (typeof memberShapes)[number] | ''
  /** Diameter of a round one, side of a square one, the wider side of a rectangular one. Length. */
  readonly outside: string
  /** The narrower side of a rectangular one. Length. */
  readonly thickness: string
  /** Wall of a tube; empty: solid. Length. */
  readonly wall: string
  readonly material: (typeof memberMaterials)[number] | ''
  /** Kilograms per cubic metre; empty: steel 7850, aluminium 2700, no weight for others. Number. */
  readonly density: string
  /** Length it is bought in; empty: any. */
  readonly stock: string
  /** Lost at each cut. Length; empty: nothing. */
  readonly kerf: string
  /** Percent added to the quantity. Number. */
  readonly waste: string
  readonly reclaimed: boolean
}

export const postLayouts = ['equal', 'stock'] as const
export const postTops = ['saddle', 'flat', 'beside'] as const

export type HoleSpec = {
  /** Diameter of the hole; empty: no hole (driven, or set on a plate). */
  readonly hole: string
  readonly depth: string
  readonly gravel: string
}

export type PostSpec = Member &
  HoleSpec & {
    /** Largest distance between post centres. */
    readonly spacing: string
    /** Equal bays, or bays laid out to the stock of the rails and one remainder. Empty: equal. */
    readonly layout: (typeof postLayouts)[number] | ''
    /** Whether the top rail sits on the post in a saddle, on its flat top, or beside it. Empty: beside. */
    readonly top: (typeof postTops)[number] | ''
    /** From the top of the fence down to the highest point of the post piece; empty: worked out from `top`. */
    readonly deduction: string
  }

/** How an end, corner or gate post differs from a line post; whatever is empty is as on a line post. */
export type SpecialPost = HoleSpec & {
  readonly what: string
  readonly shape: Member['shape']
  readonly outside: string
  readonly thickness: string
  readonly wall: string
  readonly material: Member['material']
  readonly density: string
  readonly stock: string
  /** In words. */
  readonly bracing: string
  readonly brace?: BraceSpec
}

/** A brace assembly beside an end, corner or gate post: a second post, a level rail between the two, a wire. */
export type BraceSpec = {
  /** From the post to the brace post. Length. */
  readonly span: string
  /** How many in a row, in each direction. Number; empty: one. */
  readonly assemblies: string
  /** Brace wire of one assembly. Length. */
  readonly wire: string
}

export const railJoints = ['posts', 'spliced'] as const

export type RailSpec = Member & {
  /** Rails one above the other. Number; empty: none. */
  readonly count: string
  /** Joints only over posts, or spliced pieces let in where a bay is longer than the stock. Empty: posts. */
  readonly joints: (typeof railJoints)[number] | ''
  /** Welded to the posts: length of weld and heat movement are worked out. */
  readonly welded: boolean
  /** Between the coldest and the hottest day. Number, degrees Fahrenheit. Empty: 100. */
  readonly temperatureRange: string
  /** Movement that one slip joint takes. Length. */
  readonly slip: string
}

export const weightBases = ['lb each', 'kg each', 'lb/ft', 'kg/m', 'lb/sq ft', 'kg/sq m'] as const
export type Weighed = { readonly figure: string; readonly per: (typeof weightBases)[number] | '' }

/** Bought by the roll, by the panel, by the board; or strips woven into a mesh of another layer. */
export type InfillLayer =
  | (InfillCommon & {
      readonly kind: 'roll'
      readonly roll: string
      readonly lap: string
      readonly wrap: string
    })
  | (InfillCommon & { readonly kind: 'panel'; readonly width: string; readonly rakes: boolean })
  | (InfillCommon & {
      readonly kind: 'board'
      readonly width: string
      readonly gap: string
      readonly thickness: string
    })
  | (InfillCommon & {
      readonly kind: 'strip'
      /** Height of one opening of the mesh. */
      readonly opening: string
      readonly width: string
      /** With the material it gives the strip's weight where none is typed. */
      readonly thickness: string
      readonly material: Member['material']
      /** Length of strip per length of fence, as it weaves in and out. Number; empty: 1. */
      readonly takeUp: string
      /** Width and length of the coil that is slit. */
      readonly coilWidth: string
      readonly coil: string
    })

type InfillCommon = {
  readonly what: string
  /** Height of this layer; empty: the agreed height less `ground`. */
  readonly height: string
  /** Left open under it. */
  readonly ground: string
  readonly waste: string
  readonly weight?: Weighed
  readonly reclaimed: boolean
  /** Percent of its outline that stops the wind. Number; empty: worked out for boards and strips, else not known. */
  readonly solid: string
}

export type TieSpec = {
  readonly what: string
  /** Ties on each post. Number. */
  readonly perPost: string
  /** Ties on each rail of each bay. Number. */
  readonly perRail: string
}

export const fills = ['concrete', 'earth'] as const
export const volumeUnits = ['cu ft', 'L'] as const

export type FootingSpec = {
  readonly fill: (typeof fills)[number] | ''
  /** Percent by which holes come out larger. Number. */
  readonly overbreak: string
  /** What one bag makes. */
  readonly bagYield?: { readonly figure: string; readonly unit: (typeof volumeUnits)[number] | '' }
  readonly bagWeight?: Weighed
}

export const finishedParts = ['members', 'infill', 'both'] as const
export const coverageUnits = ['sq ft', 'sq m', 'ft', 'm'] as const

export type FinishSpec = {
  readonly what: string
  readonly of: (typeof finishedParts)[number] | ''
  /** What one unit covers once; by area or by length as the unit says. */
  readonly coverage: string
  readonly coverageUnit: (typeof coverageUnits)[number] | ''
  /** What it is bought in: "gal". */
  readonly unit: string
  readonly coats: string
}

export const freeLineBases = ['post', 'bay', 'ft', 'm', 'sq ft', 'sq m', 'gate', 'once'] as const
/** factor × the number of posts, bays, feet …; bought in packs of `pack`, where said. */
export type FreeLine = {
  readonly what: string
  readonly basis: (typeof freeLineBases)[number]
  readonly factor: string
  readonly unit: string
  /** How much one pack holds; empty: bought loose. Number. */
  readonly pack: string
  readonly packUnit: string
  readonly waste: string
  readonly weight?: Weighed
  readonly reclaimed: boolean
}

export const slopes = ['raked', 'stepped'] as const
export type Slope = (typeof slopes)[number]

export type BuildUp = {
  readonly name: string
  readonly slope: Slope | ''
  readonly posts: PostSpec
  readonly endPosts?: SpecialPost
  readonly cornerPosts?: SpecialPost
  readonly gatePosts?: SpecialPost
  readonly rails: RailSpec
  readonly infill: readonly InfillLayer[]
  readonly ties: TieSpec
  readonly footing: FootingSpec
  readonly finishes: readonly FinishSpec[]
  readonly lines: readonly FreeLine[]
}

export const gateBraces = ['compression', 'tension', 'none'] as const

export type GateBuildUp = {
  readonly name: string
  /** One or two. Number; empty: one. */
  readonly leaves: string
  readonly clearances: {
    readonly hinge: string
    readonly latch: string
    /** Between two leaves. */
    readonly middle: string
    readonly ground: string
  }
  /** Height of the leaf; empty: the section's agreed height less the clearance over the ground. */
  readonly leafHeight: string
  readonly frame: Member
  readonly brace: (typeof gateBraces)[number] | ''
  readonly infill: readonly InfillLayer[]
  readonly header?: Member & { readonly clear: string }
  readonly hinges: { readonly what: string; readonly perLeaf: string; readonly apart: string }
  readonly latch: string
  readonly posts?: SpecialPost
  readonly footing: FootingSpec
  readonly finishes: readonly FinishSpec[]
  readonly lines: readonly FreeLine[]
}

/** A build-up that a household keeps for the next section or gate. */
export type SavedBuildUp = {
  readonly name: string
  readonly household: Household | ''
  readonly section?: BuildUp
  readonly gate?: GateBuildUp
}

/** A post of a section as it was measured on site; counted from the section's beginning, from 1. */
export type MeasuredPost = {
  readonly post: string
  /** Where it stands; empty: as planned. */
  readonly at: string
  /** How deep its hole is; empty: as in the build-up. */
  readonly depth: string
  readonly why: string
}

/** A piece at hand, measured: it is cut before anything is bought. */
export type InventoryPiece = {
  readonly what: string
  readonly shape: Member['shape']
  readonly outside: string
  readonly thickness: string
  readonly wall: string
  readonly length: string
  /** How many of this length. Number; empty: one. */
  readonly count: string
  readonly household: Household | ''
  readonly notes: string
}

/** A limit on height that somebody named for a stretch of the line. The program knows no law. */
export type HeightLimit = {
  readonly from: string
  readonly to: string
  readonly limit: string
  /** Whose ground it is measured from. Empty: each household's own. */
  readonly measuredFrom: 'a' | 'b' | 'higher' | 'lower' | ''
  readonly saidBy: string
  readonly on: string
}

export const windUnits = ['mph', 'km/h', 'm/s'] as const
/** Exposure categories of ASCE 7: among houses or trees, open country, open water. */
export const exposures = ['B', 'C', 'D'] as const
export const lateralUnits = ['psf/ft', 'kPa/m'] as const

/** What the place is like, for the look at wind and posts, each with who said so. The program knows no place. */
export type Site = {
  readonly wind: {
    /** Basic wind speed, a gust of three seconds. Number. */
    readonly speed: string
    readonly unit: (typeof windUnits)[number] | ''
    readonly exposure: (typeof exposures)[number] | ''
    readonly saidBy: string
  }
  readonly soil: {
    /** In words. */
    readonly what: string
    /** What the soil bears sideways for each foot or metre of depth. Number. */
    readonly lateral: string
    readonly unit: (typeof lateralUnits)[number] | ''
    /** Twice that, as a code may allow for poles that a little motion at the ground does not harm. */
    readonly doubled: boolean
    readonly saidBy: string
  }
  /** How deep the ground freezes. */
  readonly frost: { readonly depth: string; readonly saidBy: string }
}
