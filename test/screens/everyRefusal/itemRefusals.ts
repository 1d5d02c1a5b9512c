import { documentText } from '../../../lib/forms/parts.ts'
import { changesOf } from '../../../lib/store/changes.ts'
import { editNotebook } from '../../../lib/store/notebooks.ts'
import { editedBy } from '../../actions/givenUndo.ts'
import { documentOf } from '../../actions/world.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { pressed, pressedTwice, sending } from './pressing.ts'
import type { RefusalGroup, Table } from './refusalRow.ts'
import { meanwhile, notebookOf, withKeys } from './storeBeside.ts'

const [bank] = shortNotebook.sections
const putBack = /^Put it back/
const undo = /^Put back what stood before/

/** A household changes keys of the document, and that goes on record. */
const editing = (by: 'a' | 'b', changed: object) => (table: Table) =>
  editedBy(notebookOf(table), by, withKeys(changed as Record<string, unknown>))

const bankWith = (change: object) => ({ sections: [{ ...bank, ...change }] })

/** The first household has removed the gate. */
const gateRemoved = editing('a', { gates: [] })
const gateThere = editing('b', { gates: shortNotebook.gates })

let nothing = ''

/** An edit of the first household that comes to nothing, beside one that can be put back. */
async function editOfNothing(table: Table): Promise<void> {
  const id = notebookOf(table)
  // The file is written otherwise, and nothing that is on record has changed.
  const text = documentText({ ...(await documentOf(id)), dates: [] })
  const change = () => ({
    document: text,
    changed: [{ itemKey: 'checks', before: null, after: null }],
    kept: undefined,
  })
  await editNotebook({ id, household: 'a', at: new Date(), change })
  nothing = String((await changesOf(id))[0]?.edit)
  await editing('a', bankWith({ notes: 'Painted grey.' }))(table)
}

/** Marks and removals of items, and what is put back. */
export const itemRefusals: RefusalGroup = {
  about: 'what is pressed at an item, and what is put back',
  notebook: shortNotebook,
  rows: [
    {
      what: 'an item is agreed to after it was changed meanwhile',
      refuses: 'itemRefusals.changed',
      at: '/item/s1',
      ...meanwhile(withKeys(bankWith({ notes: 'Painted green.' }))),
      press: pressed('Agree to this as it stands'),
      says: 'This item was changed since you opened the page. Load the page again, read what changed, then agree to that.',
    },
    {
      what: 'an item is agreed to after it was removed meanwhile',
      refuses: 'itemRefusals.removed',
      at: '/item/g1',
      ...meanwhile(withKeys({ gates: [] })),
      press: pressed('Agree to this as it stands'),
      says: 'This item was removed in the meantime.',
    },
    {
      what: 'an item is removed while the book speaks of it',
      refuses: 'itemRefusals.hasEntries',
      at: '/item/s1',
      press: pressedTwice('Remove this section'),
      says: 'Money and hours has entries for this item. Take those entries back first; they stay in the book and are shown as taken back.',
    },
    {
      what: 'a gate is put back that was put back in another window',
      refuses: 'putBackRefusals.there already',
      at: '',
      given: gateRemoved,
      meanwhile: gateThere,
      press: pressed(putBack),
      says: 'Nothing was changed: it stands in the notebook again already.',
    },
    {
      what: 'a gate is put back after the currency was changed meanwhile',
      refuses: 'putBackRefusals.other currency',
      at: '',
      given: gateRemoved,
      ...changedCurrency(),
      press: pressed(putBack),
      says: 'Nothing was changed: the currency of the notebook has changed since, so its prices would mean something else. Add it anew.',
    },
    {
      what: 'something is put back that was never there',
      refuses: 'putBackRefusals.not on record',
      at: '',
      given: gateRemoved,
      typed: sending(putBack, { id: 'g77' }),
      press: pressed(putBack),
      says: 'Nothing was changed: the record does not say what it was.',
      after: gateThere,
    },
    {
      what: 'an edit is put back after the same was changed again meanwhile',
      refuses: 'putBackRefusals.changed since',
      at: '/changes',
      given: editing('a', bankWith({ notes: 'Painted green.' })),
      meanwhile: editing('b', bankWith({ notes: 'Painted blue.' })),
      press: pressed(undo),
      says: 'Nothing was changed: something of it was changed again since, and that would go with it. Change it by hand.',
    },
    {
      what: 'an edit is put back that changed nothing',
      refuses: 'putBackRefusals.as it was',
      at: '/changes',
      given: editOfNothing,
      typed: (page) => sending(undo, { edit: nothing })(page),
      press: pressed(undo),
      says: 'Nothing was changed: it stands already as it stood before that edit.',
    },
  ],
}

/** The currency is another one meanwhile; afterwards that and the gate are back. */
function changedCurrency() {
  const { meanwhile: happens, after } = meanwhile(withKeys({ currency: 'EUR' }))
  return {
    ...(happens ? { meanwhile: happens } : {}),
    after: async (table: Table) => {
      await after?.(table)
      await gateThere(table)
    },
  }
}
