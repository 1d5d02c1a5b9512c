import type { Notebook } from '../agreement/notebook.ts'
import { type Household, households } from '../people/household.ts'

/**
 * Toward which household a gate opens, read from what was typed: "toward household a", or a household's own name.
 * "both ways" is both. Empty where the text names neither, or says "away from" or "not"; a drawing then shows no swing
 * rather than a guess.
 */
export function opensToward(
  notebook: { readonly households: Notebook['households'] },
  opens: string,
): readonly Household[] {
  const text = opens.toLowerCase()
  if (/\b(away|from|not|never|no)\b(?!\.)/.test(text)) return []
  if (/\bboth (ways|sides|directions|households)\b/.test(text)) return households
  const lettered = households.filter((household) => holdsWord(text, `household ${household}`))
  if (lettered.length > 0) return lettered
  return households.filter((household) =>
    holdsWord(text, notebook.households[household].name.trim().toLowerCase()),
  )
}

/** Whether the text holds the words with no letter or digit next to them: "no. 12" is not in "no. 120". */
function holdsWord(text: string, words: string): boolean {
  if (words === '') return false
  for (let at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
    const around = text.slice(Math.max(0, at - 1), at) + text.slice(at + words.length, at + words.length + 1)
    if (!/[\p{L}\p{N}]/u.test(around)) return true
  }
  return false
}
