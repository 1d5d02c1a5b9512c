import { filesOf } from '../../../lib/store/storedFiles.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { filesTakenAway, onRecord } from './filesOnRecord.ts'
import { pressed, pressedTwice, sending } from './pressing.ts'
import type { RefusalGroup, Table } from './refusalRow.ts'
import { notebookOf } from './storeBeside.ts'

const takeAway = /^Take away/
const putBack = /^Put it back.*plan\.pdf/
let named = ''

/** What a form is about that names the file of this name. */
async function naming(table: Table, name: string): Promise<void> {
  const found = (await filesOf(notebookOf(table), true)).find((one) => one.name === name)
  named = found?.id ?? ''
}

/** Photos and papers that are there: taken away, and put back. */
export const keptFileRefusals: RefusalGroup = {
  about: 'a photo or a paper that is taken away or put back',
  notebook: shortNotebook,
  rows: [
    {
      what: 'one is taken away that was taken away in another window',
      refuses: 'fileAwayRefusals.gone',
      at: '/files',
      given: (table) => onRecord(table, { name: 'survey.pdf' }),
      meanwhile: filesTakenAway,
      press: pressedTwice(takeAway),
      says: 'This file is not there any more.',
    },
    {
      what: 'one of the other household is taken away',
      refuses: 'fileAwayRefusals.notYours',
      at: '/files',
      given: async (table) => {
        await onRecord(table, { name: 'letter.pdf' })
        await onRecord(table, { name: 'theirs.pdf', by: 'b' })
        await naming(table, 'theirs.pdf')
      },
      typed: (page) => sending(takeAway, { id: named })(page),
      press: pressedTwice(takeAway),
      says: 'Only the household that added a file can take it away.',
      after: filesTakenAway,
    },
    {
      what: 'one is put back that the other household took away',
      refuses: 'fileBackRefusals.notYours',
      at: '/files',
      given: async (table) => {
        await onRecord(table, { name: 'plan.pdf', removedBy: 'a' })
        await onRecord(table, { name: 'permit.pdf', by: 'b', removedBy: 'b' })
        await naming(table, 'permit.pdf')
      },
      typed: (page) => sending(putBack, { id: named })(page),
      press: pressed(putBack),
      says: 'Nothing was changed: only the household that took a file away can put it back.',
    },
    {
      what: 'one is put back that was added again meanwhile',
      refuses: 'fileBackRefusals.thereAlready',
      at: '/files',
      given: (table) => onRecord(table, { name: 'map.pdf', removedBy: 'a' }),
      meanwhile: (table) => onRecord(table, { name: 'map.pdf' }),
      press: pressed(/^Put it back.*map\.pdf/),
      says: 'Nothing was changed: the same file is here already.',
    },
  ],
}
