'use client'

import { exposures, lateralUnits, windUnits } from '../../../lib/core/takeoff/buildUp.ts'
import { capitalised } from '../../../lib/words/summary/names.ts'
import { exposureWords } from '../../../lib/words/takeoff/windStepText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { textAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { Fold } from '../../ui/draft/Fold.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'

const site = 'line.site'
const unitChoices = (units: readonly string[]) => units.map((unit) => ({ value: unit, label: unit }))

/** What the place is like, for the look at wind and posts, each with who said so. */
export function SiteFields() {
  return (
    <Fold label="Wind, soil and frost" about={<SiteAbout />} paths={[site]}>
      <p className="field-hint">
        These are for a first look at wind and posts, and no design. The local building office can say the
        wind speed, the soil value and the frost depth that hold for the place.
      </p>
      <fieldset className="field field-group">
        <legend className="rows-label">Wind</legend>
        <FieldLine>
          <FigureField
            path={`${site}.wind.speed`}
            label="Basic wind speed"
            hint="As a gust of three seconds."
          />
          <ChoiceField
            path={`${site}.wind.unit`}
            label="Measured in"
            optionalLabel="Not said yet"
            options={unitChoices(windUnits)}
            asRadios={false}
          />
        </FieldLine>
        <ChoiceField
          path={`${site}.wind.exposure`}
          label="What stands around the fence"
          optionalLabel="Not said yet"
          options={exposures.map((one) => ({
            value: one,
            label: `${capitalised(exposureWords[one])} (exposure ${one})`,
          }))}
          asRadios
        />
        <TextField path={`${site}.wind.saidBy`} label="Wind said by" />
      </fieldset>
      <fieldset className="field field-group">
        <legend className="rows-label">Soil</legend>
        <TextField
          path={`${site}.soil.what`}
          label="Soil in words"
          hint="Such as “sandy, firm below 1 ft”."
        />
        <FieldLine>
          <FigureField
            path={`${site}.soil.lateral`}
            label="What it bears sideways"
            hint="For each foot or metre of depth."
          />
          <ChoiceField
            path={`${site}.soil.unit`}
            label="Given in"
            optionalLabel="Not said yet"
            options={unitChoices(lateralUnits)}
            asRadios={false}
          />
        </FieldLine>
        <TickField
          path={`${site}.soil.doubled`}
          label="Count it twice"
          hint="Only where the local code allows it, for posts that a little motion at the ground does not harm."
        />
        <TextField path={`${site}.soil.saidBy`} label="Soil said by" />
      </fieldset>
      <fieldset className="field field-group">
        <legend className="rows-label">Frost</legend>
        <FieldLine>
          <LengthField path={`${site}.frost.depth`} label="The ground freezes down to" />
          <TextField path={`${site}.frost.saidBy`} label="Frost said by" />
        </FieldLine>
      </fieldset>
    </Fold>
  )
}

/** What is filled in, in a few words. */
function SiteAbout() {
  const { draft } = useDraft()
  const said = (path: string, unit = '') => {
    const text = textAt(draft, `${site}.${path}`)
    return text === '' ? [] : [[text, unit === '' ? '' : textAt(draft, `${site}.${unit}`)].join(' ').trim()]
  }
  const wind = said('wind.speed', 'wind.unit').map((text) => `wind ${text}`)
  const soil = said('soil.lateral', 'soil.unit').map((text) => `soil ${text}`)
  const frost = said('frost.depth').map((text) => `frost ${text}`)
  const words = [...wind, ...soil, ...frost].join(', ')
  return <>{words === '' ? 'For a first look at wind and posts. Nothing is said yet.' : `Now: ${words}.`}</>
}
