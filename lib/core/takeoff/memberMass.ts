import type { Member } from './buildUp.ts'
import { asNumber } from './exact.ts'
import type { Found } from './finding.ts'
import { aboveZero, lengthOrNothing, neededLength, numberOr } from './neededLength.ts'
import {
  aluminiumDensity,
  type CrossSection,
  isPossibleSection,
  massPerMetre,
  steelDensity,
} from './tubeWeight.ts'

/** What a length of a member weighs and how much of it there is to paint. */
export type MemberMass = {
  /** kg/m; undefined where its size or its density is not said. */
  readonly kilogramsPerMetre: number | undefined
  /** Around its outside, in millimetres; 0 where its size is not said. */
  readonly around: number
  /** Closed by its ends: it has to be vented before it is heated. */
  readonly hollow: boolean
}

const unknown: MemberMass = { kilogramsPerMetre: undefined, around: 0, hollow: false }

/** Mass and surface of a member; a size that is missing, zero or impossible is found at its path. */
export function memberMass(member: Member, path: string, found: Found): MemberMass {
  const outside = neededLength(member.outside, `${path}.outside`, found)
  if (outside === undefined) return unknown
  const width = asNumber(outside)
  const wall = aboveZero(member.wall, `${path}.wall`, found)
  const thickness =
    member.shape === 'rectangular' ? neededLength(member.thickness, `${path}.thickness`, found) : outside
  if (thickness === undefined) return unknown
  const narrow = asNumber(thickness)
  const around =
    member.shape === 'rectangular' || member.shape === 'square' ? 2 * (width + narrow) : Math.PI * width
  const hollow = wall !== undefined
  const density = densityOf(member)
  if (density === undefined) return { kilogramsPerMetre: undefined, around, hollow }
  if (member.shape === 'rectangular' && wall !== undefined) {
    const thick = asNumber(wall)
    if (2 * thick > narrow) return tooThick(member, path, found, around)
    // No rule for rolled corners of unequal sides: reckoned sharp, a few percent on the heavy side.
    const area = width * narrow - (width - 2 * thick) * (narrow - 2 * thick)
    return { kilogramsPerMetre: (area * density) / 1e6, around, hollow }
  }
  const section = crossSection(member, width, narrow, wall === undefined ? undefined : asNumber(wall))
  if (!isPossibleSection(section)) return tooThick(member, path, found, around)
  return { kilogramsPerMetre: massPerMetre(section, density), around, hollow }
}

function tooThick(member: Member, path: string, found: Found, around: number): MemberMass {
  found(`${path}.wall`, {
    kind: 'wall-too-thick',
    wall: lengthOrNothing(member.wall),
    outside: lengthOrNothing(member.shape === 'rectangular' ? member.thickness : member.outside),
  })
  return { kilogramsPerMetre: undefined, around, hollow: true }
}

/** kg/m³: as typed, else of steel or aluminium; undefined for what varies too much to be guessed. */
export function densityOf({ density, material }: Pick<Member, 'density' | 'material'>): number | undefined {
  if (density !== '') return asNumber(numberOr(density, { over: 0n, under: 1n }))
  return material === 'steel' ? steelDensity : material === 'aluminium' ? aluminiumDensity : undefined
}

function crossSection(member: Member, width: number, narrow: number, wall: number | undefined): CrossSection {
  if (member.shape === 'rectangular') return { kind: 'board', width, thickness: narrow }
  if (member.shape === 'square') {
    return wall === undefined
      ? { kind: 'square bar', outside: width }
      : {
          kind: 'square tube',
          outside: width,
          wall,
          corners: member.material === 'aluminium' ? 'sharp' : 'rolled',
        }
  }
  return wall === undefined
    ? { kind: 'round bar', outside: width }
    : { kind: 'round tube', outside: width, wall }
}
