import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { lengthOf, type Millimetres } from '../../../lib/core/amounts/length.ts'
import { asNumber, times } from '../../../lib/core/takeoff/exact.ts'
import { lengthIn, type Quantity } from '../../../lib/core/takeoff/quantity.ts'
import { type TakeOff, takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { halves, notebookWith } from '../madeNotebook.ts'

type Data = Record<string, unknown>

/** Pipe of nominal size 2, schedule 40. */
export const pipe = { shape: 'round', outside: '2 3/8 in', wall: '0.154 in', material: 'steel' }

export const steelPosts = {
  ...pipe,
  spacing: '8 ft',
  hole: '12 in',
  depth: '36 in',
  top: 'saddle',
  deduction: '1 3/4 in',
}

export const steelBuildUp = { posts: steelPosts, rails: { ...pipe, count: '2' } }

/** A section of 6 ft from the higher ground, with the steel build-up. */
export function fence(from: string, to: string, more: Data = {}): Data {
  return {
    id: `${from} to ${to}`,
    from,
    to,
    height: { agreed: '6 ft', measuredFrom: 'higher' },
    buildUp: steelBuildUp,
    share: halves,
    ...more,
  }
}

export function gateAt(at: string, opening: string, more: Data = {}): Data {
  return { id: `gate at ${at}`, at, opening, share: halves, ...more }
}

export function notebookOf(sections: readonly Data[], more: Data = {}): Notebook {
  return notebookWith({ sections, ...more })
}

export function takeOffOf(sections: readonly Data[], more: Data = {}): TakeOff {
  return takeOff(notebookOf(sections, more))
}

export function feet(length: Millimetres | undefined): number {
  if (length === undefined) throw new Error('a length that is not there')
  return asNumber(lengthIn('ft', length))
}

export function inches(length: Millimetres | undefined): number {
  if (length === undefined) throw new Error('a length that is not there')
  return asNumber(lengthIn('ft', times(length, 12)))
}

/** Exactly the same length, however its fraction is written. */
export function sameLength(length: Millimetres | undefined, typed: string): boolean {
  const other = lengthOf(typed)
  return length !== undefined && length.over * other.under === other.over * length.under
}

export function quantityOf(
  { quantities }: TakeOff,
  part: string,
  list: 'sections' | 'gates' = 'sections',
): Quantity {
  const found = quantities.find((quantity) => quantity.part === part && quantity.item.list === list)
  if (found === undefined) throw new Error(`no ${part} among ${quantities.map((one) => one.part).join(', ')}`)
  return found
}

export function findingsOf({ findings }: TakeOff): string[] {
  return findings.map(({ path, kind }) => `${path}: ${kind}`)
}
