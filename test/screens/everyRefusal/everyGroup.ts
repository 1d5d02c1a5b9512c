import { formGroups } from './formGroups.ts'
import { pressGroups } from './pressGroups.ts'
import type { RefusalGroup } from './refusalRow.ts'

export const everyGroup: readonly RefusalGroup[] = [...formGroups, ...pressGroups]
