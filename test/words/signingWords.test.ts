import { describe, expect, test } from 'vitest'
import { agreementOnPaper, intentSentence, sameName } from '../../lib/words/signingWords.ts'

describe('a typed name is the party’s name', () => {
  test.each([
    ['the same', 'Ada Fernhill', 'Ada Fernhill'],
    ['in small letters', 'ada fernhill', 'Ada Fernhill'],
    ['with more blanks', '  Ada   Fernhill ', 'Ada Fernhill'],
    ['with a no-break blank', 'Ada\u00a0Fernhill', 'Ada Fernhill'],
    ['with an accent in two pieces', 'Rene\u0301 Marsh', 'Ren\u00e9 Marsh'],
  ])('%s', (_, typed, name) => {
    expect(sameName(typed, name)).toBe(true)
  })

  test.each([
    ['another one', 'Bo Fernhill', 'Ada Fernhill'],
    ['one without its accent', 'Rene Marsh', 'Ren\u00e9 Marsh'],
    ['one run together', 'AdaFernhill', 'Ada Fernhill'],
    ['nothing', '', 'Ada Fernhill'],
  ])('not %s', (_, typed, name) => {
    expect(sameName(typed, name)).toBe(false)
  })
})

test('the sentence that is ticked names the party, its capacity and its household', () => {
  const place = { household: 'a' as const, partyIndex: 0, name: 'Ada Fernhill', capacity: 'agent' }
  const sentence = intentSentence(place, 'no. 12')
  for (const part of ['I, Ada Fernhill,', 'as agent for the owner', 'for no. 12', 'my signature'])
    expect(sentence).toContain(part)
})

test('on paper it is said where the PDF of the agreement is: of the draft on Sign, of a revision on Record', () => {
  expect(agreementOnPaper(undefined)).toContain('“Draft summary (PDF)” on the page “Sign”')
  expect(agreementOnPaper(2)).toContain('with revision 2 on the page “Record”')
})
