import type { Household } from '../core/people/household.ts'

/** The database keeps a household as text, held to 'a' or 'b' by a CHECK; anything else is a broken database. */
export function storedHousehold(text: string): Household {
  if (text === 'a' || text === 'b') {
    return text
  }
  throw new Error(`The database holds a household "${text}"; there are only a and b.`)
}
