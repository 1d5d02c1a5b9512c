/**
 * The Flesch-Kincaid grade: 0.39 · words per sentence + 11.8 · syllables per word − 15.59. Formula from memory of Kincaid
 * et al. 1975, "Derivation of new readability formulas for Navy enlisted personnel". Syllables are counted by groups of
 * vowels, which is a little high for English.
 */
export function readingGrade(text: string): number {
  const sentences = text.split(/[.!?]+(?:\s|$)|\n/).filter((sentence) => /[a-z]/i.test(sentence))
  const words = text.match(/[A-Za-z’'-]+/g) ?? []
  const syllables = words.reduce((sum, word) => sum + syllablesIn(word), 0)
  return (0.39 * words.length) / sentences.length + (11.8 * syllables) / words.length - 15.59
}

function syllablesIn(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '')
  const groups = letters
    .replace(/(?:[^laeiouy]es|[^td]ed|[^laeiouy]e)$/, (end) => end.charAt(0))
    .match(/[aeiouy]+/g)
  return Math.max(1, groups?.length ?? 0)
}
