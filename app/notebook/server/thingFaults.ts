import { thingKinds } from '../../../lib/core/agreement/notebook.ts'
import { mayHaveValue } from '../../../lib/core/ledger/things.ts'
import { thingRefusals } from '../../../lib/words/thingText.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { typedText } from './typedText.ts'

/** What the form of a thing asks for beyond what the file does. */
export function thingFaults(draft: Readonly<Record<string, unknown>>, today: string): Fault[] {
  const said = (key: string) => typedText(draft[key]).trim()
  const kind = thingKinds.find((one) => one === draft.kind)
  const faults: Fault[] = []
  const ask = (path: string, message: string) => faults.push({ path, message })
  if (kind === undefined) ask('kind', thingRefusals.kind)
  if (said('what') === '') ask('what', thingRefusals.what)
  if (said('on') > today) ask('on', thingRefusals.afterToday(today))
  if (said('returned') > today) ask('returned', thingRefusals.afterToday(today))
  if (kind !== undefined && mayHaveValue(kind) && said('value') !== '') {
    if (said('item') === '') ask('item', thingRefusals.item)
    if (said('household') === '') ask('household', thingRefusals.household)
  }
  return faults
}
