import { describe, expect, test } from 'vitest'
import { partiesStillToSign, type Signature, signingParties } from '../../../lib/core/agreement/revision.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { notebookWith } from '../madeNotebook.ts'

const notebook = notebookWith({
  households: {
    a: {
      parties: [
        { name: 'Ada Fernhill', capacity: 'owner' },
        { name: 'Bo Fernhill', capacity: 'co-owner' },
      ],
    },
    b: { parties: [{ name: 'Cleo Marsh', capacity: 'trustee' }] },
  },
})

function signature(household: Household, partyIndex: number): Signature {
  return {
    household,
    partyIndex,
    partyName: 'x',
    capacity: 'owner',
    typedName: 'x',
    intent: 'x',
    sha256: '0'.repeat(64),
    signedAt: new Date('2027-04-01T00:00:00Z'),
  }
}

const names = (signatures: Signature[]) => partiesStillToSign(notebook, signatures).map(({ name }) => name)

test('every party signs for itself, household a first, in the order of the file', () => {
  expect(signingParties(notebook)).toEqual([
    { household: 'a', partyIndex: 0, name: 'Ada Fernhill', capacity: 'owner' },
    { household: 'a', partyIndex: 1, name: 'Bo Fernhill', capacity: 'co-owner' },
    { household: 'b', partyIndex: 0, name: 'Cleo Marsh', capacity: 'trustee' },
  ])
})

describe('still to sign', () => {
  test('are all before anyone has', () => {
    expect(names([])).toEqual(['Ada Fernhill', 'Bo Fernhill', 'Cleo Marsh'])
  })

  test('are those of the same household that have not', () => {
    expect(names([signature('a', 0)])).toEqual(['Bo Fernhill', 'Cleo Marsh'])
  })

  test('is not settled by the party of the same place in the other household', () => {
    expect(names([signature('b', 0)])).toEqual(['Ada Fernhill', 'Bo Fernhill'])
  })

  test('are none when all have, however often', () => {
    expect(names([signature('b', 0), signature('a', 1), signature('a', 0), signature('a', 0)])).toEqual([])
  })
})
