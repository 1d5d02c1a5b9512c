import fc from 'fast-check'
import * as known from '../../lib/core/takeoff/buildUp.ts'
import { house, type Json } from './randomLines.ts'

// Everything that a notebook may hold for the take-off, with every key that may be missing missing now and then, and with
// sizes that clash as often as they fit.

const size = fc.constantFrom('', '0 in', '1/8 in', '2 3/8 in', '4 in', '90 mm', '30 in', '6 ft', '2.5 m')
const place = fc.integer({ min: 0, max: 60 }).map((feet) => `${feet} ft`)
const figure = fc.constantFrom('', '0', '1', '2', '0.5', '12.25', '110')
const words = fc.constantFrom('', 'pipe', 'Pfähle ½″')
const sometimes = fc.boolean()

/** Any of these keys, or none of them. */
function some(model: Record<string, fc.Arbitrary<unknown>>, needed: readonly string[] = []) {
  return fc.record(model, { requiredKeys: [...needed] }) as fc.Arbitrary<Json>
}

function choice(values: readonly string[]) {
  return fc.constantFrom('', ...values)
}

const weight = some({ figure, per: choice(known.weightBases) })
const profile = { what: words, shape: choice(known.memberShapes), outside: size, thickness: size, wall: size }
const member = {
  ...profile,
  material: choice(known.memberMaterials),
  density: figure,
  stock: size,
  kerf: size,
  waste: figure,
  reclaimed: sometimes,
}
const hole = { hole: size, depth: size, gravel: size }
const special = some({
  ...profile,
  ...hole,
  material: choice(known.memberMaterials),
  density: figure,
  stock: size,
  bracing: words,
  brace: some({ span: size, assemblies: fc.constantFrom('', '1', '2'), wire: size }),
})
const layer = {
  what: words,
  height: size,
  ground: size,
  waste: figure,
  weight,
  reclaimed: sometimes,
  solid: figure,
}
const layers = fc.array(
  fc.oneof(
    some({ ...layer, kind: fc.constant('roll'), roll: size, lap: size, wrap: size }, ['kind']),
    some({ ...layer, kind: fc.constant('panel'), width: size, rakes: sometimes }, ['kind']),
    some({ ...layer, kind: fc.constant('board'), width: size, gap: size, thickness: size }, ['kind']),
    some(
      {
        ...layer,
        kind: fc.constant('strip'),
        opening: size,
        width: size,
        thickness: size,
        material: choice(known.memberMaterials),
        takeUp: figure,
        coilWidth: size,
        coil: size,
      },
      ['kind'],
    ),
  ),
  { maxLength: 2 },
)
const ofEveryItem = {
  name: words,
  infill: layers,
  footing: some({
    fill: choice(known.fills),
    overbreak: figure,
    bagYield: some({ figure, unit: choice(known.volumeUnits) }),
    bagWeight: weight,
  }),
  finishes: fc.array(
    some({
      what: words,
      of: choice(known.finishedParts),
      coverage: figure,
      coverageUnit: choice(known.coverageUnits),
      unit: words,
      coats: figure,
    }),
    { maxLength: 1 },
  ),
  lines: fc.array(
    some(
      {
        what: words,
        basis: fc.constantFrom(...known.freeLineBases),
        factor: figure,
        unit: words,
        pack: figure,
        packUnit: words,
        waste: figure,
        weight,
        reclaimed: sometimes,
      },
      ['basis'],
    ),
    { maxLength: 1 },
  ),
}

export const randomBuildUp: fc.Arbitrary<Json> = some({
  ...ofEveryItem,
  slope: choice(known.slopes),
  posts: some(
    {
      ...member,
      ...hole,
      spacing: fc.constantFrom('', '0 ft', '6 ft', '8 ft', '2.4 m'),
      layout: choice(known.postLayouts),
      top: choice(known.postTops),
      deduction: size,
    },
    ['spacing'],
  ),
  endPosts: special,
  cornerPosts: special,
  gatePosts: special,
  rails: some({
    ...member,
    count: fc.constantFrom('', '0', '1', '3'),
    joints: choice(known.railJoints),
    welded: sometimes,
    temperatureRange: figure,
    slip: size,
  }),
  ties: some({ what: words, perPost: figure, perRail: figure }),
})

export const randomGateBuildUp: fc.Arbitrary<Json> = some({
  ...ofEveryItem,
  leaves: fc.constantFrom('', '0', '1', '2'),
  clearances: some({ hinge: size, latch: size, middle: size, ground: size }),
  leafHeight: size,
  frame: some(member),
  brace: choice(known.gateBraces),
  header: some({ ...member, clear: size }),
  hinges: some({ what: words, perLeaf: figure, apart: size }),
  latch: words,
  posts: special,
})

/** Where a section lies, how high it is, what it is made of, and what was measured of it. */
export const sectionInPlace: fc.Arbitrary<Json> = some({
  from: place,
  to: place,
  height: some({
    agreed: fc.constantFrom('', '0 ft', '6 ft', '1.8 m'),
    measuredFrom: choice(['a', 'b', 'higher', 'lower']),
  }),
  buildUp: randomBuildUp,
  measured: fc.array(
    some({ post: fc.constantFrom('', '0', '1', '2', '1.5', '9'), at: place, depth: size, why: words }),
    { maxLength: 2 },
  ),
})

export const gateInPlace: fc.Arbitrary<Json> = some({
  at: place,
  opening: fc.constantFrom('', '0 ft', '3 ft', '4 ft', '3.5 m'),
  opens: fc.constantFrom('', 'toward household a', 'toward both'),
  buildUp: randomGateBuildUp,
})

const grade = fc.constantFrom('', '0 in', '-3 in', '14 in', '0.5 m')

export const randomLine: fc.Arbitrary<Json> = some({
  stations: fc.array(
    some(
      {
        at: place,
        setback: fc.record({ side: house, distance: fc.constantFrom('0 in', '2 in', '5 cm') }),
        gradeA: grade,
        gradeB: grade,
        gradeFence: grade,
        angle: fc.record({ degrees: fc.constantFrom('', '0', '45', '180'), toward: house }),
      },
      ['at'],
    ),
    { maxLength: 4 },
  ),
  error: fc.constantFrom('', '0 in', '3 in'),
  limits: fc.array(
    some({
      from: place,
      to: place,
      limit: fc.constantFrom('', '0 ft', '5 ft', '2 m'),
      measuredFrom: choice(['a', 'b', 'higher', 'lower']),
      saidBy: words,
      on: fc.constantFrom('', '2027-02-10'),
    }),
    { maxLength: 2 },
  ),
  site: some({
    wind: some({
      speed: figure,
      unit: choice(known.windUnits),
      exposure: choice(known.exposures),
      saidBy: words,
    }),
    soil: some({
      what: words,
      lateral: figure,
      unit: choice(known.lateralUnits),
      doubled: sometimes,
      saidBy: words,
    }),
    frost: some({ depth: size, saidBy: words }),
  }),
})

export const randomInventory = fc.array(
  some({
    ...profile,
    length: size,
    count: fc.constantFrom('', '0', '1', '3'),
    household: house,
    notes: words,
  }),
  { maxLength: 2 },
)

export const savedBuildUps = fc.array(
  some({ name: words, household: house, section: randomBuildUp, gate: randomGateBuildUp }),
  { maxLength: 1 },
)
