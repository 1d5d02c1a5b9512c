import { type TakeOff, takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import type { Opened } from './opened.ts'

/**
 * The take-off that cost lines follow: in the units that are agreed, as it puts its quantities among them, whatever this
 * browser shows.
 *
 * @param shown that of `notebook`
 */
export function followedTakeOff({ notebook, asAgreed }: Opened, shown: TakeOff): TakeOff {
  return notebook.units === asAgreed.units ? shown : takeOff(asAgreed)
}
