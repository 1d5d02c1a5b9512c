import { z } from 'zod'
import { sameName } from '../../../lib/words/signingWords.ts'
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
      : [{ path: 'typedName', message: `Type the full name as it stands in the ${text}: ${partyName}.` }]),
    ...(intent
      ? []
      : [
          { path: 'intent', message: 'Tick the sentence if you mean to sign. Without it nothing is signed.' },
        ]),
    ...(drawing === '' || strokesOf(drawing)
      ? []
      : [
          {
            path: 'drawing',
            message:
              'The drawn signature could not be read. Wipe it away and draw it again, or leave it out.',
          },
        ]),
  ]
}
