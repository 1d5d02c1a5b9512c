'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { describedBy, FieldNotes } from '../../ui/draft/FieldFrame.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { fieldId } from '../../ui/draft/fieldId.ts'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { isWithin } from '../../ui/draft/rowFaults.ts'
import { TakenOut } from '../../ui/draft/TakenOut.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import { useOptionalPart } from '../../ui/draft/useOptionalPart.ts'
import { Explain } from '../../ui/explain/Explain.tsx'
import { HoleFields, SizeFields } from './MemberFields.tsx'
import { WeighedFields } from './WeighedFields.tsx'

const named = (row: unknown) => String((row as { what?: unknown } | null)?.what ?? '')

/** How end, corner or gate posts differ from line posts: shown only once somebody says that they do. */
export function SpecialPostFields({ path, label }: { path: string; label: string }) {
  const { findings, form } = useDraft()
  const { isThere, ready, begin, takeOut, putBack } = useOptionalPart(path)
  if (!isThere) {
    const id = fieldId(form, path)
    const found = findings.filter((finding) => isWithin(finding.path, path)).map(({ message }) => message)
    return (
      <div className="field" data-found={found.length > 0 ? '' : undefined}>
        <FieldNotes id={id} errors={[]} findings={found} />
        <button
          type="button"
          id={id}
          className="button button-plain"
          disabled={!ready}
          aria-describedby={describedBy(id, { hint: false, errors: false, findings: found.length > 0 })}
          onClick={() => begin({ what: '' })}
        >
          {label} differ
        </button>
        <TakenOut name={label} path={path} onPutBack={putBack} />
      </div>
    )
  }
  return (
    <fieldset className="field special-post">
      <legend className="field-label">{label}</legend>
      <p className="field-hint">Whatever is empty is as on a line post.</p>
      <TextField path={`${path}.what`} label="What it is" />
      <SizeFields path={path} />
      <LengthField path={`${path}.stock`} label="Bought in lengths of" />
      <HoleFields path={path} />
      <TextField path={`${path}.bracing`} label="Bracing, in words" />
      <FieldLine>
        <LengthField path={`${path}.brace.span`} label="Brace post away from it by" />
        <FigureField path={`${path}.brace.assemblies`} label="Assemblies in a row" />
        <LengthField path={`${path}.brace.wire`} label="Wire of one assembly" />
      </FieldLine>
      <button type="button" className="button button-plain" disabled={!ready} onClick={takeOut}>
        {label} are as line posts
      </button>
    </fieldset>
  )
}

export function FootingFields({ path }: { path: string }) {
  return (
    <>
      <ChoiceField
        path={`${path}.fill`}
        label="Holes are filled with"
        optionalLabel="Not said yet"
        options={[
          { value: 'concrete', label: 'Concrete' },
          { value: 'earth', label: 'Earth, tamped' },
        ]}
      />
      <FieldLine>
        <FigureField path={`${path}.overbreak`} label="Holes come out larger by" suffix="%" />
        <FigureField path={`${path}.bagYield.figure`} label="One bag makes" />
        <ChoiceField
          path={`${path}.bagYield.unit`}
          label="Measured in"
          optionalLabel="not said"
          options={[
            { value: 'cu ft', label: 'cubic feet' },
            { value: 'L', label: 'litres' },
          ]}
        />
      </FieldLine>
      <WeighedFields path={`${path}.bagWeight`} label="Weight of a bag" />
      <Explain terms={['footing']} />
    </>
  )
}

export function FinishFields({ path }: { path: string }) {
  return (
    <RowsField
      path={path}
      label="Finishes"
      rowLabel={named}
      empty={{ what: '', of: 'members' }}
      addLabel="Add a finish"
    >
      {(row) => (
        <>
          <TextField path={`${row}.what`} label="What" hint="Such as primer, paint, oil, caps by length." />
          <ChoiceField
            path={`${row}.of`}
            label="On"
            optionalLabel="Not said yet"
            options={[
              { value: 'members', label: 'Posts and rails' },
              { value: 'infill', label: 'The infill' },
              { value: 'both', label: 'Both' },
            ]}
          />
          <FieldLine>
            <FigureField path={`${row}.coverage`} label="One unit covers" />
            <ChoiceField
              path={`${row}.coverageUnit`}
              label="Covered in"
              optionalLabel="not said"
              options={['sq ft', 'sq m', 'ft', 'm'].map((unit) => ({ value: unit, label: unit }))}
              asRadios={false}
            />
            <TextField path={`${row}.unit`} label="Unit it is bought in" />
            <FigureField path={`${row}.coats`} label="Coats" />
          </FieldLine>
        </>
      )}
    </RowsField>
  )
}

const bases = [
  { value: 'post', label: 'per post' },
  { value: 'bay', label: 'per bay' },
  { value: 'ft', label: 'per foot of fence' },
  { value: 'm', label: 'per metre of fence' },
  { value: 'sq ft', label: 'per square foot' },
  { value: 'sq m', label: 'per square metre' },
  { value: 'gate', label: 'per gate' },
  { value: 'once', label: 'once' },
]

export function FreeLineFields({ path }: { path: string }) {
  return (
    <RowsField
      path={path}
      label="Other lines"
      rowLabel={named}
      empty={{ what: '', basis: 'post', factor: '1', unit: '' }}
      addLabel="Add a line"
    >
      {(row) => (
        <>
          <TextField path={`${row}.what`} label="What" />
          <FieldLine>
            <FigureField path={`${row}.factor`} label="How many" />
            <TextField path={`${row}.unit`} label="Unit" />
            <ChoiceField path={`${row}.basis`} label="Per" options={bases} />
          </FieldLine>
          <FieldLine>
            <FigureField path={`${row}.pack`} label="In a pack" hint="Empty: bought loose." />
            <TextField path={`${row}.packUnit`} label="Pack is called" />
            <FigureField path={`${row}.waste`} label="Waste" suffix="%" />
          </FieldLine>
          <WeighedFields path={`${row}.weight`} />
          <TickField path={`${row}.reclaimed`} label="Reclaimed stock" />
        </>
      )}
    </RowsField>
  )
}
