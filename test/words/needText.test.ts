import { describe, expect, test } from 'vitest'
import { needKinds } from '../../lib/core/agreement/notebook.ts'
import { meetsWords, metByWords, needLine, needsStanding, needText } from '../../lib/words/needText.ts'
import { buildBlocks } from '../../lib/words/summary/buildBlocks.ts'
import { notebookWithoutCosts } from '../../lib/words/summary/withoutCosts.ts'
import { notebookWith, sectionOf } from '../core/madeNotebook.ts'

const meets = [
  { household: 'a', need: 'animals-in' },
  { household: 'b', need: 'a bench along it' },
]
const section = { ...sectionOf('1', { principle: 'equal' }), name: 'Lane', meets }
const notebook = notebookWith({ sections: [section] })
const textOf = (of: typeof notebook) => JSON.stringify(buildBlocks(of))

describe('needs in words', () => {
  test('each of the six reads in plain words, and an own need as it was typed', () => {
    for (const kind of needKinds) expect(needText(kind)).toMatch(/^[a-z ]{8,}$/)
    expect(needText('a bench along it')).toBe('a bench along it')
  })

  test('say how much they matter, and what the household adds', () => {
    expect(needLine({ need: 'privacy', weight: 'must', words: 'the terrace' })).toBe(
      'must have: not being looked at (the terrace)',
    )
    expect(needLine({ need: 'a bench', weight: 'like', words: '' })).toBe('would like: a bench')
  })

  test('name the sections that meet them, or that they are open', () => {
    const need = { need: 'light', weight: 'like', words: '' } as const
    expect(metByWords(notebook, { ...need, sections: [0] })).toBe('Met by Section 1: Lane.')
    expect(metByWords(notebook, { ...need, sections: [] })).toBe('Open: no section meets it yet.')
  })

  test.each([
    [true, true, 'Both have said what they need'],
    [true, false, 'No. 14 has not said its needs yet; once it has'],
    [false, true, 'No. 14 has said its needs. They are shown once you have said yours.'],
    [false, false, 'Neither sees the other’s before both have said theirs.'],
  ])('say where the two stand: own %s, other %s', (own, other, said) => {
    expect(needsStanding({ own, other }, 'no. 14')).toContain(said)
  })
})

describe('what a section meets, on paper', () => {
  test('stands with the section in the paper of the two households', () => {
    expect(meetsWords(notebook, notebook.sections[0]?.meets ?? [])).toBe(
      'a dog or another pet kept in, for no. 12; a bench along it, for no. 14',
    )
    expect(textOf(notebook)).toContain('Meets: a dog or another pet kept in, for no. 12; a bench along it')
  })

  test('is left out of the paper for strangers', () => {
    const shown = textOf(notebookWithoutCosts(notebook))
    expect(shown).not.toContain('Meets')
    expect(shown).not.toContain('bench')
  })

  test('says nothing where nothing is met', () => {
    expect(textOf(notebookWith({ sections: [{ ...section, meets: [] }] }))).not.toContain('Meets')
  })
})
