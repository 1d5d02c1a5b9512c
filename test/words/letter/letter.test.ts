import { describe, expect, test } from 'vitest'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { shareItems, statementOf } from '../../../lib/core/shares/statement.ts'
import { exampleDocument } from '../../../lib/forms/exampleNotebook.ts'
import { newNotebook } from '../../../lib/forms/newNotebook.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import {
  type LetterContentId,
  letterContents,
  letterLacks,
} from '../../../lib/words/letter/letterContents.ts'
import { type LetterInvitation, letterOf, letterText } from '../../../lib/words/letter/letterText.ts'
import { proposedFence } from '../../../lib/words/letter/proposedFence.ts'
import { splitReasons } from '../../../lib/words/letter/splitReason.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { documentWith, sectionOf } from '../../core/madeNotebook.ts'
import { shortNotebook } from '../../screens/shortNotebook.ts'
import { readingGrade } from '../readingGrade.ts'
import { writtenLetter } from './writtenLetter.ts'

function notebookOf(document: object): Notebook {
  const read = readNotebook(JSON.stringify(document))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.value.notebook
}
const letterFor = (notebook: Notebook, invitation: LetterInvitation = { kind: 'to be written in' }) =>
  letterOf(notebook, statementOf(notebook), invitation)
const textFor = (notebook: Notebook, invitation?: LetterInvitation) =>
  letterText(letterFor(notebook, invitation))
const contentsFor = (notebook: Notebook) => letterContents(notebook, statementOf(notebook))

const written = notebookOf({ ...shortNotebook, letter: writtenLetter })

describe('what some statutes ask a notice for', () => {
  // check-values.md A6: California Civil Code §841 asks for 30 days’ prior written notice stating the problem, the
  // solution, the estimated cost, the cost-sharing approach and the timeline. An illustration, not advice.
  const asked: Readonly<Record<string, { id: LetterContentId; says: string }>> = {
    'the problem with the fence': { id: 'wrong', says: 'Three posts are rotten.' },
    'the proposed solution': { id: 'proposed', says: 'New mesh on steel posts.' },
    'the estimated cost': {
      id: 'cost',
      says: '$850.01 in all: $550.01 for materials and $300.00 for work',
    },
    'the proposed cost sharing': { id: 'split', says: 'You are asked for $425.00 and we for $425.01' },
    'the timeline': { id: 'time', says: 'From 3 May 2027 to 30 May 2027.' },
    'the notice of 30 days': {
      id: 'by',
      says: 'Please answer by 31 March 2027. That gives a notice of 30 days',
    },
  }

  test.each(Object.entries(asked))('%s is in the letter, and in its text', (_what, { id, says }) => {
    const content = contentsFor(written).find((one) => one.id === id)
    expect(content?.sentences.join(' ')).toContain(says)
    expect(textFor(written)).toContain(says)
  })

  test.each<[string, object, LetterContentId]>([
    ['the problem', { ...shortNotebook, letter: { ...writtenLetter, wrong: ' ' } }, 'wrong'],
    ['the solution', { ...shortNotebook, letter: { ...writtenLetter, proposed: '' } }, 'proposed'],
    [
      'the cost',
      { ...shortNotebook, sections: [], gates: [], contributions: [], letter: writtenLetter },
      'cost',
    ],
    ['the split', { ...shortNotebook, caps: { a: '1', b: '1' }, letter: writtenLetter }, 'split'],
    ['the time', { ...shortNotebook, letter: { ...writtenLetter, workFrom: '', workTo: '' } }, 'time'],
    ['the day to answer by', { ...shortNotebook, letter: { ...writtenLetter, noticeDays: '' } }, 'by'],
  ])(
    '%s is missed where the notebook does not say it, and then nothing is printed for it',
    (_what, document, id) => {
      const notebook = notebookOf(document)
      const lacking = letterLacks(contentsFor(notebook))
      expect(lacking.map((one) => one.id)).toContain(id)
      const heading = lacking.find((one) => one.id === id)?.heading ?? ''
      expect(letterFor(notebook).contents.map((one) => one.heading)).not.toContain(heading)
    },
  )
})

test('a letter that says everything lacks nothing', () => {
  expect(letterLacks(contentsFor(written))).toEqual([])
})

test('a letter of a new notebook lacks all, and still is a letter that binds nobody', () => {
  const empty = notebookOf(newNotebook({ currency: 'USD' }))
  expect(letterLacks(contentsFor(empty)).map(({ id }) => id)).toEqual([
    'wrong',
    'proposed',
    'where',
    'cost',
    'split',
    'time',
    'answer',
    'by',
  ])
  expect(textFor(empty)).toContain('Nothing binds you or us until all of us have signed one paper.')
})

