import { expect, test } from 'vitest'
import { boundedBody } from '../../lib/files/boundedBody.ts'
import { oneAtATime } from '../../lib/files/oneAtATime.ts'

/** A body that never ends, and how many pieces were taken from it. */
function endless(): { body: ReadableStream<Uint8Array>; taken: () => number; cancelled: () => boolean } {
  let taken = 0
  let cancelled = false
  const body = new ReadableStream<Uint8Array>(
    {
      pull: (controller) => {
        taken += 1
        controller.enqueue(new Uint8Array(1000))
      },
      cancel: () => {
        cancelled = true
      },
    },
    { highWaterMark: 0 },
  )
  return { body, taken: () => taken, cancelled: () => cancelled }
}

test('a body that never ends is read no further than its bound', async () => {
  const { body, taken, cancelled } = endless()
  expect(await boundedBody(body, 10_000)).toEqual({ refused: { kind: 'too-large', limit: 10_000 } })
  expect(taken()).toBe(11)
  expect(cancelled()).toBe(true)
})

test('a body of just its bound is read whole, no body as nothing', async () => {
  const read = await boundedBody(new Response(new Uint8Array(10_000).fill(7)).body, 10_000)
  expect(read).toEqual({ bytes: new Uint8Array(10_000).fill(7) })
  expect(await boundedBody(null, 10)).toEqual({ bytes: new Uint8Array() })
})

test('a body that breaks off is told', async () => {
  const body = new ReadableStream<Uint8Array>({
    start: (controller) => controller.enqueue(new Uint8Array(10)),
    pull: (controller) => controller.error(new Error('reset')),
  })
  expect(await boundedBody(body, 100)).toEqual({ refused: { kind: 'broke-off' } })
})

test('work waits for the work before it, also where that failed', async () => {
  const order: string[] = []
  const slow = (name: string, milliseconds: number, fails = false) =>
    oneAtATime(async () => {
      order.push(`${name} begins`)
      await new Promise((resolve) => setTimeout(resolve, milliseconds))
      order.push(`${name} ends`)
      if (fails) throw new Error(name)
      return name
    })
  const ends = await Promise.allSettled([slow('a', 20), slow('b', 5, true), slow('c', 0)])
  expect(order).toEqual(['a begins', 'a ends', 'b begins', 'b ends', 'c begins', 'c ends'])
  expect(ends.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled'])
})
