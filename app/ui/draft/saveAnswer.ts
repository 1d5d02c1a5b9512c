/** Something a person can mend. `path` leads into the draft (`materials[0].quantity`); '' is the whole of it. */
export type Fault = { path: string; message: string }

/** One thing that differs between two versions, ready to be read side by side. */
export type ConflictRow = { label: string; yours: string; theirs: string }

export type Conflict = {
  theirs: unknown
  theirsBase: string
  by?: string | undefined
  when?: string | undefined
  /** Whether the household that asks saved the other version itself, in another window. */
  own?: true | undefined
  rows: ConflictRow[]
  /** What is said instead of the words for two saved versions. */
  words?: ConflictWords | undefined
}

export type ConflictWords = {
  title: string
  lead: string
  theirs: string
  yours: string
  takeTheirs: string
  writeOver: string
}

/** What a save came to. `base` names the saved version that the next save builds on. */
export type SaveAnswer =
  | { saved: true; base: string; note?: string | undefined }
  | { faults: Fault[] }
  | { conflict: Conflict }
  | { gone: true; message: string }
