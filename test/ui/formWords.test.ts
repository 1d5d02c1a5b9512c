import { expect, test } from 'vitest'
import { formWords } from '../../app/ui/draft/formWords.ts'

test('a form that signs says that nothing is signed, one that saves that nothing is saved', () => {
  expect(formWords.summaryTitle(1, 'signed')).toBe('Not signed: one thing to mend')
  expect(formWords.summaryTitle(2, 'saved')).toBe('Not saved: 2 things to mend')
  expect(formWords.broke('signed')).toMatch(/^Not signed: .* press the button again\.$/)
  expect(formWords.lost('saved')).toMatch(/^Not saved: .* press the button again\.$/)
  expect(formWords.outdated('signed')).toMatch(/^Not signed: /)
})

test('a row is called by its name in double quotes, since single ones read as feet', () => {
  expect(formWords.rowName("30 1/2'", 0)).toBe("“30 1/2'”")
  expect(formWords.rowName('', 2)).toBe('row 3')
})
