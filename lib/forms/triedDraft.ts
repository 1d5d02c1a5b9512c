import { z } from 'zod'
import { dimensionFields, lineFields, type Tried } from '../core/trying/tried.ts'
import { shareFields, sharePots } from '../core/trying/triedShare.ts'

const item = z.string().min(1).max(200_000)
const text = z.string().max(1000)

const schema = z.object({
  edits: z
    .array(
      z.union([
        z.object({
          item,
          field: z.enum(lineFields),
          line: z.number().int().min(0).max(1_000_000),
          text,
        }),
        z.object({
          item,
          field: z.enum(shareFields),
          pot: z.enum(sharePots),
          line: z.number().int().min(0).max(1_000_000),
          text,
        }),
        z.object({ item, field: z.enum([...dimensionFields, 'buildUp']), text }),
      ]),
    )
    .max(20_000),
  moves: z.object({ prices: text, hours: text, rates: text }),
})

/** What a browser sends as tried; undefined where it is nothing of the kind. */
export function readTried(sent: unknown): Tried | undefined {
  const read = schema.safeParse(sent)
  return read.success ? (read.data as Tried) : undefined
}
