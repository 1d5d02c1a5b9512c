import { never } from '../../core/assert.ts'
import type { Member } from '../../core/takeoff/buildUp.ts'
import type { QuantityName } from '../../core/takeoff/quantity.ts'

/** What a quantity is of, as it will stand on the cost line: "pipe for posts, 2 3/8 in round, wall 0.154 in". */
export function quantityText(name: QuantityName): string {
  switch (name.kind) {
    case 'posts':
      return memberText(name.member, postWords[name.which])
    case 'rails':
    case 'frame':
    case 'header':
      return memberText(name.member, memberWords[name.kind])
    case 'roll':
    case 'panel':
    case 'board':
    case 'strip':
    case 'ties':
    case 'finish':
    case 'hinges':
    case 'latch':
      return name.what.trim() || plainWords[name.kind]
    case 'concrete':
    case 'gravel':
    case 'caps':
    case 'brace wire':
      return plainWords[name.kind]
    case 'line':
      return name.what.trim() || `for each ${name.basis}`
    default:
      return never(name)
  }
}

/** A member's own words and its size. */
export function memberText(member: Member, otherwise: string): string {
  const shape = member.shape === '' || member.shape === 'round' ? 'round' : member.shape
  const size =
    member.outside === ''
      ? ''
      : member.shape === 'rectangular' && member.thickness !== ''
        ? `${member.outside} by ${member.thickness}`
        : `${member.outside} ${shape}`
  const wall = member.wall === '' ? '' : `wall ${member.wall}`
  return [member.what.trim() || otherwise, size, wall].filter(Boolean).join(', ')
}

const postWords = {
  posts: 'posts',
  endPosts: 'end posts',
  cornerPosts: 'corner posts',
  gatePosts: 'gate posts',
} as const
const memberWords = { rails: 'rails', frame: 'gate frame', header: 'header over the gate' } as const
const plainWords = {
  roll: 'infill by the roll',
  panel: 'panels',
  board: 'boards',
  strip: 'strip, woven',
  ties: 'ties',
  finish: 'finish',
  hinges: 'hinges',
  latch: 'latch',
  concrete: 'concrete for post holes',
  gravel: 'gravel under posts',
  caps: 'post caps',
  'brace wire': 'brace wire',
} as const
