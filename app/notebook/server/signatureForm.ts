import { z } from 'zod'
import { sameName, signatureRefusals } from '../../../lib/words/signingWords.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { strokesOf } from '../../ui/draft/strokePath.ts'

/** No path of strokes: what cannot be read is refused, not left out, so that nothing is signed but what was sent. */
const unreadableDrawing = '?'

/** What a party sends to sign, under an agreement or an account. */
export const signatureSchema = z.object({
  typedName: z.string().trim().min(1).max(400).catch(''),
  intent: z.literal(true).or(z.literal(false)).catch(false),
  drawing: z.string().default('').catch(unreadableDrawing),
})

/** What is missing or can't be read in a signature, by the fields of its form. */
export function signatureFaults(
  { typedName, intent, drawing }: z.infer<typeof signatureSchema>,
  partyName: string,
  text: 'agreement' | 'account',
): readonly Fault[] {
  return [
    ...(sameName(typedName, partyName)
      ? []
      : [{ path: 'typedName', message: signatureRefusals.name(text, partyName) }]),
    ...(intent ? [] : [{ path: 'intent', message: signatureRefusals.intent }]),
    ...(drawing === '' || strokesOf(drawing)
      ? []
      : [
          {
            path: 'drawing',
            message: signatureRefusals.drawing,
          },
        ]),
  ]
}
