'use client'

import { useRef } from 'react'
import { savingFits } from '../../../lib/words/savingText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { getAt, setAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { fieldId } from '../../ui/draft/fieldId.ts'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { BasicCostField, type BasicSums, UpgradesField } from './DifferenceFields.tsx'
import { PrincipleField } from './PrincipleField.tsx'
import { type FormNames, householdChoices } from './partWords.ts'

/**
 * How an item is shared: two pots with a principle each, or one pot of both. `basic`: what the basic fence that a section
 * is held against comes to.
 */
export function ShareFields({
  names,
  onGate,
  basic,
  path = 'share',
}: {
  names: FormNames
  onGate: boolean
  /** Where the share stands in the draft. */
  path?: string | undefined
  basic?: BasicSums | undefined
}) {
  const { draft, change, ready, form } = useDraft()
  const potsId = path === 'share' ? 'pots' : fieldId(form, `${path}.pots`)
  const together = getAt(draft, `${path}.together`) !== undefined
  // Who goes back before changing anything finds what was typed there.
  const left = useRef<{ readonly was: unknown; readonly made: string } | null>(null)
  const choose = (pots: 'each' | 'together') => {
    const now = getAt(draft, path)
    const first = getAt(draft, together ? `${path}.together` : `${path}.materials`) ?? { principle: 'equal' }
    const anew = pots === 'together' ? { together: first } : { materials: first, labour: first }
    const share = left.current?.made === JSON.stringify(now) ? left.current.was : anew
    left.current = { was: now, made: JSON.stringify(share) }
    change((old) => setAt(old, path, share))
  }
  return (
    <>
      <fieldset className="field">
        <legend className="field-label">What is shared as one pot</legend>
        <div className="choices">
          {(['each', 'together'] as const).map((pots) => (
            <div className="choice" key={pots}>
              <input
                type="radio"
                id={`${potsId}-${pots}`}
                name={potsId}
                checked={together === (pots === 'together')}
                disabled={!ready}
                onChange={() => choose(pots)}
              />
              <label htmlFor={`${potsId}-${pots}`}>
                {pots === 'each' ? 'Materials and work each by itself' : 'Materials and work together'}
                <span className="choice-hint">
                  {pots === 'each'
                    ? 'Each may follow a principle of its own.'
                    : 'Cheap stock that takes many hours is then held against one figure.'}
                </span>
              </label>
            </div>
          ))}
        </div>
      </fieldset>
      {together ? (
        <PotFields
          path={`${path}.together`}
          label="Both together"
          names={names}
          onGate={onGate}
          basic={basic?.together}
        />
      ) : (
        <>
          <PotFields
            path={`${path}.materials`}
            label="Materials"
            names={names}
            onGate={onGate}
            basic={basic?.materials}
          />
          <PotFields
            path={`${path}.labour`}
            label="Work"
            names={names}
            onGate={onGate}
            basic={basic?.labour}
          />
        </>
      )}
    </>
  )
}

type PotProps = {
  path: string
  label: string
  names: FormNames
  onGate: boolean
  nested?: boolean
  basic?: string | undefined
}

/** One pot's principle with the figures that it needs. */
function PotFields({ path, label, names, onGate, nested = false, basic }: PotProps) {
  return (
    <div className="pot-fields" data-part={label}>
      <PrincipleField path={path} label={label} onGate={onGate} nested={nested} />
      <Shown path={`${path}.principle`} is="percent">
        <FieldLine>
          <FigureField path={`${path}.a`} label={`Percent for ${names.a}`} suffix="%" />
          <FigureField path={`${path}.b`} label={`Percent for ${names.b}`} suffix="%" />
        </FieldLine>
      </Shown>
      <Shown path={`${path}.principle`} is="one">
        <ChoiceField path={`${path}.household`} label="Which household" options={householdChoices(names)} />
      </Shown>
      <Shown path={`${path}.principle`} is="length">
        <FieldLine>
          <LengthField path={`${path}.a`} label={`Length that ${names.a} fronts`} />
          <LengthField path={`${path}.b`} label={`Length that ${names.b} fronts`} />
        </FieldLine>
      </Shown>
      <Shown path={`${path}.principle`} is="benefit">
        <FieldLine>
          <FigureField path={`${path}.a`} label={`Points for ${names.a}`} />
          <FigureField path={`${path}.b`} label={`Points for ${names.b}`} />
        </FieldLine>
      </Shown>
      <Shown path={`${path}.principle`} is="saving">
        <FieldLine>
          <FigureField path={`${path}.aloneA`} label={`${names.a} building alone`} suffix={names.currency} />
          <FigureField path={`${path}.aloneB`} label={`${names.b} building alone`} suffix={names.currency} />
        </FieldLine>
        <FieldLine>
          <TextField path={`${path}.sourceA`} label={`Where the figure of ${names.a} comes from`} />
          <TextField path={`${path}.sourceB`} label={`Where the figure of ${names.b} comes from`} />
        </FieldLine>
        <p className="field-hint">{savingFits}</p>
      </Shown>
      <Shown path={`${path}.principle`} is="difference">
        <BasicCostField path={`${path}.basic`} names={names} sum={basic} />
        <PotFields path={`${path}.basicShare`} label="The basic fence" names={names} onGate={onGate} nested />
        <UpgradesField path={`${path}.upgrades`} names={names} />
        <PotFields
          path={`${path}.upgradeShare`}
          label="What is above it"
          names={names}
          onGate={onGate}
          nested
        />
      </Shown>
    </div>
  )
}
