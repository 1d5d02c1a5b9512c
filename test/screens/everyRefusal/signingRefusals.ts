import { shortNotebook } from '../shortNotebook.ts'
import { pressed } from './pressing.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { putUpNow, signedNow } from './signedByStore.ts'
import { otherHash, signaturesOn } from './signing.ts'
import { rewritten, withKeys } from './storeBeside.ts'

const { sign, signedAs, typedName, sentOtherwise, form } = signaturesOn('/sign', 'Petra Quillon')

/** Putting a revision up. */
export const putUpRefusals: RefusalGroup = {
  about: 'a revision that is put up too early',
  notebook: shortNotebook,
  rows: [
    {
      what: 'nobody has marked anything',
      refuses: 'signingRefusals.notYet',
      at: '/sign',
      press: pressed('Put revision 1 up for signing'),
      says: ['It can’t be put up for signing yet.', 'Along the bank'],
    },
  ],
}

/** Signing a revision. */
export const signingRefusals: RefusalGroup = {
  about: 'a signature under a revision',
  notebook: shortNotebook,
  ready: putUpNow,
  rows: [
    {
      what: 'nothing was typed and ticked',
      refuses: ['signatureRefusals.name', 'signatureRefusals.intent'],
      at: '/sign',
      press: sign,
      says: [
        'Not signed: 2 things to mend',
        'Type the full name as it stands in the agreement: Petra Quillon.',
        'Tick the sentence if you mean to sign. Without it nothing is signed.',
      ],
      form,
      names: {
        typedName: 'Type the full name as it stands in the agreement: Petra Quillon.',
        intent: 'Tick the sentence if you mean to sign.',
      },
    },
    sentOtherwise(
      'a drawing that is none',
      'signatureRefusals.drawing',
      'The drawn signature could not be read. Wipe it away and draw it again, or leave it out.',
      '"drawing":""',
      '"drawing":"a scribble"',
    ),
    sentOtherwise(
      'a place to sign that can’t be read',
      'pressRefusals.form',
      'This form could not be read. Load the page again.',
      '"partyIndex":0',
      '"partyIndex":-1',
    ),
    sentOtherwise(
      'a party that the household has not',
      'signingRefusals.no-such-party',
      'There is no such party of your household in this revision. Load the page again.',
      '"partyIndex":0',
      '"partyIndex":7',
    ),
    sentOtherwise(
      'another text than the one that was shown',
      'signingRefusals.other-hash',
      'What you were shown is not the text of this revision: the check numbers differ, so nothing was signed.',
      ...otherHash,
    ),
    {
      what: 'a party signs that has signed in another window',
      refuses: 'signingRefusals.already-signed',
      at: '/sign',
      meanwhile: (table) => signedNow(table, 'a'),
      typed: signedAs,
      press: sign,
      says: 'This party has signed this revision already.',
      keeps: [[typedName, 'Petra Quillon']],
    },
    {
      what: 'a party signs a revision in whose place another was put meanwhile',
      refuses: 'signingRefusals.outdated',
      by: 'b',
      at: '/sign',
      meanwhile: async (table) => {
        await rewritten(table, withKeys({ title: 'Heron Bank, again' }))
        await putUpNow(table)
      },
      typed: signaturesOn('/sign', 'Emrys Vant').signedAs,
      press: signaturesOn('/sign', 'Emrys Vant').sign,
      says: 'A newer revision has been put up for signing in the meantime, so nothing was signed. Load the page again and read the new one.',
      keeps: [[typedName, 'Emrys Vant']],
    },
  ],
}
