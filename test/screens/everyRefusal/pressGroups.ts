import type { RefusalGroup } from './refusalRow.ts'

/** What presses refuse: in the books, of proposals, signatures, messages, links and files. */
export const pressGroups: readonly RefusalGroup[] = []
