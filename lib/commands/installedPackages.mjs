// Whether node_modules holds what package-lock.json asks for, told from npm's own record of what it installed.

/**
 * @typedef {{ version?: string, integrity?: string, optional?: boolean }} LockEntry
 * @typedef {{ packages?: Record<string, LockEntry> }} Lock
 */

/**
 * @param {Lock} wanted package-lock.json
 * @param {Lock | undefined} installed node_modules/.package-lock.json, which npm writes at the end of an install
 * @returns {boolean} true where nothing is missing, another version, or left over; a package for other machines may be missing
 */
export function isInstalled(wanted, installed) {
  if (installed?.packages === undefined) return false
  const present = installed.packages
  const asked = wanted.packages ?? {}
  const allThere = Object.entries(asked).every(([place, entry]) => {
    if (place === '') return true
    const found = present[place]
    if (found === undefined) return entry.optional === true
    return found.version === entry.version && found.integrity === entry.integrity
  })
  return allThere && Object.keys(present).every((place) => asked[place] !== undefined)
}
