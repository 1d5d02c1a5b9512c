import { describe, expect, test } from 'vitest'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import type { Signature } from '../../lib/core/agreement/revision.ts'
import { hoursText } from '../../lib/core/amounts/hours.ts'
import { scaledInteger } from '../../lib/core/amounts/typedNumber.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import type { ReadNotebook } from '../../lib/forms/readNotebook.ts'
import type { Block, TableBlock } from '../../lib/words/summary/block.ts'
import { summaryContent } from '../../lib/words/summary/summaryContent.ts'
import type { Standing } from '../../lib/words/summary/summaryInput.ts'
import { exampleNotebook, notebookWith, sha256Of, signatureOf } from '../pdf/madeSummary.ts'

const halves = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }

function contentOf(
  read: ReadNotebook,
  kind: Standing['kind'] = 'draft',
  signatures: readonly Signature[] = [],
): Block[] {
  const sha256 = sha256Of(agreementText(read.document))
  const standing: Standing =
    kind === 'draft'
      ? { kind, sha256 }
      : { kind, sha256, number: 3, frozenAt: new Date('2027-03-03T19:12:00Z') }
  return summaryContent({
    notebook: read.notebook,
    statement: statementOf(read.notebook),
    standing,
    signatures,
    booksAsOf: '2027-04-03',
  })
}

function textsOf(blocks: readonly Block[]): string[] {
  return blocks.flatMap(textsIn)
}

function textsIn(block: Block): string[] {
  switch (block.kind) {
    case 'title':
      return [block.text, block.standing]
    case 'heading':
    case 'paragraph':
      return [block.text]
    case 'list':
      return [...block.items]
    case 'steps':
      return block.groups.flatMap(({ heading, steps }) => [heading, ...steps])
    case 'caution':
      return [block.title, block.text]
    case 'table':
      return [
        block.caption,
        ...block.columns.map(({ title }) => title),
        ...block.rows.flatMap(({ cells }) => cells),
        ...(block.foot ?? []),
      ]
    case 'drawing':
      return [block.caption, block.description, ...block.notes]
    case 'figure':
      return [block.caption, block.description]
    case 'signature':
      return [block.party, block.capacity, block.householdName, ...Object.values(block.state)]
  }
}

const words = (blocks: readonly Block[]) => textsOf(blocks).join('\n').replaceAll('\u00A0', ' ')
const tables = (blocks: readonly Block[]) =>
  blocks.filter((block): block is TableBlock => block.kind === 'table')

/** Hundredths of what a cell shows: money in dollars or hours; undefined where it shows no figure. */
function hundredths(cell: string): bigint | undefined {
  if (cell === 'not priced yet') return 0n
  const match = /^(−?)\$?([0-9,]+\.[0-9]{2})$/.exec(cell)
  if (match === null) return undefined
  const size = scaledInteger((match[2] ?? '').replaceAll(',', ''), 2)
  return match[1] === '−' ? -size : size
}

