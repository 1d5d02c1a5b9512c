import type { Ratio } from '../amounts/ratio.ts'
import type { SharedUses } from './passages.ts'

/** What a principle may look at besides its own keys. */
export type ShareContext = {
  /** Path of the share in the file, for a fault: `sections[0].share.materials`. */
  readonly path: string
  /** Digits after the point of the notebook's currency. */
  readonly digits: number
  /** Passages a week of a gate, as typed, or that they are counted apart; undefined on anything that is not a gate. */
  readonly uses: SharedUses | undefined
}

/** What a is asked for of a pot, exact, in minor units: from 0 to the pot. */
export type ExactShareOfA = Ratio
