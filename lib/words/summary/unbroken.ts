/** Joins a figure to its unit: every blank becomes a no-break space, so that no line ends inside it. */
export function unbroken(text: string): string {
  return text.trim().replace(/\s+/g, '\u00A0')
}
