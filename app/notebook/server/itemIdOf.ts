/** An item's id out of an address; undefined where the address is no text once it is decoded. */
export function itemIdOf(part: string): string | undefined {
  try {
    return decodeURIComponent(part)
  } catch {
    return undefined
  }
}
