import { expect, test } from 'vitest'
import { needKindOf, needsMet } from '../../../lib/core/agreement/needs.ts'
import { notebookWith, sectionOf } from '../madeNotebook.ts'

const must = (need: string) => ({ need, weight: 'must' as const, words: '' })

test('a need is met by the sections that name it for that household, and is open where none does', () => {
  const section = (id: string, ...meets: unknown[]) => ({
    ...sectionOf('1', { principle: 'equal' }, id),
    meets,
  })
  const { sections } = notebookWith({
    sections: [
      section('s1', { household: 'a', need: 'animals-in' }, { household: 'b', need: 'light' }),
      section('s2', { household: 'b', need: 'animals-in' }),
      section('s3', { household: 'a', need: 'animals-in' }, { household: 'a', need: 'a bench along it' }),
    ],
  })
  const met = needsMet(sections, 'a', [must('light'), must('animals-in'), must('a bench along it')])
  expect(met.map(({ need, sections: by }) => [need, by])).toEqual([
    ['light', []],
    ['animals-in', [0, 2]],
    ['a bench along it', [2]],
  ])
})

test('a need in a household’s own words is none of the six', () => {
  expect([needKindOf('stock'), needKindOf('a bench')]).toEqual(['stock', undefined])
})
