import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { describe, expect, test } from 'vitest'
import { heldRequests } from '../../app/notebook/server/heldRequest.ts'
import { unlessGone, workStream } from '../../app/notebook/server/workStream.ts'

setFlagsFromString('--expose-gc')
const collectGarbage = runInNewContext('gc') as () => void

/** A request of which nobody here keeps hold, as a server does with one that it handed on. */
function asked(signal: AbortSignal): Request {
  return new Request('http://localhost/', { method: 'POST', signal })
}

const turn = () => new Promise((resolve) => setImmediate(resolve))

describe('long work for an answer', () => {
  test('hears that the request ended, though the garbage collector came by, and then lets go of it', async () => {
    const away = new AbortController()
    const before = heldRequests()
    let heard = false
    const answer = workStream(asked(away.signal), async (_tell, stop) => {
      for (let at = 0; at < 5; at += 1) {
        await turn()
        collectGarbage()
      }
      away.abort()
      await turn()
      heard = stop.aborted
      return {}
    })
    expect(heldRequests()).toBe(before + 1)
    await answer.text()
    expect(heard).toBe(true)
    expect(heldRequests()).toBe(before)
  })

  test('that fails for another reason lets go of its request as well', async () => {
    const before = heldRequests()
    await expect(
      unlessGone(asked(new AbortController().signal), () => Promise.reject(new Error('broken'))),
    ).rejects.toThrow('broken')
    expect(heldRequests()).toBe(before)
  })
})