describe('the letter', () => {
  test('takes the length of the line from its farthest station, wherever that was written down', () => {
    const stations = [{ at: '0 ft' }, { at: "90'" }, { at: "30 1/2'" }, { at: '' }]
    const unsorted = notebookOf({ ...shortNotebook, line: { ...shortNotebook.line, stations } })
    expect(textFor(unsorted)).toContain('from gatepost to willow, 90 ft long.')
  })

  test('says where, from whom and to whom, when, who said that a notice is due, and defers to local law', () => {
    const text = textFor(written)
    expect(text).toContain('From Heron House to Bank Cottage, 1 March 2027')
    expect(text).toContain('Along the boundary line from gatepost to willow, 60 ft long.')
    expect(text).toContain('(said by: the town clerk, by phone on 2 February)')
    expect(text).toContain('At our door, 3 Bank Road.')
    expect(text).toContain('no legal advice')
    expect(text.trimEnd().endsWith('Petra Quillon, Heron House')).toBe(true)
  })

  test('carries the invitation’s address, a line for it, or neither', () => {
    const address = 'http://192.168.1.7:3000/open/abc'
    expect(textFor(written, { kind: 'address', address })).toContain(`tell us at once.\n${address}\n`)
    expect(textFor(written, { kind: 'to be written in' })).toContain('Address of the invitation:\n')
    const record = textFor(written, { kind: 'none' })
    expect(record).not.toMatch(/http|Address of/)
    expect(record).toContain('not printed on this copy')
  })

  test('tells how many cost lines have no price, and what a cap moves', () => {
    const [section] = shortNotebook.sections
    const unpriced = { what: 'paint', quantity: '1', suppliedBy: 'bought' }
    const sections = [{ ...section, materials: [...section.materials, unpriced] }]
    const text = textFor(
      notebookOf({ ...shortNotebook, sections, caps: { b: '400.00' }, letter: writtenLetter }),
    )
    expect(text).toContain('One line has no price yet.')
    // 425.00 were asked of b, halves of 850.01 pot by pot.
    expect(text).toContain('The cap of Bank Cottage moves $25.00 to Heron House.')
  })

  test('shows what was typed line by line, and ends it with a stop', () => {
    const typed = { ...writtenLetter, wrong: 'It leans\n\n it rots! ' }
    expect(textFor(notebookOf({ ...shortNotebook, letter: typed }))).toContain('fence\nIt leans.\nit rots!\n')
  })
})

test('our own sentences read at grade 8 or below', () => {
  const { opening, closing, invitation } = letterFor(written, { kind: 'address', address: 'x' })
  const own = [opening, closing, invitation.words, letterFor(written).invitation.words]
  const hard = own.map((text) => [text, readingGrade(text)] as const).filter(([, grade]) => grade > 8)
  expect(hard).toEqual([])
})

describe('why it is shared so', () => {
  const reasons = (document: object) => {
    const notebook = notebookOf(document)
    return splitReasons(shareItems(notebook).items, () => shareNames(notebook))
  }

  test('is one sentence for each way, with what is shared so', () => {
    expect(reasons(shortNotebook)).toEqual(['Halves: Along the bank and Willow gate.'])
  })

  test('names one household, and tells materials from labour', () => {
    const share = { materials: { principle: 'one', household: 'b' }, labour: { principle: 'equal' } }
    const [section] = shortNotebook.sections
    expect(reasons({ ...shortNotebook, sections: [{ ...section, share }], contributions: [] })).toEqual([
      'One household (Bank Cottage): Along the bank (materials).',
      'Halves: Along the bank (work) and Willow gate.',
    ])
  })

  const reasonsOf = (section: Record<string, unknown>) => reasons(documentWith({ sections: [section] }))

  test('does not call what is above it a basic fence where the basic fence costs nothing', () => {
    const difference = (basic: string) => ({
      principle: 'difference',
      basic,
      basicShare: { principle: 'equal' },
      upgradeShare: { principle: 'one', household: 'a' },
    })
    expect(reasonsOf(sectionOf('100', difference('0')))).toEqual([
      'Pay the difference (no basic fence to pay for; what is above it, $100.00, by no. 12): Section 1.',
    ])
    expect(reasonsOf(sectionOf('100', difference('40')))).toEqual([
      'Pay the difference (a basic fence of $40.00 by halves; what is above it, $60.00, by no. 12): Section 1.',
    ])
    expect(reasonsOf(sectionOf('40', difference('40')))).toEqual([
      'Pay the difference (a basic fence of $40.00 by halves): Section 1.',
    ])
  })

  test('stays short however many items there are and however long their names', () => {
    const [section] = shortNotebook.sections
    const sections = Array.from({ length: 200 }, (_, index) => ({
      ...section,
      id: `s${index}`,
      name: 'x'.repeat(5_000),
      share: {
        materials: { principle: 'benefit', a: String(index + 1), b: '1' },
        labour: { principle: 'equal' },
      },
    }))
    const told = reasons({ ...shortNotebook, sections, contributions: [] })
    expect(told.length).toBe(7)
    expect(told.join(' ').length).toBeLessThan(1_500)
    expect(told.at(-1)).toBe('The notebook shows 195 more ways.')
  })
})

test('what is proposed is suggested out of sections and gates, and of nothing nothing', () => {
  expect(proposedFence(written)).toBe('A new fence: 60 ft of mesh, 5 ft high; one gate.')
  expect(proposedFence(notebookOf(exampleDocument()))).toMatch(
    /^A new fence: ([0-9]+ ft of [^;]+; ){3}[0-9]+ more stretches; [0-9]+ gates\.$/,
  )
  expect(proposedFence(notebookOf(newNotebook({ currency: 'USD' })))).toBe('')
})
