/**
 * Whom to ask before digging or building: common practice, examples and never a local ruling. A new notebook starts with
 * these as open checks; the households take away what does not concern them.
 */
export const startingChecks: readonly string[] = [
  'Survey and marks: the corner marks are found, or a licensed surveyor has set them',
  'Buried services: power, gas, water and telephone lines are marked before anyone digs',
  'Permit office: whether a permit is needed for this fence',
  'Height limit: what is allowed here, at the front and at the back',
  'Easements and covenants: what the deeds, an owners’ association or a right of way say',
  'Sight lines at drives and street corners',
  'Drainage and flood ways: where surface water goes now and after',
  'Trees and roots: which are protected, and whose they are',
  'Pools: whether the fence is part of a pool barrier, which has rules of its own',
  'Livestock: what has to be kept in or out, and the rules for it',
  'The third neighbour at a corner knows of it',
  'Insurers and lenders of both households have been told',
]

/** The checks of a new notebook, all open. */
export function openStartingChecks(): { what: string }[] {
  return startingChecks.map((what) => ({ what }))
}
