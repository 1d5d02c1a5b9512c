import type { Notebook } from '../../core/agreement/notebook.ts'
import { signingParties } from '../../core/agreement/revision.ts'
import { householdName } from '../labels.ts'
import type { Block } from '../summary/block.ts'
import { capacityName } from '../summary/signatureBlocks.ts'

/** Every party with its household, address and parcel: the top of each sheet. */
export function partyTable(notebook: Notebook): Block {
  return {
    kind: 'table',
    caption: 'The parties',
    columns: [{ title: 'Household' }, { title: 'Name' }, { title: 'Address' }, { title: 'Parcel' }],
    rows: signingParties(notebook).map(({ household, partyIndex, name, capacity }) => {
      const party = notebook.households[household].parties[partyIndex]
      return {
        cells: [
          `${householdName(notebook, household)} (household ${household})`,
          `${name.trim() || 'a party without a name'}, ${capacityName(capacity)}`,
          party?.address.trim() || notSaid,
          party?.parcel.trim() || notSaid,
        ],
      }
    }),
  }
}

const notSaid = 'not said'
