/** The two households of one boundary; there are never more and never fewer. */
export type Household = 'a' | 'b'

export const households: readonly Household[] = ['a', 'b']

export function otherHousehold(household: Household): Household {
  return household === 'a' ? 'b' : 'a'
}

/** One value for each household. */
export type ForBoth<Value> = { readonly a: Value; readonly b: Value }
