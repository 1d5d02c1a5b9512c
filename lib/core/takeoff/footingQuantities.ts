import type { Units } from '../agreement/notebook.ts'
import { compareLengths } from '../amounts/length.ts'
import { assert } from '../assert.ts'
import type { FootingSpec } from './buildUp.ts'
import { acrossPost, bagsForJob, holeFill, isPossibleHole, type PostHole } from './concrete.ts'
import { asNumber, fromMillimetres, numberOf, sumOf } from './exact.ts'
import type { Found } from './finding.ts'
import { lengthOrNothing } from './neededLength.ts'
import type { ItemAt } from './postLayout.ts'
import { measuredQuantity, type Quantity, quantityUnits, volumeIn } from './quantity.ts'
import { placeKey } from './runEdges.ts'
import type { BuiltPost } from './sectionParts.ts'
import type { Step } from './step.ts'
import { litresPerCubicFoot } from './unitFactors.ts'
import { kilogramsOf } from './weighed.ts'

/** Density of placed plain concrete that the weight of what is not bought in bags is reckoned with: 150 lb/ft³. */
const kilogramsPerLitre = 2.4028

/** Concrete and gravel for the holes of one item's posts: whole bags for the item, not hole by hole. */
export function footingQuantities(
  item: ItemAt,
  posts: readonly BuiltPost[],
  units: Units,
  found: Found,
): readonly Quantity[] {
  const holes = posts.flatMap((built) => {
    const hole = holeOf(built, found)
    return hole === undefined ? [] : [{ built, hole, fill: holeFill(hole) }]
  })
  if (holes.length === 0) return []
  const concreted = holes.filter(({ built }) => built.size.footing.fill === 'concrete')
  const concrete = concreted.reduce((sum, { fill }) => sum + fill.concreteLitres, 0)
  const gravel = holes.reduce((sum, { fill }) => sum + fill.gravelLitres, 0)
  const footing = concreted[0]?.built.size.footing
  return [
    ...(footing && concrete > 0
      ? [
          {
            ...concreteQuantity(item, footing, concrete, holeSteps(concreted), units, found),
            ofPosts: concreted.map(({ built, fill }) => ({ post: built.index, amount: fill.concreteLitres })),
          },
        ]
      : []),
    ...(gravel > 0
      ? [
          {
            item,
            part: 'gravel',
            name: { kind: 'gravel' as const },
            quantity: measuredQuantity(volumeIn(quantityUnits(units).volume, gravel)),
            unit: quantityUnits(units).volume,
            kilograms: undefined,
            reclaimed: false,
            ofPosts: holes.map(({ built, fill }) => ({ post: built.index, amount: fill.gravelLitres })),
            workings: bedSteps(holes),
          },
        ]
      : []),
  ]
}

function holeOf({ post, size, piece }: BuiltPost, found: Found): PostHole | undefined {
  if (size.hole.over === 0n || piece.depth.over === 0n) return undefined
  const hole: PostHole = {
    diameter: asNumber(size.hole),
    depth: asNumber(piece.depth),
    gravel: asNumber(size.gravel),
    post: postOf(size),
    overbreakPercent: size.footing.overbreak === '' ? 0 : asNumber(numberOf(size.footing.overbreak)),
  }
  if (isPossibleHole(hole)) return hole
  if (acrossPost(hole.post) > hole.diameter)
    found(`${size.path}.hole`, {
      kind: 'hole-narrower',
      hole: size.hole,
      post: fromMillimetres(acrossPost(hole.post)),
    })
  if (compareLengths(size.gravel, piece.depth) > 0)
    found(post.measured?.depth ? `${post.measured.path}.depth` : `${size.path}.gravel`, {
      kind: 'gravel-fills-hole',
      depth: piece.depth,
      gravel: size.gravel,
    })
  return undefined
}

function postOf({ member, outside }: BuiltPost['size']): PostHole['post'] {
  if (member.shape !== 'rectangular')
    return { kind: member.shape === 'square' ? 'square' : 'round', outside: asNumber(outside) }
  return {
    kind: 'rectangular',
    outside: asNumber(outside),
    thickness: asNumber(lengthOrNothing(member.thickness)),
  }
}

type Dug = { readonly built: BuiltPost; readonly fill: ReturnType<typeof holeFill> }
type Alike = { readonly size: BuiltPost['size']; readonly group: readonly Dug[] }

/** Holes of one size together. */
function alikeHoles(holes: readonly Dug[]): readonly Alike[] {
  const keys = new Map<BuiltPost['size'], string>()
  const groups = new Map<string, Dug[]>()
  for (const dug of holes) {
    const { size } = dug.built
    const key =
      keys.get(size) ?? [size.hole, size.outside, size.gravel].map(placeKey).join() + size.footing.overbreak
    keys.set(size, key)
    const group = groups.get(key)
    if (group) group.push(dug)
    else groups.set(key, [dug])
  }
  return [...groups.values()].map((group) => {
    const size = group[0]?.built.size
    assert(size !== undefined, 'a group of holes has a hole')
    return { size, group }
  })
}

function holeSteps(holes: readonly Dug[]): readonly Step[] {
  return alikeHoles(holes).map(({ size, group }) => ({
    step: 'holes',
    holes: group.length,
    hole: size.hole,
    post: size.outside,
    depth: sumOf(group.map(({ built }) => built.piece.depth)),
    gravel: size.gravel,
    overbreak: size.footing.overbreak,
    litres: group.reduce((sum, { fill }) => sum + fill.concreteLitres, 0),
  }))
}

/** A bed is its whole hole wide: the post in it is not taken off. */
function bedSteps(holes: readonly Dug[]): readonly Step[] {
  return alikeHoles(holes.filter(({ fill }) => fill.gravelLitres > 0)).map(({ size, group }) => ({
    step: 'gravel beds',
    holes: group.length,
    hole: size.hole,
    gravel: size.gravel,
    overbreak: size.footing.overbreak,
    litres: group.reduce((sum, { fill }) => sum + fill.gravelLitres, 0),
  }))
}

function concreteQuantity(
  item: ItemAt,
  footing: FootingSpec,
  litres: number,
  steps: readonly Step[],
  units: Units,
  found: Found,
): Quantity {
  const unit = quantityUnits(units).volume
  const common = { item, part: 'concrete', name: { kind: 'concrete' as const }, reclaimed: false }
  const bagLitres = bagLitresOf(footing, item, found)
  if (bagLitres === undefined) {
    return {
      ...common,
      quantity: measuredQuantity(volumeIn(unit, litres)),
      unit,
      kilograms: litres * kilogramsPerLitre,
      workings: steps,
    }
  }
  const bags = bagsForJob(litres, bagLitres)
  return {
    ...common,
    quantity: String(bags),
    unit: 'bag',
    kilograms: kilogramsOf(footing.bagWeight, { pieces: bags, metres: 0, squareMetres: 0 }),
    workings: [...steps, { step: 'bags', litres, bagLitres, bags }],
  }
}

function bagLitresOf({ bagYield }: FootingSpec, item: ItemAt, found: Found): number | undefined {
  if (bagYield === undefined || bagYield.figure === '' || bagYield.unit === '') return undefined
  const figure = asNumber(numberOf(bagYield.figure))
  if (figure > 0) return bagYield.unit === 'L' ? figure : figure * litresPerCubicFoot
  found(`${item.list}[${item.index}].buildUp.footing.bagYield.figure`, {
    kind: 'zero',
    typed: bagYield.figure,
  })
  return undefined
}
