import { describe, expect, test } from 'vitest'
import { namedEntries } from '../../app/ui/draft/entryNames.ts'

const named = (message: string, label: string, ...within: string[]) => ({ message, name: { label, within } })

describe('what has to be mended, one below the other', () => {
  test('stays as it is where every entry reads otherwise', () => {
    expect(namedEntries([named('Needed: a day.', 'Begin'), named('Needed: a length.', 'Height')])).toEqual([
      'Needed: a day.',
      'Needed: a length.',
    ])
  })

  test('is told by the field where entries read the same', () => {
    expect(
      namedEntries([
        named('Needed: a length.', 'Length that Petra fronts', 'Materials'),
        named('Needed: a length.', 'Length that Emrys fronts', 'Materials'),
        named('Needed: a day.', 'Begin'),
      ]),
    ).toEqual([
      'Length that Petra fronts: Needed: a length.',
      'Length that Emrys fronts: Needed: a length.',
      'Needed: a day.',
    ])
  })

  test('is told by what the field stands in, too, where the fields are called the same', () => {
    expect(
      namedEntries([
        named('Needed: a number.', 'Quantity', 'Materials', '1 “mesh”'),
        named('Needed: a number.', 'Quantity', 'Materials', '2 “posts”'),
        named('Needed: a number.', 'Hours', 'Work', '1 “digging”'),
      ]),
    ).toEqual([
      'Materials, 1 “mesh”, Quantity: Needed: a number.',
      'Materials, 2 “posts”, Quantity: Needed: a number.',
      'Hours: Needed: a number.',
    ])
  })

  test('stays as it is where the page has no field for it', () => {
    const bare = { message: 'Load the page again.', name: undefined }
    expect(namedEntries([bare, bare, named('Load the page again.', '')])).toEqual(
      Array.from({ length: 3 }, () => 'Load the page again.'),
    )
  })
})
