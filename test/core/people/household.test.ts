import { expect, test } from 'vitest'
import { households, otherHousehold } from '../../../lib/core/people/household.ts'

test('there are two households, and each is the other of the other', () => {
  expect(households).toEqual(['a', 'b'])
  expect(households.map(otherHousehold)).toEqual(['b', 'a'])
})
