import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mergeWithWords } from '../../app/notebook/forms/mergeWithWords.ts'
import { chosen } from '../../app/ui/draft/chosen.ts'
import { mergeDrafts, saysTheSame } from '../../lib/forms/mergeDrafts.ts'

const opened = {
  name: 'Along the bank',
  height: { agreed: '5 ft', measuredFrom: 'higher' },
  infill: 'mesh',
  materials: [
    { what: 'posts', quantity: '8', unitPrice: '20.00' },
    { what: 'mesh', quantity: '60', unitPrice: '5.10' },
    { what: 'ties', quantity: '200', unitPrice: '0.05' },
  ],
  share: { together: { principle: 'percent', a: '60', b: '40' } },
}
const [posts, mesh, ties] = opened.materials

const line = fc.record({
  what: fc.constantFrom('posts', 'mesh', 'ties', 'rails'),
  quantity: fc.constantFrom('1', '2', ''),
})
const draft = fc.record({
  name: fc.constantFrom('', 'bank', 'lane'),
  height: fc.record({
    agreed: fc.constantFrom('5 ft', '6 ft'),
    measuredFrom: fc.constantFrom('higher', 'lower'),
  }),
  materials: fc.array(line, { maxLength: 5 }),
})

describe('two versions of one form', () => {
  test('what only one of the two changed is taken over from both', () => {
    const merged = mergeDrafts(
      opened,
      { ...opened, infill: 'boards', notes: 'Painted green.' },
      { ...opened, height: { agreed: '4 ft', measuredFrom: 'higher' } },
    )
    expect(merged).toEqual({
      draft: {
        ...opened,
        infill: 'boards',
        notes: 'Painted green.',
        height: { agreed: '4 ft', measuredFrom: 'higher' },
      },
      clashes: [],
    })
  })

  test('a field that both changed differently is a choice, and stays mine until it is made', () => {
    const merged = mergeDrafts(opened, { ...opened, infill: 'boards' }, { ...opened, infill: 'sheep wire' })
    expect(merged.draft).toEqual({ ...opened, infill: 'boards' })
    expect(merged.clashes).toEqual([{ path: 'infill', mine: 'boards', theirs: 'sheep wire' }])
  })

  test('what both changed alike is no choice', () => {
    const both = { ...opened, infill: 'boards' }
    expect(mergeDrafts(opened, both, { ...both })).toEqual({ draft: both, clashes: [] })
  })

  test('an empty field of the form is the same as one that the file does not have', () => {
    const mine = { ...opened, infill: 'boards', notes: '', latch: '' }
    expect(mergeDrafts({ ...opened, notes: '' }, mine, { ...opened, notes: 'Mind the roots.' })).toEqual({
      draft: { ...mine, notes: 'Mind the roots.' },
      clashes: [],
    })
  })

  test('a way to share is taken as a whole: nobody gets the percent of one beside that of the other', () => {
    const mine = { ...opened, share: { together: { principle: 'percent', a: '70', b: '30' } } }
    const theirs = { ...opened, share: { together: { principle: 'equal' } } }
    expect(mergeDrafts(opened, mine, theirs).clashes).toEqual([
      { path: 'share', mine: mine.share, theirs: theirs.share },
    ])
  })
})

