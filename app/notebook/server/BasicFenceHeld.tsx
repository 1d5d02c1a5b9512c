import type { Section } from '../../../lib/core/agreement/notebook.ts'
import {
  type AboveChoice,
  aboveChoices,
  type BasicFenceSums,
  basicFenceSums,
  type HeldPots,
  heldPots,
  heldPotsOf,
} from '../../../lib/core/shares/basicFence.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import {
  aboveLabel,
  basicApartSentence,
  basicHeldSentence,
  basicSumsSentence,
  heldPotsLabel,
} from '../../../lib/words/basicFenceText.ts'
import { type ShareNames, shareNames } from '../../../lib/words/shareText.ts'
import { type PressAction, PressForm } from '../../ui/draft/PressForm.tsx'
import { Status } from '../../ui/Status.tsx'
import { holdAgainstBasicFence } from './basicFenceActions.ts'
import type { Opened } from './opened.ts'

type Held = { section: Section; names: ShareNames; fingerprint: string; hold: PressAction }

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
    <div className="apart" role="note">
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
    </div>
  )
}

/** The same on the page of a section, which is given as it stands in the document. */
export function BasicFenceOfItem({
  opened,
  section,
  draft,
}: {
  opened: Opened
  section: Section
  draft: object
}) {
  return (
    <BasicFenceApart
      section={section}
      names={shareNames(opened.notebook)}
      fingerprint={fingerprintOf(draft)}
      hold={holdAgainstBasicFence.bind(null, opened.notebookId)}
    />
  )
}

/** Holds the share against the basic fence with one press: which pots, and who is asked for what is above it. */
export function HoldAgainst({ section, names, fingerprint, hold }: Held) {
  if (section.basicFence === undefined) return null
  const digits = digitsOf(names)
  const sums = basicFenceSums(section.basicFence, digits)
  const pots = heldPotsOf(section, digits)
  const same = pots.filter(({ typed, sum }) => typed === sum)
  const aboves = aboveChoices.filter((one) => one !== 'as it stands' || pots.length > 0)
  return (
    <>
      <p>{basicSumsSentence(sums, names.currency)}</p>
      {same.map((one) => (
        <p key={one.pot}>
          <Status kind="agreed" text={basicHeldSentence(one, names.currency)} />
        </p>
      ))}
      <BasicFenceApart {...{ section, names, fingerprint, hold }} />
      <PressForm action={hold} label="Hold the share against it" weight="main">
        <HiddenFields id={section.id} fingerprint={fingerprint} />
        <PotsChoice sums={sums} names={names} together={'together' in section.share} />
        <div className="field">
          <label className="field-label" htmlFor="hold-above">
            What is above it is asked of
          </label>
          <p className="field-hint" id="hold-above-hint">
            Named upgrades stay asked of their own household; this is for the rest.
          </p>
          <select id="hold-above" name="above" defaultValue={aboves[0]} aria-describedby="hold-above-hint">
            {aboves.map((one) => (
              <option key={one} value={one}>
                {aboveLabel(one, names)}
              </option>
            ))}
          </select>
        </div>
      </PressForm>
      <p className="field-hint">
        This changes the section: both marks come off it, as with any change. The basic fence itself goes on
        being shared as the section was until now.
      </p>
    </>
  )
}

function PotsChoice({
  sums,
  names,
  together,
}: {
  sums: BasicFenceSums
  names: ShareNames
  together: boolean
}) {
  return (
    <fieldset className="field">
      <legend className="field-label">What is held against it</legend>
      <div className="choices">
        {heldPots.map((one) => (
          <div className="choice" key={one}>
            <input
              type="radio"
              id={`hold-${one}`}
              name="pots"
              value={one}
              defaultChecked={one === (together ? 'together' : 'apart')}
            />
            <label htmlFor={`hold-${one}`}>{heldPotsLabel(one, sums, names.currency)}</label>
          </div>
        ))}
      </div>
    </fieldset>
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
      confirm="Take the basic fence with its lines out of this section? What the share is held against stays as it is typed there. Both marks come off."
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
