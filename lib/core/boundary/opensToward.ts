import type { Notebook } from '../agreement/notebook.ts'
import { type Household, households } from '../people/household.ts'

/**
 * Toward which household a gate opens, read from what was typed: "toward household a", or a household's own name.
 * "both ways" is both. Empty where the text names neither; a drawing then shows no swing rather than a guess.
 */
export function opensToward(
  notebook: { readonly households: Notebook['households'] },
  opens: string,
): readonly Household[] {
  const text = opens.toLowerCase()
  if (/\bboth (ways|sides|directions|households)\b/.test(text)) return households
  return households.filter((household) => {
    const name = notebook.households[household].name.trim().toLowerCase()
    return new RegExp(`\\bhousehold ${household}\\b`).test(text) || (name !== '' && text.includes(name))
  })
}
