import { takeOff } from '../../lib/core/takeoff/takeOff.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { longFence } from '../core/takeoff/longFence.ts'

type Row = { readonly what: string; readonly figure: number; readonly limit: number; readonly unit: string }

/** Take-off of 10 km of fence, and of a tenth of it. `median` is of processor time, in milliseconds. */
export async function takeoffRows(
  median: (runs: number, work: () => unknown) => Promise<number>,
): Promise<Row[]> {
  const [small, large] = [notebookOf(10), notebookOf(100)]
  const { posts } = takeOff(large)
  takeOff(small)
  const smallTime = await median(21, () => takeOff(small))
  const largeTime = await median(9, () => takeOff(large))
  return [
    {
      what: `Take-off of 10 km of fence (${posts.length.toLocaleString('en-US')} posts)`,
      figure: largeTime,
      limit: 300,
      unit: 'ms of one core',
    },
    {
      what: 'The same against a tenth of the length',
      figure: largeTime / smallTime,
      limit: 12,
      unit: 'times',
    },
  ]
}

function notebookOf(sections: number) {
  const read = readDocument(longFence(sections))
  if (!read.ok) throw new Error(`the long fence holds: ${JSON.stringify(read.faults)}`)
  return read.value.notebook
}
