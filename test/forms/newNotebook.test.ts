import { describe, expect, test } from 'vitest'
import { agreedItems } from '../../lib/core/agreement/agreedItems.ts'
import { obstaclesToSigning } from '../../lib/core/agreement/readiness.ts'
import { newNotebook } from '../../lib/forms/newNotebook.ts'
import { readDocument, unknownKeys } from '../../lib/forms/readNotebook.ts'
import { startingChecks } from '../../lib/words/startingChecks.ts'
import { startingTopics } from '../../lib/words/startingTerms.ts'

const heading = {
  title: 'Orchard line',
  currency: 'USD',
  units: 'metric',
  households: { a: { name: 'no. 12', parties: [] }, b: { name: '', parties: [] } },
}
const document = newNotebook(heading)
const read = readDocument(document)
if (!read.ok) throw new Error(JSON.stringify(read.faults))
const { notebook } = read.value

describe('a new notebook', () => {
  test('holds, with its heading and nothing the program does not know', () => {
    expect(notebook).toMatchObject({ title: 'Orchard line', currency: 'USD', units: 'metric' })
    expect(notebook.households.a.name).toBe('no. 12')
    expect(unknownKeys(document)).toEqual([])
  })

  test('begins with the first wording of every starting topic', () => {
    expect(notebook.terms).toEqual(
      startingTopics.map(({ topic, wordings }) => ({ topic, text: wordings[0]?.text })),
    )
    expect(notebook.terms.length).toBeGreaterThan(8)
  })

  test('begins with every starting check, all open and none answered', () => {
    expect(notebook.checks.map(({ what }) => what)).toEqual([...startingChecks])
    for (const { done, answer, who, on } of notebook.checks)
      expect([done, answer, who, on]).toEqual([false, '', '', ''])
  })

  test('has nothing agreed: every item still lacks both marks', () => {
    const obstacles = obstaclesToSigning(document, notebook, [], () => false)
    const open = obstacles.filter(({ kind }) => kind === 'not agreed')
    expect(open).toHaveLength(agreedItems(document).length)
    for (const obstacle of open) expect(obstacle).toMatchObject({ missing: ['a', 'b'] })
  })

  test('holds no share, cost, cap or entry', () => {
    const { sections, gates, common, caps, contributions, decisions } = notebook
    expect([sections, gates, common, caps, contributions, decisions]).toEqual([[], [], [], {}, [], []])
  })

  test('without a heading is refused for its currency alone', () => {
    const bare = readDocument(newNotebook({}))
    expect(!bare.ok && bare.faults.map(({ path }) => path)).toEqual(['currency'])
  })

  test('takes nothing from its heading but the heading', () => {
    const made = newNotebook({ ...heading, caps: { a: '1' }, version: 7, terms: [] })
    expect(made).toEqual(document)
  })
})
