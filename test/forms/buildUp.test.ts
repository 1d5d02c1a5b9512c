import { describe, expect, test } from 'vitest'
import { agreementText, canonicalText } from '../../lib/core/agreement/canonicalText.ts'
import { readyBuildUps } from '../../lib/core/takeoff/readyBuildUps.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { type NotebookDocument, readDocument, unknownKeys } from '../../lib/forms/readNotebook.ts'
import { tidyDraft } from '../../lib/forms/tidyDraft.ts'

const shares = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }

function notebook(more: Record<string, unknown> = {}, section = {}, gate = {}): NotebookDocument {
  return {
    format: 'mearing-notebook',
    version: 1,
    currency: 'USD',
    households: { a: {}, b: {} },
    sections: [{ id: 's1', from: '0 ft', to: '40 ft', share: shares, ...section }],
    gates: [{ id: 'g1', at: '20 ft', opening: '4 ft', share: shares, ...gate }],
    ...more,
  }
}

function faultsOf(document: NotebookDocument): string[] {
  const read = readDocument(document)
  return read.ok ? [] : read.faults.map(({ path, kind }) => `${path}: ${kind}`)
}

function readOf(document: NotebookDocument) {
  const read = readDocument(document)
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.value
}

describe('a file without the keys of the take-off', () => {
  test('reads with every default and stays the same document, byte for byte', () => {
    const document = notebook()
    const read = readOf(document)
    expect(read.document).toBe(document)
    expect(read.notebook.buildUps).toEqual([])
    expect(read.notebook.inventory).toEqual([])
    expect(read.notebook.line.limits).toEqual([])
    expect(read.notebook.line.error).toBe('')
    expect(read.notebook.sections[0]?.measured).toEqual([])
    expect(read.notebook.sections[0]?.buildUp).toBeUndefined()
    expect(read.notebook.gates[0]?.buildUp).toBeUndefined()
  })

  test('has the agreement text that it had before: no default enters it', () => {
    expect(agreementText(readOf(notebook()).document)).toBe(canonicalText(notebook()))
  })

  test('a cost line comes from no take-off and was changed by nobody', () => {
    const line = { what: 'pipe', quantity: '1', suppliedBy: 'bought' }
    const [read] = readOf(notebook({}, { materials: [line] })).notebook.sections[0]?.materials ?? []
    expect(read).toMatchObject({ from: '', changed: false })
  })
})

describe('the keys of the take-off', () => {
  test.each(readyBuildUps.map((ready) => [ready.key, ready] as const))(
    'the ready build-up %s is read whole, and none of its keys is unknown',
    (_key, ready) => {
      const document = notebook(
        { buildUps: [{ name: 'ours', household: 'a', section: ready.section, gate: ready.gate }] },
        { buildUp: ready.section },
        { buildUp: ready.gate },
      )
      expect(faultsOf(document)).toEqual([])
      expect(unknownKeys(document)).toEqual([])
    },
  )

  test('an empty build-up reads with every default', () => {
    const { notebook: read } = readOf(notebook({}, { buildUp: {} }, { buildUp: {} }))
    expect(read.sections[0]?.buildUp).toMatchObject({ posts: { spacing: '' }, infill: [], lines: [] })
    expect(read.gates[0]?.buildUp).toMatchObject({ leaves: '', hinges: { perLeaf: '' } })
  })

  test('lengths and numbers stay as they were typed', () => {
    const document = notebook({}, { buildUp: { posts: { outside: '2⅜ in', spacing: "8'" } } })
    const { notebook: read } = readOf(document)
    expect(read.sections[0]?.buildUp?.posts.outside).toBe('2⅜ in')
    expect(read.sections[0]?.buildUp?.posts.spacing).toBe("8'")
  })

  test('turns, the stated error, limits, measured posts and pieces at hand are read', () => {
    const document = notebook(
      {
        line: {
          error: '2 in',
          stations: [{ at: '0 ft', angle: { degrees: '12.5', toward: 'a' } }],
          limits: [
            {
              from: '0 ft',
              to: '9 ft',
              limit: '4 ft',
              measuredFrom: 'b',
              saidBy: 'permit office',
              on: '2027-02-10',
            },
          ],
        },
        inventory: [
          {
            what: 'pipe',
            shape: 'round',
            outside: '2 3/8 in',
            length: '19 ft 4 in',
            count: '3',
            household: 'a',
          },
        ],
      },
      { measured: [{ post: '2', at: '8 ft 3 in', depth: '22 in', why: 'rock' }] },
    )
    expect(faultsOf(document)).toEqual([])
    expect(unknownKeys(document)).toEqual([])
  })

  test.each([
    [
      'a length without a unit',
      { posts: { spacing: '8' } },
      'sections[0].buildUp.posts.spacing: length-form',
    ],
    ['a negative hole', { posts: { hole: '-8 in' } }, 'sections[0].buildUp.posts.hole: length-negative'],
    ['a shape that is none', { posts: { shape: 'oval' } }, 'sections[0].buildUp.posts.shape: not-one-of'],
    ['a number with a comma', { rails: { count: '1,5' } }, 'sections[0].buildUp.rails.count: number-form'],
    [
      'an infill that is none',
      { infill: [{ kind: 'hedge' }] },
      'sections[0].buildUp.infill[0].kind: not-one-of',
    ],
    ['a free line on nothing', { lines: [{ what: 'x' }] }, 'sections[0].buildUp.lines[0].basis: needed'],
    ['yes as a text', { rails: { welded: 'yes' } }, 'sections[0].buildUp.rails.welded: not-a'],
  ])('%s is refused at its path', (_name, buildUp, fault) => {
    expect(faultsOf(notebook({}, { buildUp }))).toEqual([fault])
  })

  test('a key that the format does not know is named, deep inside a build-up too', () => {
    expect(unknownKeys(notebook({}, { buildUp: { posts: { colour: 'green' } } }))).toEqual([
      'sections[0].buildUp.posts.colour',
    ])
  })
})

test('saving a page that shows the defaults of a build-up adds nothing to the file', () => {
  const stored = { rails: { count: '2' }, infill: [{ kind: 'panel' }] }
  const shown = {
    name: '',
    posts: { reclaimed: false, spacing: '' },
    rails: { count: '2', welded: false, reclaimed: false },
    infill: [{ kind: 'panel', rakes: false, what: '' }],
    lines: [],
  }
  expect(tidyDraft(shown, stored)).toEqual(stored)
})

test('the example that ships is read as before', () => {
  expect(unknownKeys(exampleDocument())).toEqual([])
})
