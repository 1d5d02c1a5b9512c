import { expect, test } from 'vitest'
import { shareItems } from '../../lib/core/shares/statement.ts'
import {
  faultTexts,
  halvesForNowWords,
  itemAtFault,
  itemFaultTexts,
  shareFaultText,
} from '../../lib/words/shareFaultText.ts'
import { bought, notebookWith } from '../core/madeNotebook.ts'

const use = { principle: 'use' }
const notebook = notebookWith({
  sections: [
    {
      id: 's1',
      name: 'Along the lane',
      materials: [bought('10')],
      share: { together: { principle: 'benefit', a: '0', b: '0' } },
    },
  ],
  gates: [
    {
      id: 'g1',
      name: 'Garden gate',
      materials: [bought('10')],
      labour: [{ task: 'hang', hours: '1', rate: '20', by: 'a' }],
      share: { materials: use, labour: use },
    },
  ],
})

const names = { a: 'no. 12', b: 'no. 14' }

test('a gate that nobody counted is named once, with what to do', () => {
  const { faults } = shareItems(notebook)
  const texts = faultTexts(notebook, faults)
  expect(texts).toHaveLength(2)
  expect(texts[1]).toMatch(
    /Garden gate: nobody has counted its passages a week yet.*Count them on its page\./,
  )
})

test('on its own page such a gate is not named, and the panel to count in is', () => {
  const texts = itemFaultTexts(
    names,
    shareItems(notebook).faults.filter(({ path }) => path.startsWith('gates')),
  )
  expect(texts).toHaveLength(1)
  expect(texts[0]).toMatch(/^nobody has counted its passages a week yet.*under “Passages a week”/)
})

test('any other fault names its item before what is wrong', () => {
  expect(faultTexts(notebook, shareItems(notebook).faults)[0]).toMatch(
    /Along the lane: There is something to share by benefit, but both figures are zero/,
  )
})

test('a share of a saving that no household can be asked for says which by its name', () => {
  const saving = { principle: 'saving', aloneA: '10', aloneB: '90' }
  const dear = notebookWith({
    households: { a: { name: 'Mill house' }, b: { name: 'Weir house' } },
    sections: [{ id: 's1', name: 'Along the lane', materials: [bought('10')], share: { together: saving } }],
  })
  const { faults } = shareItems(dear)
  expect(faults[0]).toMatchObject({ kind: 'saving-outside', household: 'a' })
  expect(faultTexts(dear, faults)[0]).toMatch(
    /^Along the lane: Sharing the saving would ask Mill house for -?[0-9.]+ of a pot of 10/,
  )
  expect(itemFaultTexts({ a: 'Mill house', b: 'Weir house' }, faults)[0]).toMatch(/would ask Mill house for/)
})

test('a fault of the whole names no item', () => {
  const fault = {
    path: 'caps',
    kind: 'caps-short',
    a: '1.00',
    b: '1.00',
    total: '5.00',
    short: '3.00',
  } as const
  expect(itemAtFault(notebook, fault)).toBeUndefined()
  expect(shareFaultText(notebook, fault)).toMatch(/together fall \$3\.00 short of the total, \$5\.00\./)
})

test('gates by halves for now are listed as one says it', () => {
  expect(halvesForNowWords(['Garden gate'])).toMatch(/^Garden gate is shared by halves for now/)
  expect(halvesForNowWords(['A', 'B', 'C'])).toMatch(/^A, B and C are shared by halves for now/)
})
