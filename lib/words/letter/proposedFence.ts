import type { Notebook } from '../../core/agreement/notebook.ts'
import { parseLength } from '../../core/amounts/length.ts'
import { addRatios, multiplyRatios, ratio } from '../../core/amounts/ratio.ts'
import { lengthWords, typedLengthWords } from '../length.ts'
import { clipped } from './clipped.ts'

/**
 * What is proposed, as a start for the letter's own words, out of what the sections and gates say of themselves:
 * "40 ft of welded wire, 6 ft high; and 2 gates." Empty while there is neither.
 */
export function proposedFence({ sections, gates, units }: Notebook): string {
  const stretches = sections.map(({ from, to, infill, height }) => {
    const [begin, end] = [parseLength(from), parseLength(to)]
    const long =
      begin !== undefined && end !== undefined
        ? lengthWords(addRatios(end, multiplyRatios(begin, ratio(-1n, 1n))), units)
        : 'a stretch'
    const high = height.agreed === '' ? '' : `, ${typedLengthWords(height.agreed, units)} high`
    return `${long} of ${clipped(infill) || 'new fence'}${high}`
  })
  const told =
    stretches.length > 4 ? [...stretches.slice(0, 3), `${stretches.length - 3} more stretches`] : stretches
  const gateWords = gates.length === 0 ? [] : [gates.length === 1 ? 'one gate' : `${gates.length} gates`]
  const all = [...told, ...gateWords]
  return all.length === 0 ? '' : `A new fence: ${all.join('; ')}.`
}