describe('rows of a list', () => {
  test('changed, added and taken out at different places come together', () => {
    const rails = { what: 'rails', quantity: '16', unitPrice: '9.00' }
    const cheaper = { ...ties, unitPrice: '0.04' }
    const merged = mergeDrafts(
      opened,
      { ...opened, materials: [posts, mesh, cheaper] },
      { ...opened, materials: [mesh, ties, rails] },
    )
    expect(merged).toEqual({ draft: { ...opened, materials: [mesh, cheaper, rails] }, clashes: [] })
  })

  test('rows that both added stand one after the other, and one that both added stands once', () => {
    const [rails, paint, cement] = ['rails', 'paint', 'cement'].map((what) => ({ what, quantity: '1' }))
    const merged = mergeDrafts(
      opened,
      { ...opened, materials: [...opened.materials, paint, cement] },
      { ...opened, materials: [...opened.materials, rails, cement] },
    )
    expect(merged).toEqual({
      draft: { ...opened, materials: [...opened.materials, rails, cement, paint] },
      clashes: [],
    })
  })

  test('a row that both changed is a choice as a whole, so that no price meets a quantity of the other', () => {
    const mine = { ...mesh, quantity: '70' }
    const theirs = { ...mesh, unitPrice: '4.80' }
    const merged = mergeDrafts(
      opened,
      { ...opened, materials: [posts, mine, ties] },
      { ...opened, materials: [posts, theirs, ties] },
    )
    expect(merged.draft).toEqual({ ...opened, materials: [posts, mine, ties] })
    expect(merged.clashes).toEqual([{ path: 'materials[1]', mine, theirs }])
  })

  test('a row that one changed and the other took out leaves the choice between the two lists', () => {
    const mine = { ...opened, materials: [posts, { ...mesh, quantity: '70' }, ties] }
    const theirs = { ...opened, materials: [posts, ties] }
    expect(mergeDrafts(opened, mine, theirs).clashes).toEqual([
      { path: 'materials', mine: mine.materials, theirs: theirs.materials },
    ])
  })
})

describe('whatever the three versions are', () => {
  test('nothing of theirs comes in where they changed nothing, and nothing of mine is in the way where I did not', () => {
    fc.assert(
      fc.property(draft, draft, (one, other) => {
        expect(mergeDrafts(one, other, one)).toEqual({ draft: other, clashes: [] })
        const taken = mergeDrafts(one, one, other)
        expect(taken.clashes).toEqual([])
        expect(saysTheSame('draft', taken.draft, other)).toBe(true)
      }),
    )
  })

  test('with their side chosen at every choice or with mine, no value comes from nowhere', () => {
    fc.assert(
      fc.property(draft, draft, draft, (base, mine, theirs) => {
        const merging = mergeWithWords(base, mine, theirs)
        for (const side of ['mine', 'theirs'] as const) {
          const sides = Object.fromEntries(merging.clashes.map(({ path }) => [path, side]))
          const result = chosen(merging, sides) as typeof mine
          expect([mine.name, theirs.name]).toContain(result.name)
          const known = [...mine.materials, ...theirs.materials].map((row) => JSON.stringify(row))
          for (const row of result.materials ?? []) expect(known).toContain(JSON.stringify(row))
        }
      }),
    )
  })

  test('merging what was merged changes nothing any more', () => {
    fc.assert(
      fc.property(draft, draft, draft, (base, mine, theirs) => {
        const { draft: merged, clashes } = mergeDrafts(base, mine, theirs)
        fc.pre(clashes.length === 0)
        expect(mergeDrafts(theirs, merged, theirs)).toEqual({ draft: merged, clashes: [] })
      }),
    )
  })
})

describe('in words', () => {
  test('a choice names its field, and what came in by itself is named too', () => {
    const merging = mergeWithWords(
      opened,
      { ...opened, infill: 'boards' },
      { ...opened, infill: 'sheep wire', height: { agreed: '4 ft', measuredFrom: 'higher' } },
    )
    expect(merging.clashes).toEqual([
      { path: 'infill', label: 'Infill', mine: 'boards', theirs: 'sheep wire', theirValue: 'sheep wire' },
    ])
    expect(merging.taken).toEqual(['Height, agreed'])
    expect(merging.isTheirs).toBe(false)
  })

  test('a row says what differs in it', () => {
    const merging = mergeWithWords(
      opened,
      { ...opened, materials: [posts, { ...mesh, quantity: '70' }, ties] },
      { ...opened, materials: [posts, { ...mesh, unitPrice: '4.80' }, ties] },
    )
    expect(merging.clashes).toMatchObject([
      { mine: expect.stringMatching(/: 70\n.*: 5\.10/), theirs: expect.stringMatching(/: 60\n.*: 4\.80/) },
    ])
  })

  test('where mine adds nothing to theirs, that is said', () => {
    expect(mergeWithWords(opened, opened, { ...opened, infill: 'boards' }).isTheirs).toBe(true)
  })
})
