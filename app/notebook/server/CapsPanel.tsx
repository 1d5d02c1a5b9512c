import { readPart } from '../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { CapsForm } from '../forms/CapsForm.tsx'
import { saveNotebookPart } from './actions.ts'
import { capFindings } from './capFindings.ts'
import { MarkBox } from './MarkBox.tsx'
import type { Opened } from './opened.ts'
import { standingOf } from './standingOf.ts'

/** The caps: what they are, who has marked them, and where they are typed. `nothing`: zero is filled in for who asks. */
export function CapsPanel({ opened, nothing }: { opened: Opened; nothing: boolean }) {
  const { notebook, notebookId, household } = opened
  const caps = { part: 'caps' } as const
  const draft = readPart(opened.document, caps) ?? {}
  const typed = nothing ? { caps: { ...notebook.caps, [household]: '0' } } : draft
  return (
    <Panel heading="Caps" id="caps">
      <p>
        A cap is the most that a household has agreed to be asked for, its goods and hours included. What a
        share exceeds its cap by moves to the other household.
      </p>
      <MarkBox
        opened={opened}
        standing={standingOf(opened, 'caps')}
        back={`/notebook/${notebookId}/shares`}
      />
      <CapsForm
        initial={typed}
        base={fingerprintOf(draft)}
        save={saveNotebookPart.bind(null, notebookId, caps)}
        names={shareNames(notebook)}
        findings={capFindings(opened)}
      />
    </Panel>
  )
}
