import { z } from 'zod'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'

/** As large as an import may be; a draft is a part of a notebook, so it is never larger. In characters of JSON text. */
const largestDraft = 2_000_000

/** No notebook nests deeper; a draft that does could exhaust the stack of whatever reads it. */
const deepestDraft = 64

/** No JSON text of this size holds more lists, objects, texts and figures than half its characters. */
const mostValues = largestDraft / 2

/**
 * Any draft of any form: plain JSON data of bearable size and depth, in whole characters (RFC 8785 refuses half ones).
 * What it must hold is decided where the whole notebook is read.
 */
export const readDraft = z
  .unknown()
  .refine(isBearable, { error: 'too deep or too large', abort: true })
  .pipe(z.record(z.string(), z.json()))
  .refine((draft) => {
    const text = JSON.stringify(draft)
    // JSON.stringify writes half a character as an escape of its code.
    return text.length <= largestDraft && !/\\ud[89a-f][0-9a-f]{2}/.test(text.replaceAll('\\\\', ''))
  }, 'too large, or not in whole characters')

export const refusedDraft: SaveAnswer = {
  faults: [{ path: '', message: pressRefusals.draft }],
}

/** Looks level by level, so that no depth can exhaust the stack, and stops early, so that no draft can hold itself. */
function isBearable(draft: unknown): boolean {
  let level: unknown[] = [draft]
  let seen = 0
  for (let depth = 0; level.length > 0; depth += 1) {
    const next: unknown[] = []
    for (const value of level) {
      const inside = value !== null && typeof value === 'object' ? Object.values(value) : []
      seen += inside.length
      if (seen > mostValues) return false
      for (const one of inside) next.push(one)
    }
    if (depth > deepestDraft) return false
    level = next
  }
  return true
}
