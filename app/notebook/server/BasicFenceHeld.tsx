import type { Section } from '../../../lib/core/agreement/notebook.ts'
import { type AboveChoice, type HeldPots, heldPotsOf } from '../../../lib/core/shares/basicFence.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { basicApartSentence } from '../../../lib/words/basicFenceText.ts'
import { type ShareNames, shareNames } from '../../../lib/words/shareText.ts'
import { type PressAction, PressForm } from '../../ui/draft/PressForm.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { holdAgainstBasicFence } from './basicFenceActions.ts'
import type { Opened } from './opened.ts'

/** What a press that holds a share against the basic fence is made of. */
export type Held = { section: Section; names: ShareNames; fingerprint: string; hold: PressAction }

/**
 * Where the basic cost that a share was typed with is not what the basic fence comes to: both figures, and one press to
 * take the sum over. Nothing where they are the same, or where no share is held against it.
 */
export function BasicFenceApart({ section, names, fingerprint, hold }: Held) {
  const pots = heldPotsOf(section, digitsOf(names))
  const apart = pots.filter(({ typed, sum }) => typed !== sum)
  if (apart.length === 0) return null
  const all = pots.map(({ pot }) => pot)
  const takes: HeldPots = all.length > 1 ? 'apart' : (all[0] ?? 'apart')
  return (
    <>
      {apart.map((one) => (
        <p key={one.pot}>{basicApartSentence(one, names.currency)}</p>
      ))}
      {apart.some(({ sum }) => sum < 0n) ? null : (
        <PressForm action={hold} label="Take over what the basic fence comes to">
          <HiddenFields id={section.id} fingerprint={fingerprint} />
          <input type="hidden" name="pots" value={takes} />
          <input type="hidden" name="above" value={'as it stands' satisfies AboveChoice} />
        </PressForm>
      )}
    </>
  )
}

/** The same in a panel on the page of a section, which is given as it stands in the document. */
export function BasicFenceOfItem({
  opened,
  section,
  draft,
}: {
  opened: Opened
  section: Section
  draft: object
}) {
  const { notebook, notebookId } = opened
  if (heldPotsOf(section, digitsOf(notebook)).every(({ typed, sum }) => typed === sum)) return null
  return (
    <Panel heading="The basic fence comes to another figure">
      <BasicFenceApart
        section={section}
        names={shareNames(notebook)}
        fingerprint={fingerprintOf(draft)}
        hold={holdAgainstBasicFence.bind(null, notebookId)}
      />
    </Panel>
  )
}

/** Takes the basic fence out of the section again, after a question. */
export function TakeBasicFenceOut({
  id,
  fingerprint,
  remove,
}: {
  id: string
  fingerprint: string
  remove: PressAction
}) {
  return (
    <PressForm
      action={remove}
      label="Take the basic fence out"
      confirm="Take the basic fence with its lines out of this section? What the share is held against stays as it is typed there. Both marks come off. For a day you can put it back, under Changes."
      weight="grave"
    >
      <HiddenFields id={id} fingerprint={fingerprint} />
    </PressForm>
  )
}

export function HiddenFields({ id, fingerprint }: { id: string; fingerprint: string }) {
  return (
    <>
      <input type="hidden" name="id" value={id} />
      <input type="hidden" name="fingerprint" value={fingerprint} />
    </>
  )
}
