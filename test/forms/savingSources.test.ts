import { expect, test } from 'vitest'
import { missingSources } from '../../lib/forms/savingSources.ts'

const saving = (more: object = {}) => ({ principle: 'saving', aloneA: '700', aloneB: '500', ...more })
const both = { sourceA: 'an offer of 3 May', sourceB: 'our own reckoning' }
const equal = { principle: 'equal' }

test('a new share by the saving needs a source for each figure', () => {
  expect(missingSources(undefined, { share: { together: saving() } })).toEqual([
    'share.together.sourceA',
    'share.together.sourceB',
  ])
  expect(missingSources(undefined, { share: { together: saving(both) } })).toEqual([])
  expect(missingSources(undefined, { share: { together: saving({ ...both, sourceB: '  ' }) } })).toEqual([
    'share.together.sourceB',
  ])
})

test('of figures that stood already, only the one that was changed needs its source', () => {
  const before = { share: { materials: saving(), labour: equal } }
  expect(missingSources(before, before)).toEqual([])
  const after = { share: { materials: saving({ aloneB: '501' }), labour: equal } }
  expect(missingSources(before, after)).toEqual(['share.materials.sourceB'])
})

test('figures that went to another pot, or into a basic or upgrade share, need their sources there', () => {
  const before = { share: { materials: saving(), labour: equal } }
  expect(missingSources(before, { share: { together: saving() } })).toHaveLength(2)
  const difference = { principle: 'difference', basic: '1', basicShare: saving(), upgradeShare: equal }
  expect(missingSources(before, { share: { materials: difference, labour: equal } })).toEqual([
    'share.materials.basicShare.sourceA',
    'share.materials.basicShare.sourceB',
  ])
})

test('figures that are missing, and shares that are none, are left to the reading of the file', () => {
  expect(missingSources(undefined, { share: { together: { principle: 'saving', aloneA: '' } } })).toEqual([])
  for (const odd of [undefined, null, 7, [], {}, { share: [] }, { share: { together: 'saving' } }])
    expect(missingSources(odd, odd)).toEqual([])
})
