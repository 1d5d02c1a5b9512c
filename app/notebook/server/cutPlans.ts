import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { cutPlansFile } from '../../../lib/cutting/cutPlansFile.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'

type CutPlans = Awaited<ReturnType<typeof cutPlansFile>>

/** Plans that were worked out lately, by what they were worked out from: the solver takes seconds for a hard one. */
const lately = new Map<string, Promise<CutPlans>>()
const kept = 50

/** The cut plans of a notebook. The same pieces and stock are planned once, however often the page is opened. */
export function cutPlansOf(notebook: Notebook): Promise<CutPlans> {
  const found = takeOff(notebook)
  const key = fingerprintOf(JSON.parse(JSON.stringify([found.cutJobs, notebook.units], asText)))
  const known = lately.get(key)
  if (known) return known
  if (lately.size >= kept) lately.delete(lately.keys().next().value ?? '')
  const plans = cutPlansFile(notebook, found)
  lately.set(key, plans)
  // A plan that failed is tried anew the next time.
  plans.catch(() => lately.delete(key))
  return plans
}

function asText(_key: string, value: unknown): unknown {
  return typeof value === 'bigint' ? value.toString() : value
}
