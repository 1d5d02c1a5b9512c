import { expect, test } from 'vitest'
import { BeforeSaving } from '../../app/ui/draft/BeforeSaving.tsx'
import { DraftContext } from '../../app/ui/draft/draftContext.ts'
import { formWords } from '../../app/ui/draft/formWords.ts'
import { shownMarkup } from '../shownMarkup.ts'

const said = (draft: object, saved: object) => {
  const rest = {
    change: () => {},
    faults: [],
    findings: [],
    register: () => () => {},
    form: 'field',
    ready: true,
  }
  return shownMarkup(
    <DraftContext value={{ ...rest, draft, saved }}>
      <BeforeSaving path="buildUp" />
    </DraftContext>,
  )
}

test('that something does not count yet is said until it is saved, whatever else is typed', () => {
  const wire = { name: 'Farm wire' }
  expect(said({ buildUp: wire }, {})).toContain(formWords.beforeSaving)
  expect(said({ buildUp: wire, notes: 'typed since' }, { buildUp: wire })).toBe('')
  expect(said({}, { buildUp: wire })).toContain(formWords.beforeSaving)
})
