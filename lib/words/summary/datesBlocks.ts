import type { Notebook } from '../../core/agreement/notebook.ts'
import { dayWords } from '../day.ts'
import { intervalWords, keeperName } from '../upkeepText.ts'
import type { Block } from './block.ts'
import { typedSentence } from './names.ts'
import { unbroken } from './unbroken.ts'

/** What is due or runs out, and whose it is to see to; nothing while nothing was written down. */
export function datesBlocks(notebook: Notebook): Block[] {
  if (notebook.dates.length === 0) return []
  return [
    { kind: 'heading', level: 1, id: 'dates', text: 'Dates' },
    {
      kind: 'table',
      caption: 'What is due or runs out, and who sees to it',
      columns: [{ title: 'Day' }, { title: 'What' }, { title: 'Who' }],
      rows: notebook.dates.map(({ what, on, household, every, notes, done }) => ({
        cells: [
          [on === '' ? 'no day yet' : unbroken(dayWords(on)), every === '' ? '' : intervalWords[every]]
            .filter(Boolean)
            .join(', '),
          [what.trim() || 'Not named yet', notes, done ? 'Done' : '']
            .map(typedSentence)
            .filter(Boolean)
            .join(' '),
          keeperName(notebook, household),
        ],
      })),
    },
  ]
}
