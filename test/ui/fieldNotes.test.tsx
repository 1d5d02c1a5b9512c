import { describe, expect, test } from 'vitest'
import { FieldNotes } from '../../app/ui/draft/FieldFrame.tsx'
import { shownMarkup } from '../shownMarkup.ts'

const told = (...errors: string[]) =>
  shownMarkup(<FieldNotes id="price" errors={errors} />).replace(/<[^>]+>/g, '')

describe('what is wrong with a field', () => {
  test('has one lead where something is needed', () => {
    expect(told('Needed: a number, such as 14.')).toBe('Needed: a number, such as 14.')
  })

  test('is led as something to mend otherwise', () => {
    expect(told('“x” can’t be read.', 'It is too long.')).toBe('To mend: “x” can’t be read. It is too long.')
  })
})
