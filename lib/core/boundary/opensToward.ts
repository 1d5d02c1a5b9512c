import type { Notebook } from '../agreement/notebook.ts'
import { type Household, households } from '../people/household.ts'

type Named = { readonly households: Notebook['households'] }

/**
 * Toward which household a gate opens, read from what was typed: "toward household a", a household's own name, or the
 * house number in it ("toward No. 7" where one is "Household at no. 7"). "both ways" is both. Empty where the text names
 * neither, or says "away from" or "not"; a drawing then shows no swing rather than a guess.
 */
export function opensToward(notebook: Named, opens: string): readonly Household[] {
  const text = opens.toLowerCase()
  const plain = text.replace(numbered, '')
  if (/\b(away|from|not|never|no)\b(?!\.)/.test(plain)) return []
  if (/\bboth (ways|sides|directions|households)\b/.test(text)) return households
  const lettered = households.filter((household) => placeOf(text, `household ${household}`) !== undefined)
  if (lettered.length > 0) return lettered
  return households.filter((household) => nameIn(notebook, household, text) !== undefined)
}

/**
 * Where what was typed names a household, by letter, name or house number: from and to as places in the text. `undefined`
 * where it does not.
 */
export function whereNamed(
  notebook: Named,
  household: Household,
  typed: string,
): { readonly from: number; readonly to: number } | undefined {
  const text = typed.toLowerCase()
  // A few letters are longer in lower case: then the places in one text are none in the other.
  if (text.length !== typed.length) return undefined
  return placeOf(text, `household ${household}`) ?? nameIn(notebook, household, text)
}

function nameIn({ households: entries }: Named, household: Household, text: string) {
  const name = (entry: Household) => entries[entry].name.trim().toLowerCase()
  const whole = placeOf(text, name(household))
  if (whole !== undefined) return whole
  const [number, other] = [numberIn(name(household)), numberIn(name(household === 'a' ? 'b' : 'a'))]
  if (number === undefined || number === other) return undefined
  for (const found of text.matchAll(numbered)) {
    if (found[1]?.replace(/\s/g, '') === number)
      return { from: found.index, to: found.index + found[0].length }
  }
  return undefined
}

/** A house number as it is said: "no. 7", "no 7", "number 7", "nr. 7 b". */
const numbered = /\b(?:no|nr|number)\.? ?([0-9]+(?: ?[a-z](?![\p{L}\p{N}]))?)(?![\p{L}\p{N}])/gu

function numberIn(name: string): string | undefined {
  return [...name.matchAll(numbered)][0]?.[1]?.replace(/\s/g, '')
}

/** Where the text holds the words with no letter or digit next to them: "no. 12" is not in "no. 120". */
function placeOf(text: string, words: string): { from: number; to: number } | undefined {
  if (words === '') return undefined
  for (let at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
    const around = text.slice(Math.max(0, at - 1), at) + text.slice(at + words.length, at + words.length + 1)
    if (!/[\p{L}\p{N}]/u.test(around)) return { from: at, to: at + words.length }
  }
  return undefined
}
