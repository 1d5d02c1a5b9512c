import type { BuildUp, InfillLayer } from './buildUp.ts'
import { asNumber, numberOf } from './exact.ts'
import { countOr, lengthOrNothing } from './neededLength.ts'
import type { Lack } from './siteFigures.ts'
import type { WindArea } from './windPressure.ts'

/** How much of a bay's outline stops the wind: shares from 0 to 1 of the outline. */
export type SolidShare = {
  /** Each layer's share of its own outline, and whether it was typed. */
  readonly layers: readonly { readonly index: number; readonly share: number; readonly typed: boolean }[]
  /** All layers together over the whole outline. */
  readonly infill: number
  readonly rails: number
  readonly posts: number
  /** Infill, rails and posts together. */
  readonly whole: number
  readonly members: WindArea['members']
}

/** Sizes in millimetres: the bay from post centre to post centre, and the highest top over the ground. */
export type Outline = { readonly bay: number; readonly height: number; readonly post: number }

/**
 * Where two things cover the same stretch, the one covers of the other what it covers of the air: together they leave
 * open the product of what each leaves open. A layer without a height of its own reaches up to the top.
 *
 * @returns the layers whose share is neither said nor can be worked out, where there are any
 */
export function solidShare(
  { infill, rails, posts }: BuildUp,
  outline: Outline,
  path: string,
): SolidShare | readonly Lack[] {
  const shares = infill.map((layer, index) => ({ layer, index, ...shareOf(layer) }))
  const lacks = shares.flatMap(({ index, share }): Lack[] =>
    share === undefined ? [{ path: `${path}.infill[${index}].solid`, what: 'solid share' }] : [],
  )
  if (lacks.length > 0) return lacks
  const layers = shares.flatMap(({ layer, index, share, typed }) =>
    share === undefined ? [] : [{ layer, index, share, typed }],
  )
  const ofInfill = overHeight(layers, outline.height)
  const railHeight = asNumber(lengthOrNothing(rails.outside)) * countOr(rails.count, 0)
  const ofRails = Math.min(1, railHeight / outline.height)
  const ofPosts = Math.min(1, outline.post / outline.bay)
  const round =
    infill.every(({ kind }) => kind === 'roll') && [posts, rails].every(({ shape }) => isRound(shape))
  return {
    layers: layers.map(({ index, share, typed }) => ({ index, share, typed })),
    infill: ofInfill,
    rails: ofRails,
    posts: ofPosts,
    whole: 1 - (1 - ofInfill) * (1 - ofRails) * (1 - ofPosts),
    // Thin wire is taken where all is round: its coefficient is the higher of the two for round members.
    members: round ? { kind: 'round', diameterFeet: 0 } : { kind: 'flat' },
  }
}

function isRound(shape: BuildUp['posts']['shape']): boolean {
  return shape === '' || shape === 'round'
}

/** A layer's share of its own outline: as typed, else of its boards or strips over boards and gaps or openings. */
function shareOf(layer: InfillLayer): { readonly share: number | undefined; readonly typed: boolean } {
  if (layer.solid !== '') return { share: Math.min(1, asNumber(numberOf(layer.solid)) / 100), typed: true }
  if (layer.kind === 'board') return { share: part(layer.width, layer.width, layer.gap), typed: false }
  if (layer.kind === 'strip') return { share: part(layer.width, layer.opening), typed: false }
  return { share: undefined, typed: false }
}

function part(covered: string, ...whole: readonly string[]): number | undefined {
  const [over, under] = [
    asNumber(lengthOrNothing(covered)),
    whole.reduce((sum, typed) => sum + asNumber(lengthOrNothing(typed)), 0),
  ]
  return over > 0 && under > 0 ? Math.min(1, over / under) : undefined
}

/** The layers one behind another, from the ground to the top; between two edges nothing changes. */
function overHeight(
  layers: readonly { readonly layer: InfillLayer; readonly share: number }[],
  height: number,
): number {
  const stretches = layers.map(({ layer, share }) => {
    const from = Math.min(height, asNumber(lengthOrNothing(layer.ground)))
    const to = layer.height === '' ? height : from + asNumber(lengthOrNothing(layer.height))
    return { from, to: Math.min(height, to), share }
  })
  const edges = [...new Set(stretches.flatMap(({ from, to }) => [from, to]))].sort((one, two) => one - two)
  let covered = 0
  for (const [index, to] of edges.slice(1).entries()) {
    const from = edges[index] ?? to
    const open = stretches
      .filter((stretch) => stretch.from <= from && to <= stretch.to)
      .reduce((left, { share }) => left * (1 - share), 1)
    covered += (to - from) * (1 - open)
  }
  // A sum of floats may end a hair above the whole.
  return Math.min(1, covered / height)
}
