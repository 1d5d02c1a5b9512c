import { compareLengths, type Millimetres } from '../amounts/length.ts'
import type { InventoryPiece, Member } from './buildUp.ts'
import { larger, lowestTerms } from './exact.ts'
import { aboveZero, countOr, lengthOrNothing } from './neededLength.ts'
import type { ItemAt } from './postLayout.ts'

/** What is cut from the same stock, over the whole notebook: one cut plan each. Lengths exact; `lib/cutting` plans them. */
export type CutJob = {
  /** The same for everything of one profile: `round 60.325 3.9116 steel`. */
  readonly key: string
  /** The first member of the job, as typed: what the others are like. */
  readonly member: Member
  readonly pieces: readonly CutJobPiece[]
  /** Lengths that can be bought, each once; empty where any length can be had. */
  readonly stock: readonly Millimetres[]
  /** Pieces at hand that fit the profile, by their place in the notebook's inventory. */
  readonly inventory: readonly {
    readonly index: number
    readonly length: Millimetres
    readonly count: number
  }[]
  /** The widest kerf of all members of the job. */
  readonly kerf: Millimetres
}

export type CutJobPiece = {
  readonly item: ItemAt
  readonly part: 'posts' | 'rails' | 'frame' | 'header'
  readonly length: Millimetres
  readonly count: number
}

/** A member and the pieces of it that one part of an item needs. */
export type CutNeed = {
  readonly member: Member
  readonly item: ItemAt
  readonly part: CutJobPiece['part']
  readonly pieces: readonly { readonly length: Millimetres; readonly count: number }[]
}

export function profileKey(profile: Pick<Member, 'shape' | 'outside' | 'thickness' | 'wall'>): string {
  const size = (typed: string) => {
    if (typed === '') return ''
    const { over, under } = lowestTerms(lengthOrNothing(typed))
    return `${over}/${under}`
  }
  const thickness = profile.shape === 'rectangular' ? ` ${size(profile.thickness)}` : ''
  return `${profile.shape || 'round'} ${size(profile.outside)}${thickness} ${size(profile.wall)}`
}

/** Gathers what is cut from the same profile; each piece at hand goes to the first job that it fits. */
export function cutJobs(needs: readonly CutNeed[], inventory: readonly InventoryPiece[]): readonly CutJob[] {
  const byKey = new Map<string, CutNeed[]>()
  for (const need of needs) {
    if (need.pieces.length === 0 || need.member.outside === '') continue
    const key = `${profileKey(need.member)} ${need.member.material}`
    byKey.set(key, [...(byKey.get(key) ?? []), need])
  }
  const left = new Set(inventory.keys())
  return [...byKey].flatMap(([key, ofJob]) => {
    const member = ofJob[0]?.member
    if (member === undefined) return []
    const fitting = fittingInventory(member, inventory).filter(({ index }) => left.delete(index))
    const stocks = new Map<string, Millimetres>()
    for (const {
      member: { stock },
    } of ofJob) {
      const length = aboveZero(stock, '', ignore)
      if (length) stocks.set(`${length.over}/${length.under}`, length)
    }
    return [
      {
        key,
        member,
        pieces: ofJob.flatMap(({ item, part, pieces }) => pieces.map((piece) => ({ item, part, ...piece }))),
        stock: [...stocks.values()].sort(compareLengths),
        inventory: fitting,
        kerf: ofJob.map((need) => lengthOrNothing(need.member.kerf)).reduce(larger),
      },
    ]
  })
}

/** Pieces at hand of the member's profile; a wall that was not measured fits any. */
export function fittingInventory(member: Member, inventory: readonly InventoryPiece[]): CutJob['inventory'] {
  return inventory.flatMap((piece, index) => {
    const length = aboveZero(piece.length, '', ignore)
    if (length === undefined || piece.outside === '') return []
    const wall = piece.wall || member.wall
    const shape = piece.shape || member.shape
    const thickness = piece.thickness || member.thickness
    const fits = profileKey({ ...piece, wall, shape, thickness }) === profileKey(member)
    return fits ? [{ index, length, count: countOr(piece.count, 1) }] : []
  })
}

/** Zero lengths are found where the build-up is read; here they only count as not said. */
function ignore(): void {}
