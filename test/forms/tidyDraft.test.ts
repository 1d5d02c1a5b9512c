import { describe, expect, test } from 'vitest'
import { tidyDraft } from '../../lib/forms/tidyDraft.ts'

describe('a new draft', () => {
  test('loses what a form adds without saying anything', () => {
    const draft = {
      name: 'Lane',
      notes: '',
      uses: { a: '', b: '' },
      height: { agreed: '6 ft', measuredFrom: '' },
      materials: [],
      caps: null,
      done: false,
      labour: [{ task: 'dig', hours: '1', rate: '', by: 'a', counts: true }],
    }
    expect(tidyDraft(draft, undefined)).toEqual({
      name: 'Lane',
      height: { agreed: '6 ft' },
      labour: [{ task: 'dig', hours: '1', by: 'a' }],
    })
  })

  test('keeps what says something', () => {
    const line = { quantity: '0', taxPercent: '7', credit: true }
    expect(tidyDraft({ materials: [line], counts: false, done: true }, undefined)).toEqual({
      materials: [line],
      counts: false,
      done: true,
    })
  })

  test('keeps rows that are empty, so that the places of faults stay true', () => {
    expect(tidyDraft({ terms: [{ topic: '', text: '' }, { topic: 'x' }] }, undefined)).toEqual({
      terms: [{}, { topic: 'x' }],
    })
  })
})

describe('a draft of what stands in the file', () => {
  test('keeps empty texts and defaults that the file spells out', () => {
    const current = {
      notes: '',
      counts: true,
      credit: false,
      taxPercent: '0',
      materials: [],
      uses: {},
      none: null,
    }
    expect(tidyDraft({ ...current }, current)).toEqual(current)
  })

  test('loses a text that was emptied', () => {
    expect(tidyDraft({ unitPrice: '' }, { unitPrice: '5' })).toEqual({})
  })

  test('loses a default that was chosen again', () => {
    expect(tidyDraft({ counts: true }, { counts: false })).toEqual({})
  })

  test('keeps keys that no form knows', () => {
    const current = { name: 'x', colour: { deep: [1, { y: '' }] } }
    expect(tidyDraft(structuredClone(current), current)).toEqual(current)
  })
})
