import { expect, test } from 'vitest'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { takeOffFile } from '../../../lib/words/takeoff/takeOffFile.ts'
import { fence, notebookOf, pipe, steelPosts } from '../../core/takeoff/madeFence.ts'

const site = {
  wind: { speed: '115', unit: 'mph', exposure: 'C' },
  soil: { lateral: '150', unit: 'psf/ft' },
  frost: { depth: '4 ft', saidBy: 'the town hall' },
}
const rails = { ...pipe, count: '2', welded: true, slip: '1/2 in', joints: 'spliced', stock: '6 ft' }
const buildUp = {
  posts: steelPosts,
  rails,
  footing: { fill: 'concrete' },
  infill: [{ kind: 'board', width: '5 in', gap: '1 in' }],
}
const stations = [{ at: '0 ft' }, { at: '48 ft', angle: { degrees: '90', toward: 'a' } }, { at: '96 ft' }]
const limits = [{ limit: '5 ft', measuredFrom: 'a', saidBy: 'the town hall', on: '2027-04-30' }]
const notebook = notebookOf([fence('0 ft', '96 ft', { buildUp })], { line: { site, stations, limits } })
const file = takeOffFile(notebook, takeOff(notebook))

test('the file is plain data', () => {
  expect(JSON.parse(JSON.stringify(file))).toEqual(file)
})

test('has the look at wind, with its caution beside whatever comes out', () => {
  const [wind] = file.wind
  expect(wind).toMatchObject({ item: '0 ft to 96 ft', outcome: 'shortfall', missing: [] })
  expect(wind?.depth).toEqual({ millimetres: 914.4, text: '3 ft' })
  expect(wind?.needed?.millimetres).toBeGreaterThan(914.4)
  expect(wind?.caution).toContain('no approval')
  expect(wind?.workings.length).toBeGreaterThan(8)
  expect(wind?.rules.map(({ reached }) => reached)).toEqual(['reach it', 'reach it', 'do not reach it'])
})

test('names what is missing by the field where it is typed', () => {
  const bare = notebookOf([fence('0 ft', '96 ft', { buildUp })])
  const [wind] = takeOffFile(bare, takeOff(bare)).wind
  expect(wind?.outcome).toBe('cannot tell')
  expect(wind?.missing).toContainEqual({ path: 'line.site.wind.speed', text: 'the wind speed of the place' })
})

test('says where joints fall, posts numbered from one', () => {
  const [work] = file.work
  expect(work?.slipJoints.map(({ posts }) => posts)).toEqual([[4], [10]])
  expect(work?.splicesAt).toHaveLength(12)
  expect(work?.splicesAt[0]).toEqual({ at: { millimetres: 1828.8, text: '6 ft' }, rails: 2, between: [1, 2] })
  expect(work?.mitres).toMatchObject([
    { post: 7, turn: '90', cutDegrees: 45, longer: { text: '2 3/8 in' }, ends: 4 },
  ])
  expect(work?.joining).toHaveLength(15)
})

test('holds each limit against the highest place, with who said it', () => {
  expect(file.limits).toEqual([
    {
      limit: 1,
      allowed: { millimetres: 1524, text: '5 ft' },
      measuredFrom: 'a',
      saidBy: 'the town hall',
      on: '2027-04-30',
      highest: { millimetres: 1828.8, text: '6 ft' },
      at: { millimetres: 0, text: '0 in' },
      over: true,
      text: expect.stringContaining('that is over the limit') as string,
    },
  ])
})

test('each new finding has its sentence and its numbers', () => {
  const findings = file.findings.filter(({ kind }) => /shallower|catches/.test(kind))
  expect(findings.map(({ kind, path }) => [kind, path])).toEqual([
    ['shallower-than-wind-asks', 'sections[0].buildUp.posts.depth'],
    ['shallower-than-frost', 'sections[0].buildUp.posts.depth'],
    ['catches-wind', 'sections[0].buildUp.infill[0]'],
  ])
  expect(findings[0]?.text).toContain('licensed engineer')
  expect(findings[1]).toMatchObject({
    text: 'A hole 3 ft deep does not reach below the frost, 4 ft, as said by the town hall.',
    numbers: { depth: { text: '3 ft' }, frost: { text: '4 ft' } },
  })
  expect(findings[2]?.text).toMatch(
    /^With the boards the wind pushes [0-9.]+ times as hard as without them\. Have/,
  )
})
