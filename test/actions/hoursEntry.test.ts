import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { enterContribution } from '../../app/notebook/server/bookActions.ts'
import { putUpForSigning, signForParty } from '../../app/notebook/server/signActions.ts'
import { strikeContribution } from '../../lib/forms/book.ts'
import { everyTable } from './everyTable.ts'
import { signingPlace } from './givenForms.ts'
import { putInDocument } from './givenHours.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

type Item = Record<string, unknown> & { id: string; labour: Record<string, unknown>[] }

/** Gives the first task of the first section, dug by a at 28 an hour, a ceiling. */
async function ceilingOf(hours: string) {
  await putInDocument(world().notebook.id, (document) => {
    const [first, ...rest] = document.sections as Item[]
    if (first === undefined) return document
    const [line, ...lines] = first.labour
    return { ...document, sections: [{ ...first, labour: [{ ...line, ceiling: hours }, ...lines] }, ...rest] }
  })
}

const digging = 'dig post holes and set posts'
const entry = (hours: string, more: object = {}) => ({
  household: 'a',
  kind: 'hours',
  hours,
  rate: '28',
  date: '2027-04-05',
  for: 's1',
  task: digging,
  ...more,
})

async function enter(draft: object) {
  return outcomeOf(() => enterContribution(world().notebook.id, 'new', draft))
}

async function lastEntry(): Promise<unknown> {
  const { contributions } = await documentOf(world().notebook.id)
  return (contributions as unknown[]).at(-1)
}

const entered = { kind: 'redirect', to: expect.stringMatching(/\/money$/) }
const asked = (path: string, message: RegExp) => ({
  kind: 'answer',
  answer: { faults: [{ path, message: expect.stringMatching(message) }] },
})

beforeEach(() => {
  // The day after the entries: nothing may be entered that is yet to come.
  vi.useFakeTimers({ toFake: ['Date'], now: new Date('2027-04-06T12:00:00Z') })
  browseAs(world(), 'a')
})
afterEach(() => {
  vi.useRealTimers()
})

describe('hours that go beyond a ceiling', () => {
  test('are asked about with the numbers, and nothing is entered until somebody ticks that they are its own', async () => {
    await ceilingOf('10')
    const before = await everyTable()
    expect(await enter(entry('12'))).toEqual(
      asked(
        'ownIsOurs',
        /Of these 12 h, 2 h lie beyond the ceiling: .* no more than 10 h count, and 0 h were/,
      ),
    )
    expect(await everyTable()).toEqual(before)
    expect(await enter(entry('12', { ownIsOurs: true }))).toEqual(entered)
    expect(await lastEntry()).toMatchObject({ hours: '12', own: '2' })
    expect(await lastEntry()).not.toHaveProperty('ownIsOurs')
  })

  test('are counted over both households’ entries on the task, without those that were taken back', async () => {
    await ceilingOf('10')
    await enter(entry('6'))
    expect(await lastEntry()).not.toHaveProperty('own')
    browseAs(world(), 'b')
    await enter(entry('3.5', { household: 'b' }))
    browseAs(world(), 'a')
    expect(await enter(entry('1'))).toEqual(asked('ownIsOurs', /0.5 h lie beyond .* 9.5 h were counted/))
    await enter(entry('1', { ownIsOurs: true }))
    expect(await lastEntry()).toMatchObject({ own: '0.5' })
    await enter(entry('2', { ownIsOurs: true }))
    expect(await lastEntry()).toMatchObject({ own: '2' })
    // The six hours are taken back: there is room again, and what was stored before stays as it was.
    await putInDocument(world().notebook.id, (document) => {
      const index = (document.contributions as { hours?: string; task?: string }[]).findIndex(
        (one) => one.hours === '6' && one.task === digging,
      )
      const struck = { on: '2027-04-06', by: 'a', why: 'another day' } as const
      return strikeContribution(document, index, struck, () => true) ?? document
    })
    expect(await lastEntry()).toMatchObject({ own: '2' })
    await enter(entry('5'))
    expect(await lastEntry()).not.toHaveProperty('own')
  })

  test('are worked out here, whatever a form says of them', async () => {
    await ceilingOf('10')
    await enter(entry('4', { own: '4' }))
    expect(await lastEntry()).not.toHaveProperty('own')
    await enter({ household: 'a', kind: 'cash', amount: '5.00', date: '2027-04-05', own: '4', task: digging })
    expect(await lastEntry()).toEqual({
      household: 'a',
      kind: 'cash',
      amount: '5.00',
      date: '2027-04-05',
      enteredBy: 'a',
    })
  })

  test('are held against what all signed, until both have marked more', async () => {
    const { id } = world().notebook
    await ceilingOf('10')
    await markEverything(id)
    await outcomeOf(() => putUpForSigning(id, {}, new FormData()))
    for (const [household, partyIndex, typedName] of [
      ['a', 0, 'Marnie Oakshott'],
      ['a', 1, 'Tobias Oakshott'],
      ['b', 0, 'Ines Vandermolen'],
    ] as const) {
      browseAs(world(), household)
      const place = await signingPlace(id, partyIndex)
      await outcomeOf(() => signForParty(id, place, 'new', { typedName, intent: true, drawing: '' }))
    }
    browseAs(world(), 'a')
    await ceilingOf('20')
    expect(await enter(entry('12'))).toEqual(asked('ownIsOurs', /no more than 10 h count/))
    await markEverything(id)
    expect(await enter(entry('12'))).toEqual(entered)
    expect(await lastEntry()).not.toHaveProperty('own')
  })
})

describe('a task of an hours entry', () => {
  test('has to be one of its item', async () => {
    expect(await enter(entry('2', { task: 'paint the moon' }))).toEqual(asked('task', /no work line/))
    expect(await enter(entry('2', { for: '' }))).toEqual(asked('task', /no work line/))
  })

  test('that is the household’s gift takes no rate, since a gift is in no sum', async () => {
    browseAs(world(), 'b')
    const gift = entry('2', { household: 'b', task: 'paint the rails' })
    expect(await enter(gift)).toEqual(asked('rate', /in no sum: leave the rate empty/))
    expect(await enter({ ...gift, rate: '' })).toEqual(entered)
  })
})
