/** Joins a figure to its unit: every blank becomes a no-break space, so that no line ends inside it. */
export function unbroken(text: string): string {
  return text.trim().replace(/\s+/g, '\u00A0')
}

/** The same within a sentence: figures are joined to the units of length, area, weight and the percent sign after them. */
export function figuresJoined(text: string): string {
  return text
    .replace(/([0-9]) (?=(?:ft|in|m|lb|kg|sq ft|sq m|cu ft|L|%)(?![A-Za-z]))/g, '$1\u00A0')
    .replace(/(\u00A0(?:ft|sq)) (?=[0-9]|ft|m)/g, '$1\u00A0')
    .replace(/([0-9]) (?=[0-9]+\/[0-9]+)/g, '$1\u00A0')
}
