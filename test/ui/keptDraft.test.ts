import { describe, expect, test } from 'vitest'
import { type DraftShelf, forgetKept, keptName, readKept, writeKept } from '../../app/ui/draft/keptDraft.ts'

/** A browser's shelf that takes so many characters. */
function shelfFor(room = 1_000): DraftShelf & { readonly held: Map<string, string> } {
  const held = new Map<string, string>()
  return {
    held,
    getItem: (name) => held.get(name) ?? null,
    setItem: (name, text) => {
      if (text.length > room) throw new DOMException('full', 'QuotaExceededError')
      held.set(name, text)
    },
    removeItem: (name) => void held.delete(name),
  }
}

const name = keptName('notebook1 a', '/notebook/notebook1/item/s1', 'field')
const kept = {
  draft: { notes: 'typed' },
  opened: { draft: { notes: '' }, base: 'f0' },
  at: 1_790_000_000_000,
  sent: false,
}

describe('what is typed and not saved', () => {
  test('waits under its form’s name and comes back as it was', () => {
    const shelf = shelfFor()
    expect(writeKept(shelf, name, kept)).toBe(true)
    expect(readKept(shelf, name)).toEqual(kept)
  })

  test('is gone once it is forgotten', () => {
    const shelf = shelfFor()
    writeKept(shelf, name, kept)
    forgetKept(shelf, name)
    expect(readKept(shelf, name)).toBeUndefined()
    expect(shelf.held.size).toBe(0)
  })

  test('is another household’s, another page’s and another form’s no more than theirs is its', () => {
    const names = [
      name,
      keptName('notebook1 b', '/notebook/notebook1/item/s1', 'field'),
      keptName('notebook1 a', '/notebook/notebook1/item/s2', 'field'),
      keptName('notebook1 a', '/notebook/notebook1/item/s1', 'message'),
    ]
    expect(new Set(names).size).toBe(4)
  })

  test('is not said to wait where the browser has no room for it', () => {
    const shelf = shelfFor(10)
    expect(writeKept(shelf, name, kept)).toBe(false)
    expect(readKept(shelf, name)).toBeUndefined()
  })

  test.each(['', 'no JSON', 'null', '[]', '{}', '{"draft":"x","opened":{"base":"f"},"at":1,"sent":false}'])(
    'is nothing where the shelf holds something else: %s',
    (text) => {
      const shelf = shelfFor()
      shelf.held.set(name, text)
      expect(readKept(shelf, name)).toBeUndefined()
    },
  )
})
