import { describe, expect, test } from 'vitest'
import { itemChanges } from '../../app/notebook/server/itemChanges.ts'
import { itemKey } from '../../lib/core/agreement/agreedItems.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { withItemPutBack } from '../../lib/forms/itemPutBack.ts'
import { readPart, removeItem } from '../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../lib/forms/readNotebook.ts'

const example = (): NotebookDocument => ({ ...exampleDocument(), contributions: [] })

/** Removes an item and gives what the record then has of it. */
function removed(id: string) {
  const document = example()
  const without = removeItem(document, id)
  const change = itemChanges(document, without).find((one) => one.itemKey === itemKey(id))
  return { document, without, before: change?.before }
}

describe('an item that is put back', () => {
  test.each(['s5', 'g4', 'c1'])('stands there as it was: %s', (id) => {
    const { document, without, before } = removed(id)
    expect(readPart(without, { part: 'item', id })).toBeUndefined()
    const put = withItemPutBack(without, id, before)
    expect('next' in put && readPart(put.next, { part: 'item', id })).toEqual(
      readPart(document, { part: 'item', id }),
    )
  })

  test('the last of its list leaves the notebook as if nothing had happened', () => {
    const { document, without, before } = removed('g4')
    const put = withItemPutBack(without, 'g4', before)
    expect('next' in put && put.next.gates).toEqual(document.gates)
  })

  test('stands there already, where it came back in another window', () => {
    expect(withItemPutBack(example(), 'g4', null)).toEqual({ not: 'there already' })
    expect(withItemPutBack(removed('g4').without, 'g4', null)).toEqual({ not: 'not on record' })
  })

  test('a section of which nothing is known but its name is still a section', () => {
    const bare = { id: 's9', name: 'Somewhere', materials: [], labour: [] }
    const put = withItemPutBack(example(), 's9', { currency: example().currency, item: bare })
    expect('next' in put && (put.next.sections as unknown[]).at(-1)).toEqual(bare)
  })
})

describe('nothing is put back', () => {
  test('that stands there already', () => {
    const { document, before } = removed('g4')
    expect(withItemPutBack(document, 'g4', before)).toEqual({ not: 'there already' })
  })

  test('whose prices are in another currency than the notebook has now', () => {
    const { without, before } = removed('g4')
    expect(withItemPutBack({ ...without, currency: 'EUR' }, 'g4', before)).toEqual({ not: 'other currency' })
  })

  test('of which the record knows nothing, or something else', () => {
    const { without, before } = removed('g4')
    expect(withItemPutBack(without, 'g4', undefined)).toEqual({ not: 'not on record' })
    expect(withItemPutBack(without, 'g5', before)).toEqual({ not: 'not on record' })
  })
})
