import type { Notebook, Section } from '../../core/agreement/notebook.ts'
import { type Hundredths, hoursText, sumHours } from '../../core/amounts/hours.ts'
import { costLineAmount, labourAmount } from '../../core/amounts/lineAmount.ts'
import type { Minor } from '../../core/amounts/money.ts'
import { basicFenceSums, heldPotsOf } from '../../core/shares/basicFence.ts'
import { digitsOf } from '../../core/shares/statement.ts'
import { basicApartSentence, basicFenceWords, basicSumsSentence } from '../basicFenceText.ts'
import { moneyWords } from '../money.ts'
import { quantityWords } from '../quantityWords.ts'
import type { Block } from './block.ts'
import { typedSentence } from './names.ts'
import { unbroken } from './unbroken.ts'

/** The plainer fence that a section's share is held against, with its lines; nothing where none is described. */
export function basicFenceBlocks(notebook: Notebook, section: Section): Block[] {
  const { basicFence } = section
  if (basicFence === undefined) return []
  const { currency } = notebook
  const digits = digitsOf(notebook)
  const what = basicFenceWords(basicFence)
  const apart = heldPotsOf(section, digits).filter(({ typed, sum }) => typed !== sum)
  return [
    {
      kind: 'paragraph',
      text: [
        'A plainer fence that would be enough here is called the basic fence. Nobody builds it, and it is in no sum.',
        what && `It is this: ${typedSentence(what)}`,
        typedSentence(basicFence.notes),
        basicSumsSentence(basicFenceSums(basicFence, digits), currency),
        ...apart.map((pot) => basicApartSentence(pot, currency)),
      ]
        .filter(Boolean)
        .join(' '),
    },
    ...lineTable(notebook, basicFence, digits),
  ]
}

function lineTable(
  { currency }: Notebook,
  { materials, labour }: Pick<Section, 'materials' | 'labour'>,
  digits: number,
): Block[] {
  if (materials.length + labour.length === 0) return []
  const money = (minor: Minor) => moneyWords(minor, currency)
  const counted = labour.filter(({ counts }) => counts)
  const hours: Hundredths = sumHours(counted.map((line) => line.hours))
  return [
    {
      kind: 'table',
      caption: 'The basic fence, line by line',
      columns: [{ title: 'What' }, { title: 'Quantity', figure: true }, { title: 'Amount', figure: true }],
      rows: [
        ...materials.map((line) => {
          const amount = costLineAmount(line, digits)
          return {
            cells: [
              `${line.what.trim() || 'Not named yet'}${line.credit ? ' (credit)' : ''}`,
              unbroken(quantityWords(line.quantity, line.unit)),
              line.unitPrice === '' ? notPriced : money(line.credit ? -amount : amount),
            ],
          }
        }),
        ...labour.map((line) => ({
          cells: [
            line.task.trim() || 'Not named yet',
            unbroken(`${line.hours} h`),
            line.counts ? (line.rate === '' ? notPriced : money(labourAmount(line, digits))) : 'a gift',
          ],
        })),
      ],
      foot: [
        'The basic fence in all',
        hours === 0n ? '' : unbroken(`${hoursText(hours)} h`),
        money(basicFenceSums({ materials, labour }, digits).both),
      ],
    },
  ]
}

const notPriced = 'not priced yet'
