'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { getAt, setAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { PrincipleField } from './PrincipleField.tsx'
import { type FormNames, householdChoices } from './partWords.ts'

/** How an item is shared: two pots with a principle each, or one pot of both. */
export function ShareFields({ names, onGate }: { names: FormNames; onGate: boolean }) {
  const { draft, change, ready } = useDraft()
  const together = getAt(draft, 'share.together') !== undefined
  const choose = (pots: 'each' | 'together') =>
    change((old) => {
      const first = getAt(old, together ? 'share.together' : 'share.materials') ?? { principle: 'equal' }
      const share = pots === 'together' ? { together: first } : { materials: first, labour: first }
      return setAt(old, 'share', share)
    })
  return (
    <>
      <fieldset className="field">
        <legend className="field-label">What is shared as one pot</legend>
        <div className="choices">
          {(['each', 'together'] as const).map((pots) => (
            <div className="choice" key={pots}>
              <input
                type="radio"
                id={`pots-${pots}`}
                name="pots"
                checked={together === (pots === 'together')}
                disabled={!ready}
                onChange={() => choose(pots)}
              />
              <label htmlFor={`pots-${pots}`}>
                {pots === 'each' ? 'Materials and labour each by itself' : 'Materials and labour together'}
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
        <PotFields path="share.together" label="Both together" names={names} onGate={onGate} />
      ) : (
        <>
          <PotFields path="share.materials" label="Materials" names={names} onGate={onGate} />
          <PotFields path="share.labour" label="Labour" names={names} onGate={onGate} />
        </>
      )}
    </>
  )
}

type PotProps = { path: string; label: string; names: FormNames; onGate: boolean; nested?: boolean }

/** One pot's principle with the figures that it needs. */
function PotFields({ path, label, names, onGate, nested = false }: PotProps) {
  return (
    <div className="pot-fields">
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
      </Shown>
      <Shown path={`${path}.principle`} is="difference">
        <FigureField
          path={`${path}.basic`}
          label="Cost of the basic fence here"
          hint="What a plain fence that is enough for both would cost; anything above it is the upgrade."
          suffix={names.currency}
        />
        <PotFields path={`${path}.basicShare`} label="The basic fence" names={names} onGate={onGate} nested />
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