describe('the summary of the example', () => {
  const example = exampleNotebook()
  const content = contentOf(example)

  test('has its chapters in the order of reading', () => {
    const chapters = content.flatMap((block) =>
      block.kind === 'heading' && block.level === 1 ? [block.id] : [],
    )
    expect(content[0]?.kind).toBe('title')
    expect(chapters).toEqual([
      'parties',
      'line',
      'drawing',
      'build',
      'made-of',
      'costs',
      'shares',
      'arrangements',
      'books',
      'terms',
      'checks',
      'decisions',
      'dates',
      'before-building',
      'signatures',
      'steps',
    ])
  })

  test('gives every heading an id of its own', () => {
    const ids = content.flatMap((block) => (block.kind === 'heading' ? [block.id] : []))
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.every((id) => /^[a-z0-9-]+$/.test(id))).toBe(true)
  })

  test('has as many cells in every row as its table has columns', () => {
    for (const table of tables(content)) {
      for (const row of [...table.rows.map(({ cells }) => cells), ...(table.foot ? [table.foot] : [])]) {
        expect(row).toHaveLength(table.columns.length)
      }
    }
  })

  test('has tables that add up to their foot, column by column', () => {
    // A subtraction and a list of hours as typed have feet of another kind.
    const apart = ['What each household brings, if all goes as planned', 'The balance']
    const adding = tables(content).filter(
      (table) => table.foot !== undefined && !apart.includes(table.caption),
    )
    let checked = 0
    for (const { columns, rows, foot = [], caption } of adding) {
      columns.forEach(({ figure, title }, index) => {
        const expected = hundredths(foot[index] ?? '')
        if (!figure || expected === undefined) return
        const typedHours = caption === 'Work' && title === 'Hours'
        const figures = rows.map(({ cells }) =>
          typedHours ? scaledInteger(cells[index] ?? '', 2) : hundredths(cells[index] ?? ''),
        )
        expect(figures.every((one) => one !== undefined)).toBe(true)
        expect(
          figures.reduce<bigint>((sum, one) => sum + (one ?? 0n), 0n),
          `${caption}, ${title}`,
        ).toBe(expected)
        checked += 1
      })
    }
    expect(checked).toBeGreaterThan(50)
  })

  test('takes what is promised off what is asked, and what is given off what is asked', () => {
    for (const caption of ['What each household brings, if all goes as planned', 'The balance']) {
      const table = tables(content).find((one) => one.caption === caption)
      const [asked, less] =
        table?.rows.map(({ cells }) => cells.slice(1).map((cell) => hundredths(cell) ?? 0n)) ?? []
      expect(asked?.length).toBeGreaterThan(1)
      expect(asked?.map((one, index) => one - (less?.[index] ?? 0n))).toEqual(
        table?.foot?.slice(1).map(hundredths),
      )
    }
  })

  test('adds the parts to the totals of both households', () => {
    const table = tables(content).find(({ caption }) => caption.startsWith('Each part'))
    for (const { cells } of table?.rows ?? []) {
      expect((hundredths(cells[2] ?? '') ?? 0n) + (hundredths(cells[3] ?? '') ?? 0n)).toBe(
        hundredths(cells[1] ?? ''),
      )
    }
    expect(table?.rows).toHaveLength(12)
  })

  test('says the hours asked as the statement has them', () => {
    const statement = statementOf(example.notebook)
    if (!statement.ok) throw new Error('the example has a statement')
    const table = tables(content).find(({ caption }) => caption.startsWith('Hours of work'))
    expect(table?.rows.map(({ cells }) => cells.slice(1))).toEqual(
      statement.value.items.map(({ hours }) =>
        [hours.hours, hours.a, hours.b, hours.gifts.a, hours.gifts.b].map(hoursText),
      ),
    )
  })

  test('says the setback along each section from the stations, by straight lines between them', () => {
    // Section 4 lies between the stations at 84 ft (1 in) and 112 ft (2 in), both on no. 14's land; gate 4, at 122 ft,
    // halfway between 2 in and 1 1/2 in: 1 3/4 in. Section 3 crosses the line, from 4 in on one side to 1 in on the other.
    expect(words(content)).toContain(
      'The middle of the fence stands from 1 in to 2 in off the line, on the land of no. 14.',
    )
    expect(words(content)).toContain(
      'The middle of the gate stands 1 3/4 in off the line, on the land of no. 14.',
    )
    expect(words(content)).toContain(
      'on both sides of the line in turn: up to 1 in on the land of no. 14, and up to 4 in on the land of no. 12',
    )
  })

  test('shows credits with a minus, and thanks for gifts that are in no sum', () => {
    expect(words(content)).toContain(
      'old chain-link fabric, sold as scrap (credit)\n1 lot\n$64.00\nnone\npaid back\n−$64.00',
    )
    expect(words(content)).toContain('No. 14 gives 5 h for this: paint the rails. Thank you.')
    expect(words(content)).toContain('They are in no sum')
  })

  test('says which lines are not priced yet', () => {
    expect(words(content)).toContain(
      'Not priced yet, and counted as nothing so far: brace wire and turnbuckle.',
    )
  })

  test('says the cap, and what it moves where the share would exceed it', () => {
    const cap = (figure: string) => `No. 14 has agreed to be asked for no more than ${figure}.`
    expect(words(content)).toContain(cap('$4,200.00'))
    expect(words(content)).not.toContain('The cap of no. 14 moves')
    const read = exampleNotebook()
    const lower = contentOf({ ...read, notebook: { ...read.notebook, caps: { b: '3750.00' } } })
    expect(words(lower)).toContain(`${cap('$3,750.00')} The cap of no. 14 moves $123.70 to no. 12.`)
  })

  test('shows a struck entry as struck, with the reason', () => {
    const struck = tables(content).flatMap(({ rows }) => rows.filter((row) => row.struck))
    expect(struck).toHaveLength(1)
    expect(struck[0]?.cells.join(' ')).toContain('Struck on 21 March 2027 by no. 12: entered twice')
    expect(struck[0]?.cells.at(-1)).toBe('struck, was $449.48')
  })

  test('keeps receipts apart from what is signed, and says as of when', () => {
    const signed = words(contentOf(example, 'signed'))
    expect(signed).toContain('What has been given so far as of 3 April 2027')
    expect(signed).toContain('Receipts are kept apart from what is signed, and change nothing in it.')
  })

  test('puts the open questions before the answered ones, conspicuously', () => {
    const titles = content.flatMap((block) => (block.kind === 'caution' ? [block.title] : []))
    expect(titles).toContain('Still open: 4 of 10')
    const captions = tables(content).map(({ caption }) => caption)
    expect(captions.indexOf('Still open')).toBeLessThan(captions.indexOf('Asked and answered'))
  })

  test('holds no figure from its unit by a space that a line may end at', () => {
    const texts = textsOf(content.filter(({ kind }) => kind === 'paragraph'))
    const ours = texts
      .filter((text) => /^(It runs|Its middle)/.test(text))
      .map((text) => text.split(/ (?:Face|Infill|Latch|Opens):/)[0] ?? '')
    expect(ours.length).toBe(9)
    for (const text of ours) expect(text).not.toMatch(/[0-9] (?:ft|in|m)\b/)
  })
})

