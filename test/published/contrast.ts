/** Relative luminance of a colour like #767676 by WCAG 2.2. */
function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * (red ?? Number.NaN) + 0.7152 * (green ?? Number.NaN) + 0.0722 * (blue ?? Number.NaN)
}

/** Contrast of two colours by WCAG 2.2: from 1, none, to 21, black on white. */
export function contrast(one: string, other: string): number {
  const [darker, lighter] = [luminance(one), luminance(other)].sort((left, right) => left - right)
  return ((lighter ?? Number.NaN) + 0.05) / ((darker ?? Number.NaN) + 0.05)
}

export type Scheme = ReadonlyMap<string, string>

/** The colours of a style sheet by name: the light scheme, and the dark one, which changes some of them. */
export function coloursIn(sheet: string): { readonly light: Scheme; readonly dark: Scheme } {
  const [first, second, ...more] = sheet.split(/@media\s*\(prefers-color-scheme:\s*dark\)/)
  if (first === undefined || second === undefined || more.length > 0)
    throw new Error('a style sheet with one light and one dark scheme')
  const colours = (part: string) =>
    [...part.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})\s*;/gi)].map(
      ([, name, colour]) => [name ?? '', colour ?? ''] as const,
    )
  return { light: new Map(colours(first)), dark: new Map([...colours(first), ...colours(second)]) }
}
