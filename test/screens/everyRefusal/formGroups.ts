import type { RefusalGroup } from './refusalRow.ts'
import { valueRefusals } from './valueRefusals.ts'

/** What forms and files refuse. */
export const formGroups: readonly RefusalGroup[] = [valueRefusals]