describe('the cautions', () => {
  const built = (line: object) => ({
    id: 's1',
    materials: [{ quantity: '1', unitPrice: '100', suppliedBy: 'bought', ...line }],
    share: halves,
  })
  const tubePosts = { posts: { what: 'posts', wall: '0.1 in' } }
  const content = contentOf(notebookWith())

  test.each([
    /permit office.*|Ask if you need a permit/,
    /licensed surveyor/,
    /pipes and cables marked before you dig/,
    /pool barrier and a retaining wall need a licensed designer.*wind or hold livestock/,
    /Welding, cutting, lifting and concrete/,
    /residue that burns or explodes.*radiation, lead paint, or zinc.*Vent a closed tube before you heat it/,
    /gives no legal advice and it moves no boundary/,
    /land records/,
    /built wholly on one household’s land/,
    /sign and build over a line that is not sure/,
    /does not prove who signed.*nothing against the person who runs the program/,
    /takes a copy of its own/,
  ])('are all there, also in an empty notebook: %s', (caution) => {
    expect(content.some((block) => block.kind === 'caution' && caution.test(block.text))).toBe(true)
  })

  test.each([
    ['nothing is known yet', {}, true],
    ['it is all of boards', { sections: [built({ what: 'fence boards, cedar' })] }, false],
    ['a cost line names pipe', { sections: [built({ what: 'drill pipe' })] }, true],
    [
      'a build-up has posts with a wall',
      { sections: [{ ...built({ what: 'board' }), buildUp: tubePosts }] },
      true,
    ],
    [
      'a piece at hand is tube',
      { sections: [built({ what: 'board' })], inventory: [{ what: 'old tube', length: '9 ft' }] },
      true,
    ],
  ])('speak of reclaimed tube only where there can be some: %s', (_what, parts, named) => {
    const titles = contentOf(notebookWith(parts)).flatMap((block) =>
      block.kind === 'caution' ? [block.title] : [],
    )
    expect(titles.includes('Reclaimed tube')).toBe(named)
    expect(titles).toContain('Work safely')
  })

  test('warn of a line that no surveyor has found, and not of one that was surveyed', () => {
    const titles = (evidence: string) =>
      contentOf(notebookWith({ line: { evidence } })).flatMap((block) =>
        block.kind === 'caution' ? [block.title] : [],
      )
    expect(titles('belief')).toContain('The place of the line is not sure')
    expect(titles('survey')).not.toContain('The place of the line is not sure')
  })

  test('warn of a party that is a tenant', () => {
    const tenant = { a: { parties: [{ name: 'Kai', capacity: 'tenant' }] }, b: {} }
    expect(words(contentOf(notebookWith({ households: tenant })))).toContain(
      'Ask the owner to be a party as well.',
    )
    expect(words(content)).not.toContain('Ask the owner to be a party as well.')
  })
})

