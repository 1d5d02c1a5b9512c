'use client'

import type { ItemKind } from '../../../lib/core/agreement/notebook.ts'
import { proposalWords } from '../../../lib/words/proposalText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { getAt } from '../../ui/draft/draftPath.ts'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { Panel } from '../../ui/Panel.tsx'
import type { BasicSums } from './DifferenceFields.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import { type PreviewAction, ProposalPreview } from './ProposalPreview.tsx'
import type { FormNames } from './partWords.ts'
import { ShareFields } from './ShareFields.tsx'

/** An item that something can be proposed for, in the order of the draft's items. */
export type ProposableItem = {
  readonly id: string
  readonly title: string
  readonly kind: ItemKind
  /** How it is shared now and what it asks. */
  readonly now: string
  /** What the basic fence that a section is held against comes to. */
  readonly basic?: BasicSums
  /** What else the answered proposal has for it; none where there is nothing else. */
  readonly theirs: readonly string[]
}

/** Proposes for one or several items how they are to be shared. */
export function ProposalForm({
  initial,
  base,
  items,
  names,
  send,
  preview,
}: {
  initial: object
  base: string
  items: readonly ProposableItem[]
  names: FormNames
  send: SaveAction
  preview: PreviewAction
}) {
  return (
    <NotebookForm
      initial={initial}
      base={base}
      save={send}
      saveLabel="Send this proposal"
      form="proposal"
      sends="entry known again"
    >
      <Panel heading="For which items">
        {items.map((item, at) => (
          <TickField key={item.id} path={`items[${at}].in`} label={item.title} hint={item.now} />
        ))}
      </Panel>
      <Manner />
      <Ways items={items} names={names} />
      <Panel heading="Why">
        <TextField
          path="text"
          label="Why you propose this"
          hint="The other household reads it with the proposal. You can leave it empty."
          multiline
          rows={3}
        />
      </Panel>
      <ProposalPreview preview={preview} />
    </NotebookForm>
  )
}

/** Places of the items that are ticked. */
function useTicked(items: readonly ProposableItem[]): readonly number[] {
  const { draft } = useDraft()
  return items.flatMap((_, at) => (getAt(draft, `items[${at}].in`) === true ? [at] : []))
}

function Manner() {
  const { draft } = useDraft()
  const ticked = (getAt(draft, 'items') as { in?: unknown }[] | undefined)?.filter((one) => one.in === true)
  if ((ticked?.length ?? 0) < 2) return null
  return (
    <Panel heading="One way for all, or each its own">
      <ChoiceField
        path="manner"
        label="How they are to be shared"
        options={[
          { value: 'each', label: proposalWords.eachItsOwn },
          { value: 'one', label: proposalWords.oneForAll },
        ]}
      />
    </Panel>
  )
}

function Ways({ items, names }: { items: readonly ProposableItem[]; names: FormNames }) {
  const ticked = useTicked(items)
  const gatesOnly = ticked.every((at) => items[at]?.kind === 'gate')
  return (
    <>
      <Shown path="manner" is="one">
        <Panel heading="How all of them are to be shared">
          <ShareFields names={names} onGate={gatesOnly} />
          <Kept items={items} ticked={ticked} />
        </Panel>
      </Shown>
      <Shown path="manner" is="each">
        {ticked.map((at) => (
          <Panel key={at} heading={items[at]?.title}>
            <ShareFields
              path={`items[${at}].share`}
              names={names}
              onGate={items[at]?.kind === 'gate'}
              basic={items[at]?.basic}
            />
            <Kept items={items} ticked={[at]} />
          </Panel>
        ))}
      </Shown>
    </>
  )
}

/** What else the other household proposes for these items, to be kept in the answer or left out. */
function Kept({ items, ticked }: { items: readonly ProposableItem[]; ticked: readonly number[] }) {
  return ticked.map((at) => {
    const item = items[at]
    if (item === undefined || item.theirs.length === 0) return null
    return (
      <TickField
        key={at}
        path={`items[${at}].theirs`}
        label={`Keep what else they propose for ${item.title}`}
        hint={item.theirs.join(' ')}
      />
    )
  })
}
