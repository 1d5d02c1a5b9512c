import { describe, expect, test } from 'vitest'
import { cautionsOf, cautionsOfAll } from '../../../lib/core/agreement/cautions.ts'
import { exampleDocument } from '../../../lib/forms/exampleNotebook.ts'
import { newNotebook } from '../../../lib/forms/newNotebook.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'

function notebookWith(more: Readonly<Record<string, unknown>>) {
  const heading = { currency: 'USD', households: { a: { name: 'Hill' }, b: { name: 'Dale' } } }
  const read = readDocument({ ...newNotebook(heading), ...more })
  if (!read.ok) throw new Error('The notebook does not hold.')
  return read.value.notebook
}

const halves = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }
const section = (more: object) =>
  notebookWith({ sections: [{ id: 's1', name: 'Meadow', share: halves, ...more }] }).sections

describe('cautions of an item', () => {
  test.each<[string, object, readonly string[]]>([
    ['a bare stretch has none', {}, []],
    [
      'digging, where a task digs',
      { labour: [{ task: 'Dig the post holes', hours: '2', by: 'a' }] },
      ['digging'],
    ],
    [
      'welding, where a task welds',
      { labour: [{ task: 'notch and weld rails', hours: '2', by: 'a' }] },
      ['welding'],
    ],
    [
      'reclaimed stock, where a cost line names it',
      { materials: [{ what: 'reclaimed pipe', quantity: '4', suppliedBy: 'a' }] },
      ['reclaimed'],
    ],
    [
      'concrete, where a cost line names it',
      { materials: [{ what: 'concrete, bag', quantity: '4', suppliedBy: 'bought' }] },
      ['concrete'],
    ],
    [
      'concrete, where the build-up fills holes with it',
      { buildUp: { footing: { fill: 'concrete' } } },
      ['concrete'],
    ],
    [
      'welding and reclaimed stock, where the build-up says so',
      { buildUp: { rails: { welded: true, reclaimed: true } } },
      ['welding', 'reclaimed'],
    ],
    ['a pool, where a note names it', { notes: 'Runs past the swimming pool of Dale.' }, ['pool']],
    ['no pool, where a note says that there is none', { notes: 'There is no pool.' }, []],
    [
      'no digging where dig is only a part of a word',
      { labour: [{ task: 'indigo paint', hours: '2', by: 'a' }] },
      [],
    ],
  ])('%s', (_what, more, kinds) => {
    expect(cautionsOf(section(more))).toEqual(kinds)
  })
})

describe('cautions of the whole notebook', () => {
  test('a new notebook speaks of digging alone, although its list asks about pools', () => {
    const notebook = notebookWith({})
    expect(notebook.checks.some(({ what }) => /pool/i.test(what))).toBe(true)
    expect(cautionsOfAll(notebook)).toEqual(['digging'])
  })

  test('an answer or a decision that speaks of a pool brings the caution', () => {
    const check = { what: 'Pools', answer: 'Dale has a pool behind the house.', done: true }
    expect(cautionsOfAll(notebookWith({ checks: [check] }))).toContain('pool')
    const decision = { on: '2027-02-01', text: 'The pool gets a fence of its own.' }
    expect(cautionsOfAll(notebookWith({ decisions: [decision] }))).toContain('pool')
  })

  test('the example welds reclaimed pipe and pours concrete, and has no pool', () => {
    const read = readDocument(exampleDocument())
    expect(read.ok && cautionsOfAll(read.value.notebook)).toEqual([
      'digging',
      'welding',
      'reclaimed',
      'concrete',
    ])
  })
})
