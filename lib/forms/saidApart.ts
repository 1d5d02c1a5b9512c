import { z } from 'zod'
import { type Need, needWeights } from '../core/agreement/needs.ts'
import type { ForBoth } from '../core/people/household.ts'

const needs = z.array(z.object({ need: z.string(), weight: z.enum(needWeights), words: z.string() }))
const count = z.object({ a: z.string(), b: z.string() })

/** What a household needs, as it is stored apart from the document. Throws on what this program never wrote. */
export function readNeeds(stored: string): readonly Need[] {
  return needs.parse(JSON.parse(stored))
}

/** Passages a week of both, as one household counted them. Throws on what this program never wrote. */
export function readCount(stored: string): ForBoth<string> {
  return count.parse(JSON.parse(stored))
}