describe('a statement that is refused', () => {
  const lines = [{ what: 'pipe', quantity: '1', unitPrice: '100', suppliedBy: 'bought' }]
  const read = notebookWith({
    sections: [
      {
        id: 's1',
        name: 'Lane',
        materials: lines,
        share: { ...halves, materials: { principle: 'benefit', a: '0', b: '0' } },
      },
      { id: 's2', materials: lines, share: halves },
    ],
  })

  test('says in the shares which share can’t be worked out and why, and shows what can', () => {
    const content = contentOf(read)
    const text = words(content)
    expect(text).toContain('The shares can’t be worked out yet')
    expect(text).toContain(
      'Section 1: Lane, materials: There is something to share by benefit, but both figures are zero',
    )
    const table = tables(content).find(({ caption }) => caption.startsWith('Each part'))
    expect(table?.rows.map(({ cells }) => cells)).toEqual([['Section 2', '$100.00', '$50.00', '$50.00']])
    expect(table?.foot).toBeUndefined()
    expect(text).toContain('The balance can’t be told until the shares can be worked out.')
  })

  test('says it of caps that fall short', () => {
    const text = words(
      contentOf(
        notebookWith({
          sections: [{ id: 's', materials: lines, share: halves }],
          caps: { a: '10', b: '20' },
        }),
      ),
    )
    expect(text).toContain('The caps: The caps 10.00 and 20.00 together fall 70.00 short')
  })
})

describe('the payment and the balance', () => {
  const of = (contributions: readonly unknown[]) =>
    words(
      contentOf(
        notebookWith({
          households: { a: { name: 'Mill House' }, b: { name: 'The Barn' } },
          sections: [
            {
              id: 's',
              materials: [{ what: 'pipe', quantity: '1', unitPrice: '100', suppliedBy: 'bought' }],
              share: halves,
            },
          ],
          contributions,
        }),
      ),
    )

  test('name the one payment that evens the two', () => {
    const text = of([{ household: 'a', kind: 'cash', amount: '100', date: '2027-01-01' }])
    expect(text).toContain('One payment evens the two: The Barn pays $50.00 to Mill House.')
    expect(text).toContain('Balance: still to give\n−$50.00\n$50.00')
  })

  test('say so where none is due', () => {
    expect(of([])).toContain(
      '$100.00 of the whole has not been given by anyone yet. No payment between the two is due now.',
    )
    expect(of([{ household: 'a', kind: 'cash', amount: '130', date: '2027-01-01' }])).toContain(
      'More has been given than is asked for in all: the outstanding sum is −$30.00.',
    )
  })
})

describe('the signatures', () => {
  const example = exampleNotebook()
  const statesOf = (blocks: readonly Block[]) =>
    blocks.flatMap((block) => (block.kind === 'signature' ? [{ party: block.party, ...block.state }] : []))

  test('show the name, the sentence, the time and the drawing of who signed, and who has not signed yet', () => {
    const states = statesOf(contentOf(example, 'up for signing', [signatureOf(example, 'a', 1, 'M1 2L3 4')]))
    expect(states.map(({ party, kind }) => [party, kind])).toEqual([
      ['Marnie Oakshott', 'not signed yet'],
      ['Tobias Oakshott', 'signed'],
      ['Ines Vandermolen', 'not signed yet'],
    ])
    expect(states[1]).toMatchObject({
      typedName: 'Tobias Oakshott',
      when: '4 March 2027, 20:01 UTC',
      drawing: 'M1 2L3 4',
    })
  })

  test('do not count where they were given for another text', () => {
    const other = { ...signatureOf(example, 'a', 0), sha256: 'f'.repeat(64) }
    expect(statesOf(contentOf(example, 'up for signing', [other]))[0]).toEqual({
      party: 'Marnie Oakshott',
      kind: 'not signed yet',
      text: 'Not signed yet. A signature given for another text does not count here.',
    })
  })
})
