import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { inject } from 'vitest'
import { shortNotebook } from '../shortNotebook.ts'
import { put, trySaving } from '../typing.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { putUpNow, signedNow } from './signedByStore.ts'

/** The key by which the install seals what is signed, as it was before it was broken. */
let key: string | undefined
const keyFile = () => path.join(inject('dataFolder'), 'seal-key.pem')

/** A notebook that all have signed with its closing. */
export const closedRefusals: RefusalGroup = {
  about: 'a notebook that is closed',
  notebook: {
    ...shortNotebook,
    contributions: [],
    closing: { on: '2027-06-20', asBuilt: [], upkeep: [], notes: '' },
  },
  ready: async (table) => {
    await putUpNow(table)
    await signedNow(table, 'a', 'b')
  },
  rows: [
    {
      what: 'a section is changed once the notebook is closed',
      refuses: 'pressRefusals.closed',
      at: '/item/s1',
      typed: (page) => put(page, 'notes', 'Painted green.'),
      press: (page) => trySaving(page, 'Save this section'),
      says: 'Nothing was changed: the notebook was closed by revision 1, which all have signed. Either household can open it again on the page “Closing”.',
      keeps: [['notes', 'Painted green.']],
    },
    {
      what: 'the locked copy is asked for while the seal of the install is broken',
      refuses: 'lockedCopyRefusals.notYet',
      at: '/record',
      given: async () => {
        key = existsSync(keyFile()) ? readFileSync(keyFile(), 'utf8') : undefined
        writeFileSync(keyFile(), 'no key\n', { mode: 0o600 })
      },
      press: (page) =>
        page
          .getByRole('link', { name: /^Locked copy/ })
          .first()
          .click(),
      says: [
        "The locked copy can't be made yet. All signatures are kept.",
        'does not hold one key with its certificate. Bring it back from the backup of the data folder.',
      ],
      after: async () => {
        if (key === undefined) rmSync(keyFile())
        else writeFileSync(keyFile(), key, { mode: 0o600 })
      },
    },
  ],
}
