import { agreementText } from '../../../lib/core/agreement/canonicalText.ts'
import { obstaclesToSigning } from '../../../lib/core/agreement/readiness.ts'
import { assert } from '../../../lib/core/assert.ts'
import { readNotebook, unknownKeys } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { Mark } from '../../../lib/store/marks.ts'
import type { Freezing } from '../../../lib/store/revisions.ts'
import { sha256Hex } from '../../../lib/store/sha256.ts'
import { obstacleSentences } from '../../../lib/words/itemWords.ts'

/** What is frozen of a stored document as the next revision; refused with sentences for what is in the way. */
export function frozenText(stored: string, marks: readonly Mark[]): Freezing<readonly string[]> {
  const read = readNotebook(stored)
  assert(read.ok, 'only notebooks that hold are stored')
  const { document, notebook } = read.value
  const obstacles = obstaclesToSigning(document, notebook, unknownKeys(document), (item, one) =>
    marks.some(
      (mark) =>
        mark.itemKey === item.key &&
        mark.household === one &&
        mark.fingerprint === fingerprintOf(item.inputs),
    ),
  )
  if (obstacles.length > 0) return { refused: obstacleSentences(obstacles, notebook) }
  const canonicalText = agreementText(document)
  return { canonicalText, sha256: sha256Hex(canonicalText) }
}
