import { z } from 'zod'
import { measuredFromKinds } from '../core/agreement/notebook.ts'
import * as known from '../core/takeoff/buildUp.ts'
import { choice, date, length, neededChoice, number, text, yesOrNo } from './leaf.ts'

/** What the notebook file may hold for the take-off: build-ups, measured posts, pieces at hand, limits on height. */
export function buildUpSchemas(object: typeof z.looseObject) {
  const list = <Entry extends z.ZodType>(entry: Entry) => z.array(entry).default([])
  const size = length('may be missing')
  const figure = number('may be missing', 6, 'may be missing')
  const weighed = object({ figure, per: choice(known.weightBases) })

  const profile = {
    what: text,
    shape: choice(known.memberShapes),
    outside: size,
    thickness: size,
    wall: size,
  }
  const member = {
    ...profile,
    material: choice(known.memberMaterials),
    density: figure,
    stock: size,
    kerf: size,
    waste: figure,
    reclaimed: yesOrNo(false),
  }
  const hole = { hole: size, depth: size, gravel: size }
  const specialPost = object({
    ...profile,
    ...hole,
    material: choice(known.memberMaterials),
    density: figure,
    stock: size,
    bracing: text,
    brace: object({ span: size, assemblies: figure, wire: size }).optional(),
  })
  const posts = object({
    ...member,
    ...hole,
    spacing: size,
    layout: choice(known.postLayouts),
    top: choice(known.postTops),
    deduction: size,
  })
  const rails = object({
    ...member,
    count: figure,
    joints: choice(known.railJoints),
    welded: yesOrNo(false),
    temperatureRange: figure,
    slip: size,
  })
  const layer = {
    what: text,
    height: size,
    ground: size,
    waste: figure,
    weight: weighed.optional(),
    reclaimed: yesOrNo(false),
    solid: figure,
  }
  const infill = z.discriminatedUnion('kind', [
    object({ ...layer, kind: z.literal('roll'), roll: size, lap: size, wrap: size }),
    object({ ...layer, kind: z.literal('panel'), width: size, rakes: yesOrNo(false) }),
    object({ ...layer, kind: z.literal('board'), width: size, gap: size, thickness: size }),
    object({
      ...layer,
      kind: z.literal('strip'),
      opening: size,
      width: size,
      thickness: size,
      material: choice(known.memberMaterials),
      takeUp: figure,
      coilWidth: size,
      coil: size,
    }),
  ])
  const footing = object({
    fill: choice(known.fills),
    overbreak: figure,
    bagYield: object({ figure, unit: choice(known.volumeUnits) }).optional(),
    bagWeight: weighed.optional(),
  }).prefault({})
  const finishes = list(
    object({
      what: text,
      of: choice(known.finishedParts),
      coverage: figure,
      coverageUnit: choice(known.coverageUnits),
      unit: text,
      coats: figure,
    }),
  )
  const lines = list(
    object({
      what: text,
      basis: neededChoice(known.freeLineBases),
      factor: figure,
      unit: text,
      pack: figure,
      packUnit: text,
      waste: figure,
      weight: weighed.optional(),
      reclaimed: yesOrNo(false),
    }),
  )
  const buildUp = object({
    name: text,
    slope: choice(known.slopes),
    posts: posts.prefault({}),
    endPosts: specialPost.optional(),
    cornerPosts: specialPost.optional(),
    gatePosts: specialPost.optional(),
    rails: rails.prefault({}),
    infill: list(infill),
    ties: object({ what: text, perPost: figure, perRail: figure }).prefault({}),
    footing,
    finishes,
    lines,
  })
  const gateBuildUp = object({
    name: text,
    leaves: figure,
    clearances: object({ hinge: size, latch: size, middle: size, ground: size }).prefault({}),
    leafHeight: size,
    frame: object(member).prefault({}),
    brace: choice(known.gateBraces),
    infill: list(infill),
    header: object({ ...member, clear: size }).optional(),
    hinges: object({ what: text, perLeaf: figure, apart: size }).prefault({}),
    latch: text,
    posts: specialPost.optional(),
    footing,
    finishes,
    lines,
  })
  return {
    buildUp,
    gateBuildUp,
    savedBuildUp: object({
      name: text,
      household: choice(['a', 'b']),
      section: buildUp.optional(),
      gate: gateBuildUp.optional(),
    }),
    measuredPost: object({ post: figure, at: size, depth: size, why: text }),
    inventoryPiece: object({
      ...profile,
      length: size,
      count: figure,
      household: choice(['a', 'b']),
      notes: text,
    }),
    heightLimit: object({
      from: size,
      to: size,
      limit: size,
      measuredFrom: choice(measuredFromKinds),
      saidBy: text,
      on: date(true),
    }),
    site: object({
      wind: object({
        speed: figure,
        unit: choice(known.windUnits),
        exposure: choice(known.exposures),
        saidBy: text,
      }).prefault({}),
      soil: object({
        what: text,
        lateral: figure,
        unit: choice(known.lateralUnits),
        doubled: yesOrNo(false),
        saidBy: text,
      }).prefault({}),
      frost: object({ depth: size, saidBy: text }).prefault({}),
    }),
  }
}
