import type { CautionKind } from '../../../lib/core/agreement/cautions.ts'
import { beforeWork, cautionSentences } from '../../../lib/words/cautionText.ts'
import { Caution } from '../../ui/Caution.tsx'

/** The cautions that matter here, in one frame; none where nothing that is planned calls for one. */
export function WorkCautions({ kinds }: { kinds: readonly CautionKind[] }) {
  if (kinds.length === 0) return null
  return (
    <Caution title={beforeWork}>
      {kinds.map((kind) => (
        <p key={kind}>{cautionSentences[kind]}</p>
      ))}
    </Caution>
  )
}
