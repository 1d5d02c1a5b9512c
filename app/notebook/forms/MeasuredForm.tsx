'use client'

import { useDraft } from '../../ui/draft/draftContext.ts'
import { textAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { NotebookForm } from './NotebookForm.tsx'

/** A post as the take-off plans it: "line post, planned at 16 ft, in a hole 30 in deep". */
export type PlannedPost = { readonly about: string }

/** Posts of a section that stand elsewhere than planned, or in holes of another depth. */
export function MeasuredForm({
  initial,
  base,
  save,
  planned,
  findings,
}: {
  initial: object
  base: string
  save: SaveAction
  /** The section's posts from its beginning. */
  planned: readonly PlannedPost[]
  findings: readonly Fault[]
}) {
  return (
    <NotebookForm
      initial={initial}
      base={base}
      save={save}
      saveLabel="Save what was measured"
      findings={findings}
    >
      <RowsField
        path="measured"
        label="Posts found off their plan"
        hint="Posts are counted from the beginning of the section, from 1. What was measured counts in the place of the plan."
        rowLabel={(row) => {
          const post = String((row as { post?: unknown } | null)?.post ?? '').trim()
          return post === '' ? '' : `post ${post}`
        }}
        empty={{ post: '', at: '', depth: '', why: '' }}
        addLabel="Add a measured post"
      >
        {(row) => (
          <>
            <PostField row={row} planned={planned} />
            <FieldLine>
              <LengthField path={`${row}.at`} label="Stands at station" hint="Empty: as planned." />
              <LengthField path={`${row}.depth`} label="Depth of its hole" hint="Empty: as planned." />
            </FieldLine>
            <TextField path={`${row}.why`} label="Why" hint="Such as “rock at 20 in”." />
          </>
        )}
      </RowsField>
    </NotebookForm>
  )
}

/** The post's number, with where that post is planned. */
function PostField({ row, planned }: { row: string; planned: readonly PlannedPost[] }) {
  const { draft } = useDraft()
  const typed = textAt(draft, `${row}.post`).trim()
  const post = planned[Number(typed) - 1]
  const about =
    planned.length === 0
      ? 'No post is planned yet.'
      : typed === ''
        ? `From 1 to ${planned.length}.`
        : (post?.about ?? `The section has posts 1 to ${planned.length}.`)
  return <FigureField path={`${row}.post`} label="Post number" hint={about} />
}
