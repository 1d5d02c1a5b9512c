import type { Section } from '../../../lib/core/agreement/notebook.ts'
import {
  aboveChoices,
  type BasicFenceSums,
  basicFenceSums,
  heldPots,
  heldPotsOf,
} from '../../../lib/core/shares/basicFence.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { aboveLabel, basicHeldSentence, heldPotsLabel } from '../../../lib/words/basicFenceText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import type { ShareNames } from '../../../lib/words/shareText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Status } from '../../ui/Status.tsx'
import { BasicFenceApart, type Held, HiddenFields } from './BasicFenceHeld.tsx'

/** Holds the share against the basic fence with one press: which pots, and who is asked for what is above it. */
export function HoldAgainst({ section, names, fingerprint, hold }: Held) {
  if (section.basicFence === undefined) return null
  const digits = digitsOf(names)
  const sums = basicFenceSums(section.basicFence, digits)
  const pots = heldPotsOf(section, digits)
  const same = pots.filter(({ typed, sum }) => typed === sum)
  return (
    <>
      <AgainstPlanned section={section} sums={sums} names={names} />
      {same.map((one) => (
        <p key={one.pot}>
          <Status kind="agreed" text={basicHeldSentence(one, names.currency)} />
        </p>
      ))}
      <BasicFenceApart {...{ section, names, fingerprint, hold }} />
      <PressForm action={hold} label="Hold the share against it" weight="main">
        <HiddenFields id={section.id} fingerprint={fingerprint} />
        <PotsChoice sums={sums} names={names} together={'together' in section.share} />
        <AboveChosen names={names} standing={pots.length} all={'together' in section.share ? 1 : 2} />
      </PressForm>
      <p className="field-hint">
        This changes the section: both marks come off it, as with any change. The basic fence itself goes on
        being shared as the section was until now.
      </p>
    </>
  )
}

/** What the basic fence comes to, the fence as it is planned beside it, and what then lies above. */
function AgainstPlanned({
  section,
  sums,
  names,
}: {
  section: Section
  sums: BasicFenceSums
  names: ShareNames
}) {
  const planned = basicFenceSums(section, digitsOf(names))
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const row = (label: string, basic: bigint, whole: bigint) => [
    label,
    money(basic),
    money(whole),
    money(whole > basic ? whole - basic : 0n),
  ]
  return (
    <FigureTable
      caption="The basic fence, and what the fence as it is planned costs above it"
      columns={[
        { label: 'Pot' },
        { label: 'Basic', figures: true },
        { label: 'Planned', figures: true },
        { label: 'Above', figures: true },
      ]}
      rows={[row('Materials', sums.materials, planned.materials), row('Work', sums.labour, planned.labour)]}
      foot={[row('Both', sums.both, planned.both)]}
    />
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

/** As it stands is chosen where every pot pays the difference already; else somebody has to be named. */
function AboveChosen({ names, standing, all }: { names: ShareNames; standing: number; all: number }) {
  return (
    <div className="field">
      <label className="field-label" htmlFor="hold-above">
        What is above it is asked of
      </label>
      <p className="field-hint" id="hold-above-hint">
        Named upgrades stay asked of their own household; this is for the rest.
      </p>
      <select
        id="hold-above"
        name="above"
        required
        defaultValue={standing === all ? 'as it stands' : ''}
        aria-describedby="hold-above-hint"
      >
        {standing === all ? null : (
          <option value="" disabled>
            Choose one
          </option>
        )}
        {aboveChoices
          .filter((one) => one !== 'as it stands' || standing > 0)
          .map((one) => (
            <option key={one} value={one}>
              {aboveLabel(one, names)}
            </option>
          ))}
      </select>
    </div>
  )
}
